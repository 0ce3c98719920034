using System.CommandLine;
using Ohmstead.Electronics;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Enters a calibration of an instrument; the older ones stay, since readings of their time are judged by them.</summary>
internal sealed class CalibrationCommand(Terminal terminal)
{
    private readonly StockOptions options = new();
    private readonly Argument<string> instrument = new("INSTRUMENT")
    {
        CompletionSources = { Completions.Instruments },
        Description = "The instrument, such as bridge-1.",
    };
    private readonly Option<string?> valid = new("--valid")
    {
        Description = "How long it holds, such as \"12 months\"; 12 months when not said.",
    };
    private readonly Option<string?> certificate = new("--certificate") { Description = "The number of its certificate." };

    public Command Build()
    {
        var command = options.PlainCommand(
            "calibration",
            """
            Enter a calibration of an instrument. The older ones stay: a reading is judged by the one in force on its day.

            Examples:
              ohmstead calibration bridge-2 --valid "12 months" --certificate SPC-26-021
              ohmstead calibration esr-1 --certificate SPC-26-022 --on 2026-11-20
            """,
            instrument,
            valid,
            certificate
        );
        command.SetAction(parsed => options.Run(parsed, terminal, (files, run) =>
            {
                var entry = new InstrumentEntry(terminal, run, files);
                var (id, day) = (parsed.GetValue(instrument)!, parsed.GetValue(options.On) ?? run.Today);
                if (WhyNot(entry, id, day, run.Today) is { } why)
                {
                    terminal.Error.WriteLine(Printable.Escape(why));
                    return ExitCode.Usage;
                }

                return entry.Calibrated(
                    id,
                    Line(IsoDate.Text(day), parsed.GetValue(valid), parsed.GetValue(certificate)),
                    parsed.GetValue(options.Trial)
                );
            }));
        return command;
    }

    /// <summary>A calibration as one line of YAML.</summary>
    public static string Line(string date, string? valid, string? certificate) =>
        FlowText.Mapping([
            ("date", date),
            ("valid", valid is null ? null : EnteredValues.Spaced(valid, Shape("valid").Dimension, Shape("valid").Kind)),
            ("certificate", certificate),
        ]);

    private static Key Shape(string key) => FileShapes.Calibration.Keys[FileShapes.Calibration.PlaceOf(key)];

    private static string? WhyNot(InstrumentEntry entry, string id, DateOnly day, DateOnly today) =>
        !entry.Workshop.Instruments.TryGetValue(id, out var known)
            ? Nearest.Told(
                $"there is no instrument '{id}'",
                Nearest.To(id, entry.Workshop.Instruments.Keys),
                $"; enter it first: ohmstead instrument {id} \"what it is\""
            )
        : day > today ? LateDay.NotYet(day, today)
        : known.Calibrations.Any(one => one.Date.Value == day) ? $"{id} was calibrated on {IsoDate.Text(day)} already, by what is on record"
        : null;
}
