using System.CommandLine;
using Ohmstead.Electronics;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Enters where a board went and whose it is.</summary>
internal sealed class WhereaboutsCommand(Terminal terminal)
{
    private readonly EntryOptions options = new();
    private readonly Argument<string> did = EntryOptions.OneOf("STEP", "What became of it", Vocabulary.Whereabouts);
    private readonly Option<string?> at = new("--at") { Description = "Where it stands from then on.", HelpName = "PLACE" };
    private readonly Option<string?> owner = new("--owner") { Description = "Whose it is from then on.", HelpName = "WHO" };
    private readonly Option<string?> to = new("--to") { Description = "Who has it.", HelpName = "WHO" };
    private readonly Option<DateOnly?> until = new("--until")
    {
        Description = "When what was lent is to come back.",
        HelpName = "DATE",
        CustomParser = SharedOptions.Day,
    };
    private readonly Option<DateOnly?> on = new("--on")
    {
        Description = "The day, where it was not today.",
        HelpName = "DATE",
        CustomParser = SharedOptions.Day,
    };

    public Command Build()
    {
        var command = options.Command(
            "whereabouts",
            """
            Enter where a board went, or whose it is: it was moved, lent, sold, broken up for parts, or is kept for show.

            Examples:
              ohmstead whereabouts SP-0006 "came back" --at "store, shelf 3" --on 2026-11-20 --by RK
              ohmstead whereabouts SP-0005 lent --to "Two Weirs museum" --until 2027-03-31
              ohmstead whereabouts SP-0007 moved --at "signals room"
              ohmstead whereabouts SP-0016 "changed hands" --owner "harbour office"
              ohmstead whereabouts SP-0012 sold --to "Lantern Yard Spares"
              ohmstead whereabouts SP-0003 "broken up"
              ohmstead whereabouts SP-0001 retired --at "case in the museum room"
            """,
            did,
            at,
            owner,
            to,
            until,
            on
        );
        command.SetAction(parsed => options.Run(parsed, terminal, (board, run) =>
            {
                if (!parsed.GetValue(options.Sure) && Lacking(parsed) is { } lacking)
                {
                    terminal.Error.WriteLine(lacking);
                    return ExitCode.Usage;
                }

                var item = FlowText.Mapping([
                    ("date", IsoDate.Text(parsed.GetValue(on) ?? run.Today)),
                    ("did", parsed.GetValue(did)),
                    ("at", parsed.GetValue(at)),
                    ("owner", parsed.GetValue(owner)),
                    ("to", parsed.GetValue(to)),
                    ("until", parsed.GetValue(until) is { } day ? IsoDate.Text(day) : null),
                    ("by", Initials.Clean(parsed.GetValue(options.By))),
                    ("note", parsed.GetValue(options.Note)),
                ]);
                var entry = new BenchEntry(terminal, run);
                return entry.Change(board, parsed.GetValue(options.Sure), parsed.GetValue(options.Trial), editor =>
                    (
                        parsed.GetValue(options.Sure) || !editor.Holds("whereabouts", item)
                            ? editor.Append(FileShapes.Board, "whereabouts", item)
                            : entry.Twice("where it went", item),
                        item
                    )
                );
            }));
        return command;
    }

    // What the check of the record would say too, in the words of the command line.
    private string? Lacking(ParseResult parsed)
    {
        if (!Vocabulary.Whereabouts.Means(parsed.GetValue(did)!, out var step))
        {
            return null;
        }

        return step switch
        {
            WhereaboutsKind.Lent when parsed.GetValue(to) is null => "lent, but not who has it; write --to and the name of who has it",
            WhereaboutsKind.Moved when parsed.GetValue(at) is null => "moved, but not where it stands now; write --at and the place",
            WhereaboutsKind.ChangedHands when parsed.GetValue(owner) is null =>
                "changed hands, but not who owns it now; write --owner and the name",
            _ => null,
        };
    }
}
