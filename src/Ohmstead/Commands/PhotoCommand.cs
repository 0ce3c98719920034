using System.CommandLine;
using Ohmstead.Collections;
using Ohmstead.Records.Editing;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Takes photographs into the collection and enters what they show.</summary>
internal sealed class PhotoCommand(Terminal terminal)
{
    private readonly EntryOptions options = new();
    private readonly Argument<string[]> pictures = new("PICTURE")
    {
        Arity = ArgumentArity.OneOrMore,
        Description = "The pictures, PNG, JPEG, GIF or WebP. They are only read.",
    };
    private readonly Option<string[]> shows = new("--shows")
    {
        Description = "What a picture shows, in words, once for each in their order. At a terminal it is asked.",
        HelpName = "TEXT",
    };

    public Command Build()
    {
        var command = options.DatedCommand(
            "photo",
            """
            Take photographs into the collection: each is copied under a name of the day and a number, and entered with what it shows.
            The copy is whole, with the place and the serial number that a camera writes; what the report publishes is made anew, without
            them.

            Examples:
              ohmstead photo SP-0007 records/photos/SP-0009/underside.png --shows "C3 before"
              ohmstead photo SP-0012 records/photos/SP-0004/c12-print.png --shows "the print at C12" --on 2026-06-20 --trial
            """,
            pictures,
            shows
        );
        // What stands in a record as words beside a reading has no place at a picture.
        foreach (var other in new Option[] { options.Instrument, options.Note })
        {
            command.Options.Remove(other);
        }

        command.SetAction(parsed => options.RunDated(parsed, terminal, (board, run) => Take(parsed, board, run)));
        return command;
    }

    private int Take(ParseResult parsed, FoundBoard board, RunOptions run)
    {
        var taken = new NewPhotographs(board.Files.Root);
        var number = board.Board.Board.Id.Value;
        if (!taken.Read(parsed.GetValue(pictures)!, number, options.DayOf(parsed, run)).Is(out var photographs, out var why))
        {
            return Refuse(why);
        }

        var said = parsed.GetValue(shows) ?? [];
        if (said.Length > photographs.Count)
        {
            return Refuse($"--shows is said {said.Length} times for {photographs.Count}: once for each picture, in their order");
        }

        string?[] words = [.. photographs.Select((picture, at) => at < said.Length ? said[at] : Asked(picture))];
        if (Array.FindIndex(words, string.IsNullOrWhiteSpace) is >= 0 and var silent)
        {
            return Refuse(
                $"{photographs[silent].Source}: nothing says what it shows; write --shows \"C3 before\", once for each picture, "
                    + "in their order"
            );
        }

        var isTrial = parsed.GetValue(options.Trial);
        string[] items =
        [
            .. photographs.Zip(words, (picture, shown) => FlowText.Mapping([("file", picture.Path), ("shows", shown?.Trim())])),
        ];
        var entry = new BenchEntry(
            terminal,
            run with
            {
                // They were looked at by their bytes, and are there once they are entered.
                Moved = photographs.ToDictionary(picture => picture.Path, _ => (string?)null, StringComparer.Ordinal),
            }
        );
        return isTrial
            ? Enter(parsed, board, run, entry, items)
            : Copied(taken, photographs, () => Enter(parsed, board, run, entry, items));
    }

    // First the pictures, then the record that names them: a record never names what is not there.
    private int Copied(NewPhotographs taken, IReadOnlyList<NewPhotograph> photographs, Func<int> enter)
    {
        var isEntered = false;
        taken.Copy(photographs);
        try
        {
            var exit = enter();
            isEntered = exit == ExitCode.Clean;
            if (isEntered)
            {
                terminal.Out.WriteLine(
                    "  the copies are whole, the originals stay; a place that the camera wrote is in them, and in no picture of the report"
                );
            }

            return exit;
        }
        finally
        {
            if (!isEntered)
            {
                taken.TakeBack(photographs);
            }
        }
    }

    private int Enter(ParseResult parsed, FoundBoard board, RunOptions run, BenchEntry entry, string[] items) =>
        entry.AddAll(
            board,
            options.Visit(parsed, board, run, isMeasured: false),
            "photos",
            items,
            parsed.GetValue(options.Sure),
            parsed.GetValue(options.Trial)
        );

    private string? Asked(NewPhotograph picture)
    {
        if (!terminal.MayAsk)
        {
            return null;
        }

        terminal.Error.Write(Printable.Escape($"{picture.Source} shows: "));
        terminal.Error.Flush();
        return terminal.In.ReadLine();
    }

    private int Refuse(string problem)
    {
        terminal.Error.WriteLine(Printable.Escape($"{problem}; nothing was written"));
        return ExitCode.Usage;
    }
}
