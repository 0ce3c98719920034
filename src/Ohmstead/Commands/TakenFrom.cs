using System.CommandLine;
using Ohmstead.Collections;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Enters that a part was taken from one board and fitted on another: on both, or on none.</summary>
/// <param name="terminal">Where it is told.</param>
/// <param name="run">How records are read and judged.</param>
/// <param name="options">What the command was given.</param>
internal sealed class TakenFrom(Terminal terminal, RunOptions run, EntryOptions options)
{
    /// <summary>Enters.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="board">The board that has it now.</param>
    /// <param name="origin">Where it came from, as it was said.</param>
    /// <param name="newPart">What it is, where that was said; else it is what the other board says of it.</param>
    /// <param name="item">The entry on the board that has it now, for what it is and where it came from.</param>
    /// <returns>The exit code.</returns>
    public int Enter(ParseResult parsed, FoundBoard board, string origin, string? newPart, Func<(string NewPart, string From), string> item)
    {
        if (BoardPlace.Parse(origin) is not { } from)
        {
            return Wrong(
                $"'{origin}' is no board and place; write --from \"BOARD PLACE\" with the number of the board and its place, as in "
                    + $"\"{BoardPlace.Example}\""
            );
        }

        if (parsed.GetValue<string?>("PLACE") is not { } at)
        {
            return Wrong("say where it went: the place on this board, then --from");
        }

        if (board.Board.Place(at) is null)
        {
            return Wrong(
                SaidPlaces.Parse(board.Board, at) is { Places.Count: > 1 }
                    ? "one part went to one place; enter each by itself"
                    : Nearest.Told(
                        $"{board.Board.Board.Id.Value} has no part '{at}'",
                        Nearest.To(at, board.Board.Places.Select(one => one.Part.Ref.Value))
                    )
            );
        }

        if (from.Board == board.Board.Board.Id.Value)
        {
            return Wrong($"{from} is on the same board; enter there 'removed', and here --new-part with what it is");
        }

        if (BoardFinder.Find(options.FolderOf(parsed), from.Board, run, terminal.Error) is not { } giver)
        {
            return ExitCode.Usage;
        }

        if (giver.Board.Place(from.Place) is not { } place)
        {
            var near = Nearest.To(from.Place, giver.Board.Places.Select(one => one.Part.Ref.Value));
            return Wrong(Nearest.Told($"{from.Board} has no part '{from.Place}'", near));
        }

        if ((newPart ?? WrittenPart.Find(giver, from.Place, run)) is not { } what)
        {
            return Wrong($"what sits in {from} is written in no list; say it with --new-part");
        }

        var to = item((what, from.ToString()));
        var who = options.Visit(parsed, board, run, isMeasured: false) with { Instrument = null };
        if (LateDay.WhyNot(giver.Board.Board, options.DayOf(parsed, run), run.Today, saysOrder: false) is { } why)
        {
            return Wrong(why);
        }

        var ends = new List<End> { new(board, who, to) };
        if (!place.IsEmpty)
        {
            var left = FlowText.Mapping([
                ("part", from.Place),
                ("did", Vocabulary.Works.WordFor(WorkKind.Removed)),
                ("went_to", $"{board.Board.Board.Id.Value} {at}"),
            ]);
            ends.Add(new(giver, who, left));
        }

        return new TwoEnds(terminal, run).Enter(board.Beside, ends, parsed.GetValue(options.Trial));
    }

    private int Wrong(string problem)
    {
        terminal.Error.WriteLine(Printable.Escape(problem));
        return ExitCode.Usage;
    }
}
