using System.CommandLine;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Model;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Enters what a person decided, with the reason: a verdict may be overruled, and both are shown.</summary>
internal sealed class DecideCommand(Terminal terminal)
{
    private readonly EntryOptions options = new();
    private readonly Argument<string> place = new("PLACE")
    {
        CompletionSources = { Completions.Places },
        Description = "Where: the reference of a part, such as C12, or another spot of the board; several parts as \"C1-C8 C11\".",
    };
    private readonly Argument<string> decision = EntryOptions.OneOf("DECISION", "What was decided", Vocabulary.Decisions);
    private readonly Argument<string> because = new("BECAUSE") { Description = "Why, in words." };

    public Command Build()
    {
        var command = options.DatedCommand(
            "decide",
            """
            Enter a decision with its reason; it overrules a verdict, and both stay visible. What a test point must
            show nobody decides; a finding there is answered as anywhere.

            Examples:
              ohmstead decide SP-0007 C4 replace "this family fails shorted" --by RK
              ohmstead decide SP-0007 "C3 C4" watch "a little low, and the circuit is content"
              ohmstead decide SP-0007 BR1 watch "plates clean, output right"
            """,
            place,
            decision,
            because
        );
        command.SetAction(parsed => options.RunDated(parsed, terminal, (board, run) =>
            {
                var at = parsed.GetValue(place)!;
                if (PointDecision.IsIdle(board.Board, at))
                {
                    terminal.Error.WriteLine(Printable.Escape(PointDecision.Why(at)));
                    terminal.Error.WriteLine(Printable.Escape("  = " + PointDecision.NextStep(at)));
                    return ExitCode.Usage;
                }

                if (SaidPlaces.WhyUnsure(board, at) is { } unsure)
                {
                    terminal.Error.WriteLine(Printable.Escape(unsure));
                    return ExitCode.Findings;
                }

                if (
                    !parsed.GetValue(options.Sure)
                    && board.Board.Board.Bench.All(visit => visit.Found.All(found => found.At?.Value != at))
                    && SaidPlaces.WhyNoPart(board.Board, at) is { } why
                )
                {
                    terminal.Error.WriteLine(Printable.Escape(why));
                    return ExitCode.Usage;
                }

                return options.AddAt(parsed, terminal, board, run, "decided", at, name =>
                    FlowText.Mapping([
                        (board.Board.Place(name) is null ? "at" : "part", name),
                        ("decision", parsed.GetValue(decision)),
                        ("because", parsed.GetValue(because)),
                    ])
                );
            }));
        return command;
    }
}
