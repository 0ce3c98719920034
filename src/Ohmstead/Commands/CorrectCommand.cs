using System.CommandLine;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;
using Ohmstead.Running;
using Ohmstead.Writing;
using Ohmstead.Yaml;

namespace Ohmstead.Commands;

/// <summary>Corrects a reading or a proof of an earlier day: it stays as it is, and judges no more.</summary>
internal sealed class CorrectCommand(Terminal terminal)
{
    private readonly EntryOptions options = new();
    private readonly Argument<string> place = new("PLACE")
    {
        CompletionSources = { Completions.Places },
        Description = "The part that was measured, or the test point that was proved.",
    };
    private readonly Argument<string[]> values = new("VALUE")
    {
        CompletionSources = { Completions.Readings },
        Description = "What was so, with its unit, as for 'enter'; what is not said stays as it was written.",
        Arity = ArgumentArity.OneOrMore,
    };
    private readonly Option<string> because = new("--because")
    {
        Description = "Why the old entry is known to be wrong.",
        HelpName = "REASON",
        Required = true,
    };
    private readonly Option<DateOnly?> of = new("--of")
    {
        Description = "The day of the wrong entry. Otherwise the last day on which the place was read.",
        HelpName = "DATE",
        CustomParser = SharedOptions.Day,
    };
    private readonly Option<string?> state = new("--state")
    {
        Description = "Which of several entries of that day: as found, as left, new.",
    };
    private readonly Option<bool> inCircuit = new("--in-circuit") { Description = "The part was in the circuit." };
    private readonly Option<bool> lifted = new("--lifted") { Description = "The part was out of the circuit, or one leg was." };

    public Command Build()
    {
        state.AcceptOnlyFromAmong([.. Vocabulary.ReadingStates]);
        var command = options.Command(
            "correct",
            """
            Correct a reading or a proof of an earlier day that was written down wrongly. Both stay in the record; the new one counts, as of
            the day of the old one.

            Examples:
              ohmstead correct SP-0007 C3 33.8uF --of 2026-02-28 --state "as found" --because "misread the scale" --by RK
              ohmstead correct SP-0007 +80V 80.3V --because "a 1 taken for a 0 on the sheet"
            """,
            place,
            values,
            because,
            of,
            state,
            inCircuit,
            lifted
        );
        command.SetAction(parsed => options.Run(parsed, terminal, (board, run) => Correct(parsed, board, run)));
        return command;
    }

    private int Correct(ParseResult parsed, FoundBoard board, RunOptions run)
    {
        var at = parsed.GetValue(place)!;
        var number = board.Board.Board.Id.Value;
        var all = Entries(board, at).Where(one => parsed.GetValue(state) is not { } said || one.State == said).ToArray();
        var day = parsed.GetValue(of) ?? all.Select(one => (DateOnly?)one.Visit.Date.Value).Max();
        var meant = all.Where(one => one.Visit.Date.Value == day).ToArray();
        if (day is null || meant.Length == 0)
        {
            return Wrong(
                day is null ? $"{number} has no entry about '{at}'" : $"{number} has no entry about '{at}' of {IsoDate.Text(day.Value)}",
                $"ohmstead why {number} {at} tells what was entered"
            );
        }

        if (day == run.Today)
        {
            return Wrong(
                "that was entered today, and nobody needs to read it any more",
                $"take it back and enter it anew: ohmstead remove {number} {at}"
            );
        }

        if (meant is not [var old])
        {
            return Wrong(
                $"{meant.Length} entries of {IsoDate.Text(day.Value)} are about '{at}': "
                    + string.Join("; ", meant.Select(one => one.State)),
                "say which: --state"
            );
        }

        if (parsed.GetValue(inCircuit) && parsed.GetValue(lifted))
        {
            return Wrong("a part is in the circuit or lifted, not both", "leave one of the two out");
        }

        var text = RecordFile.Read(board.Files.Root, board.Board.Board.Path);
        var before = RecordEditor.Open(board.Board.Board.Path, text, FileForm.Markdown, NodeReaders.ForWorker(0), out _)?.EntryAt(old.Spot);
        var (entry, fault) = PreparedEntry.Prepare(
            board.Board,
            new(at, parsed.GetValue(values)!)
            {
                Circuit =
                    parsed.GetValue(inCircuit) ? "in"
                    : parsed.GetValue(lifted) ? "out"
                    : null,
                // That of its visit goes along, for the correction stands in another one.
                Instrument = parsed.GetValue(options.Instrument) ?? (old.Instrument ?? old.Visit.Instrument)?.Value,
                Note = parsed.GetValue(options.Note),
                InsteadOf = before,
                Corrects = IsoDate.Text(day.Value),
                Because = parsed.GetValue(because),
            }
        );
        if (entry is null)
        {
            terminal.Error.WriteLine(Printable.Escape(fault!));
            return ExitCode.Usage;
        }

        var nothing = new Dictionary<string, string>(StringComparer.Ordinal);
        return new BenchEntry(terminal, run).Add(
            board,
            new(IsoDate.Text(run.Today), Initials.Clean(parsed.GetValue(options.By)), null),
            entry.Key,
            _ => entry.Item(nothing),
            parsed.GetValue(options.Sure),
            parsed.GetValue(options.Trial)
        );
    }

    private static IEnumerable<Old> Entries(FoundBoard board, string at) =>
        board.Board.Place(at) is not null
            ? board
                .Board.Readings.Where(reading => reading.Reading.Part?.Value == at)
                .Select(one => new Old(one.Visit, one.Reading.Spot, one.Reading.StateWord, one.Reading.Instrument))
            : board.Board.ProofsAt(at).Select(one => new Old(one.Visit, one.Proof.Spot, "proof", one.Proof.Instrument));

    private int Wrong(string problem, string nextStep)
    {
        terminal.Error.WriteLine(Printable.Escape(problem));
        terminal.Error.WriteLine(Printable.Escape("  = " + nextStep));
        return ExitCode.Usage;
    }

    private sealed record Old(BenchVisit Visit, Spot Spot, string State, Written<string>? Instrument);
}
