using System.CommandLine;
using Ohmstead.Output;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Shapes;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Enters what was measured, and judges it in the same movement.</summary>
internal sealed class EnterCommand(Terminal terminal)
{
    private readonly EntryOptions options = new();
    private readonly Argument<string> place = new("PLACE") { Description = "The part that was measured, or the test point that was proved." };
    private readonly Argument<string[]> values = new("VALUE") { Description = "What was read, with its unit: 391uF 1.4ohm 120Hz, pass, or key=value.", Arity = ArgumentArity.OneOrMore };
    private readonly Option<bool> inCircuit = new("--in-circuit") { Description = "The part was in the circuit." };
    private readonly Option<bool> lifted = new("--lifted") { Description = "The part was out of the circuit, or one leg was." };
    private readonly Option<string?> state = new("--state") { Description = "When in the part's life: as found, as left, new. As found when not said." };
    private readonly Option<string?> lot = new("--lot") { Description = "The lot, for a part from the drawer that is not fitted yet." };

    public Command Build()
    {
        var command = options.Command(
            "enter",
            """
            Enter a reading or a proof, and tell its verdict.

            Examples:
              ohmstead enter SP-0007 C12 391uF 1.4ohm 120Hz --lifted --by RK
              ohmstead enter SP-0007 R3 4k81ohm --in-circuit
              ohmstead enter SP-0007 C12 472uF --lot L-031 --state new
              ohmstead enter SP-0007 +15V 15.06V ripple=4mV
              ohmstead enter SP-0007 soak hours=8 pass
            """,
            place, values, inCircuit, lifted, state, lot);
        command.SetAction(parsed => options.Run(parsed, terminal, (board, run) =>
        {
            var name = parsed.GetValue(place)!;
            var part = board.Assessment.Place(name)?.Part;
            var point = part is null ? board.Assessment.Points.FirstOrDefault(known => known.Name.Value == name) : null;
            if (part is null && point is null)
            {
                var near = Nearest.To(name, board.Assessment.Places.Select(known => known.Part.Ref.Value).Concat(board.Assessment.Points.Select(known => known.Name.Value)));
                terminal.Error.WriteLine(Printable.Of($"{board.Assessment.Board.Id.Value} has no part and no point '{name}'" + (near is null ? string.Empty : $", '{near}' is the nearest")));
                return ExitCode.Usage;
            }

            var shape = part is null ? BenchShape.Proof : BenchShape.Reading;
            var (read, fault) = EnteredValues.Read(parsed.GetValue(values)!, part?.Values.Kind.Value, point?.Measures, shape);
            if (fault is not null)
            {
                terminal.Error.WriteLine(Printable.Of(fault));
                return ExitCode.Usage;
            }

            if (parsed.GetValue(inCircuit) && parsed.GetValue(lifted))
            {
                terminal.Error.WriteLine("a part is in the circuit or lifted, not both");
                return ExitCode.Usage;
            }

            return options.Add(parsed, terminal, board, run, part is null ? "proof" : "readings", visit =>
            {
                var said = new Dictionary<string, string?>(StringComparer.Ordinal)
                {
                    [part is null ? "point" : "part"] = name,
                    ["lot"] = parsed.GetValue(lot),
                    ["state"] = parsed.GetValue(state),
                    ["circuit"] = parsed.GetValue(inCircuit) ? "in" : parsed.GetValue(lifted) ? "out" : null,
                    ["instrument"] = parsed.GetValue(options.Instrument) is { } used && visit.GetValueOrDefault("instrument") != used ? used : null,
                    ["note"] = parsed.GetValue(options.Note),
                };
                foreach (var (key, value) in read)
                {
                    said[key] = value;
                }

                return FlowText.Mapping(shape.Keys.Select(key => (key.Name, said.GetValueOrDefault(key.Name))));
            });
        }));
        return command;
    }
}
