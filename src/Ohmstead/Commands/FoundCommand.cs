using System.CommandLine;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Model;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Enters something that was seen.</summary>
internal sealed class FoundCommand(Terminal terminal)
{
    private readonly EntryOptions options = new();
    private readonly Argument<string> at = new("PLACE")
    {
        CompletionSources = { Completions.Places },
        Description = "Where: the reference of a part, such as C12, or another spot of the board; several parts as \"C1-C8 C11\".",
    };
    private readonly Argument<string> what = new("WHAT") { Description = "What was seen, in words." };
    private readonly Argument<string> severity = EntryOptions.OneOf(
        "SEVERITY",
        "How much it matters; major and safety must be answered before the board is fit to run",
        Vocabulary.Severities
    );

    public Command Build()
    {
        var command = options.DatedCommand(
            "found",
            """
            Enter something seen at the bench.

            Examples:
              ohmstead found SP-0007 J3 "flux left from earlier work" minor --by RK
              ohmstead found SP-0007 "C3-C4 R3" "flux around the leads" minor
              ohmstead found SP-0007 C1 "case crazed from end to end" safety
            """,
            at,
            what,
            severity
        );
        command.SetAction(parsed =>
            options.RunDated(parsed, terminal, (board, run) =>
                options.AddAt(parsed, terminal, board, run, "found", parsed.GetValue(at)!, place =>
                    FlowText.Mapping([("at", place), ("what", parsed.GetValue(what)), ("severity", parsed.GetValue(severity))])
                )
            )
        );
        return command;
    }
}
