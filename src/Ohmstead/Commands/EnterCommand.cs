using System.CommandLine;
using Ohmstead.Records.Model;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Enters what was measured, and judges it in the same movement.</summary>
internal sealed class EnterCommand(Terminal terminal)
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
        Description = "What was read, with its unit: 391uF 1.4ohm 120Hz, pass, open, over 20Mohm, or key=value.",
        Arity = ArgumentArity.OneOrMore,
    };
    private readonly Option<bool> inCircuit = new("--in-circuit") { Description = "The part was in the circuit." };
    private readonly Option<bool> lifted = new("--lifted") { Description = "The part was out of the circuit, or one leg was." };
    private readonly Option<string?> state = new("--state")
    {
        Description = "When in the part's life: as found, as left, new. As found when not said.",
    };
    private readonly Option<string?> lot = new("--lot")
    {
        CompletionSources = { Completions.Lots },
        Description = "The lot, for a part from the drawer that is not fitted yet.",
    };

    public Command Build()
    {
        state.AcceptOnlyFromAmong([.. Vocabulary.ReadingStates]);
        var command = options.DatedCommand(
            "enter",
            """
            Enter a reading or a proof, and tell its verdict.

            Examples:
              ohmstead enter SP-0004 C12 391uF 1.4ohm 120Hz --lifted --by RK
              ohmstead enter SP-0007 R3 4k81ohm --in-circuit
              ohmstead enter SP-0004 C12 472uF --lot L-002 --state new
              ohmstead enter SP-0004 +15V 15.06V ripple=4mV
              ohmstead enter SP-0007 soak hours=8 pass
              ohmstead enter SP-0007 R4 over 20Mohm --lifted         (a shell takes > for itself: '>20Mohm')
              ohmstead enter SP-0007 F1 open --in-circuit            (also short, over range)
              ohmstead enter SP-0007 L1 2.1H --lifted --on 2026-05-02    (from paper: it goes to that day)
            """,
            place,
            values,
            inCircuit,
            lifted,
            state,
            lot
        );
        command.SetAction(parsed => options.RunDated(parsed, terminal, (board, run) =>
            {
                if (parsed.GetValue(inCircuit) && parsed.GetValue(lifted))
                {
                    terminal.Error.WriteLine("a part is in the circuit or lifted, not both");
                    return ExitCode.Usage;
                }

                var (entry, fault) = PreparedEntry.Prepare(
                    board.Board,
                    new(parsed.GetValue(place)!, parsed.GetValue(values)!)
                    {
                        Circuit =
                            parsed.GetValue(inCircuit) ? "in"
                            : parsed.GetValue(lifted) ? "out"
                            : null,
                        Lot = parsed.GetValue(lot),
                        State = parsed.GetValue(state),
                        Instrument = parsed.GetValue(options.Instrument),
                        Note = parsed.GetValue(options.Note),
                    }
                );
                if (entry is null)
                {
                    terminal.Error.WriteLine(Printable.Escape(fault!));
                    return ExitCode.Usage;
                }

                return options.Add(parsed, terminal, board, run, entry.Key, entry.Item);
            }));
        return command;
    }
}
