using System.CommandLine;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Adds to what is known of a board: a part, a test point, a hazard.</summary>
internal sealed class AddCommand(Terminal terminal)
{
    public Command Build() =>
        new(
            "add",
            """
            Add a part, a test point or a hazard to a board.

            Examples:
              ohmstead add part SP-0019 R4 "carbon film resistor" 4k7ohm 5%
              ohmstead add point SP-0019 +15V 15V 5% ripple_limit=10mV
              ohmstead add hazard SP-0019 mains at=T1
            """
        )
        {
            One(
                "part",
                """
                Add a part to the list of a board.

                Examples:
                  ohmstead add part SP-0019 C4 "aluminium electrolytic" 470uF 20% 35V 105C role=reservoir
                  ohmstead add part SP-0019 R4 "carbon film resistor" 4k7ohm 5%
                """,
                "parts",
                PartShape.Shape,
                Name("REF", "Its reference on the board, such as C1."),
                Kind(Vocabulary.PartKinds)
            ),
            One(
                "point",
                """
                Add a test point, or a test, that proves a board.

                Examples:
                  ohmstead add point SP-0019 +15V 15V 5% ripple_limit=10mV
                  ohmstead add point SP-0019 raw 14V 20%
                """,
                "points",
                FileShapes.PointShape,
                Name("POINT", "Its name, such as +15V."),
                null
            ),
            One(
                "hazard",
                """
                Add something on a board that can hurt. Its cautions are shown from then on.

                Examples:
                  ohmstead add hazard SP-0019 "charged capacitor" at=C1 340V 100uF 220kohm
                  ohmstead add hazard SP-0019 mains at=T1
                """,
                "hazards",
                FileShapes.HazardShape,
                EntryOptions.OneOf("HAZARD", "What can hurt", Vocabulary.Hazards),
                null
            ),
        };

    private Command One(string word, string about, string list, Shape shape, Argument<string> name, Argument<string>? kind)
    {
        var options = new EntryOptions();
        var values = new Argument<string[]>("VALUE")
        {
            Description = "What is known of it, with its unit, or key=value.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var command = options.Command(word, about, kind is null ? [name, values] : [name, kind, values]);
        command.SetAction(parsed => options.Run(parsed, terminal, (board, run) =>
            {
                var (said, fault) = SaidPart.Read(parsed.GetValue(values)!, shape);
                if (fault is not null)
                {
                    terminal.Error.WriteLine(Printable.Escape(fault));
                    return ExitCode.Usage;
                }

                var line = new Dictionary<string, string?>(said, StringComparer.Ordinal) { [shape.Keys[0].Name] = parsed.GetValue(name) };
                if (kind is not null)
                {
                    line["kind"] = parsed.GetValue(kind);
                }

                if (parsed.GetValue(options.Note) is { } note)
                {
                    line["note"] = note;
                }

                if (Has(board.Board.Board, list, parsed.GetValue(name)!))
                {
                    var taken = $"{board.Board.Board.Id.Value} has {parsed.GetValue(name)} already; write another name";
                    terminal.Error.WriteLine(Printable.Escape(taken));
                    return ExitCode.Usage;
                }

                var item = FlowText.Mapping(shape.Keys.Select(key => (key.Name, line.GetValueOrDefault(key.Name))));
                return new BenchEntry(terminal, run).Change(board, parsed.GetValue(options.Sure), parsed.GetValue(options.Trial), editor =>
                    (editor.Append(FileShapes.Board, list, item), item)
                );
            }));
        return command;
    }

    // What the design lists may be listed again: then it differs on this board.
    private static bool Has(BoardFile board, string list, string name) =>
        list switch
        {
            "parts" => board.Parts.Any(part => part.Ref.Value == name),
            "points" => board.Points.Any(point => point.Name.Value == name),
            _ => false,
        };

    private static Argument<string> Name(string name, string description) => new(name) { Description = description };

    private static Argument<string> Kind(IReadOnlyList<string> kinds) => EntryOptions.OneOf("KIND", "What it is", kinds);
}
