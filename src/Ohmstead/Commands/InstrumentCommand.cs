using System.CommandLine;
using Ohmstead.Electronics;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Enters an instrument with what it is good for.</summary>
internal sealed class InstrumentCommand(Terminal terminal)
{
    // The keys of an accuracy in the unit of what it is of.
    private static readonly string[] InUnits = ["step", "fixed", "up_to"];

    private readonly StockOptions options = new();
    private readonly Argument<string> name = new("INSTRUMENT") { Description = "Its name in the records, such as meter-2." };
    private readonly Argument<string> what = new("WHAT") { Description = "What it is, in a few words." };
    private readonly Option<string?> maker = new("--maker") { Description = "Who made it." };
    private readonly Option<string?> serial = new("--serial") { Description = "Its serial number." };
    private readonly Option<string[]> accuracy = new("--accuracy")
    {
        Description =
            "What it is good for in one quantity, as its handbook says: \"resistance error=0.1% digits=3 step=1ohm up_to=100kohm\". "
            + "Once for each quantity and range.",
        AllowMultipleArgumentsPerToken = false,
    };
    private readonly Option<string?> valid = new("--valid") { Description = "How long the calibration holds that it came with." };
    private readonly Option<string?> certificate = new("--certificate") { Description = "The certificate of that calibration." };

    public Command Build()
    {
        var command = options.DatedCommand(
            "instrument",
            """
            Enter an instrument. What it is good for decides how close to a limit its readings can still tell.
            A calibration that it came with is entered with it, of the day that --on says.

            Examples:
              ohmstead instrument meter-2 "handheld multimeter" --accuracy "resistance error=0.5% digits=2 step=1ohm up_to=4kohm"
              ohmstead instrument meter-3 "clamp meter" --valid "12 months" --certificate SPC-26-030 --on 2026-11-02
            """,
            name,
            what,
            maker,
            serial,
            accuracy,
            valid,
            certificate
        );
        command.SetAction(parsed => options.Run(parsed, terminal, (files, run) =>
            {
                var entry = new InstrumentEntry(terminal, run, files);
                var (id, day) = (parsed.GetValue(name)!, parsed.GetValue(options.On) ?? run.Today);
                var said = new List<string>();
                var why =
                    entry.Workshop.Instruments.ContainsKey(id)
                        ? $"there is an instrument '{id}' already; its next calibration: ohmstead calibration {id}"
                    : day > run.Today ? LateDay.NotYet(day, run.Today)
                    : Accuracies(parsed.GetValue(accuracy) ?? [], said);
                if (why is not null)
                {
                    terminal.Error.WriteLine(Printable.Escape(why));
                    return ExitCode.Usage;
                }

                var (months, paper) = (parsed.GetValue(valid), parsed.GetValue(certificate));
                var isCalibrated = months is not null || paper is not null || parsed.GetValue(options.On) is not null;
                return entry.Add(
                    new Dictionary<string, string?>(StringComparer.Ordinal)
                    {
                        ["id"] = id,
                        ["what"] = parsed.GetValue(what),
                        ["maker"] = parsed.GetValue(maker),
                        ["serial"] = parsed.GetValue(serial),
                        ["note"] = parsed.GetValue(options.Note),
                    },
                    isCalibrated ? CalibrationCommand.Line(IsoDate.Text(day), months, paper) : null,
                    said,
                    (parsed.GetValue(options.Sure), parsed.GetValue(options.Trial))
                );
            }));
        return command;
    }

    // Each as one line of YAML, or why one cannot be.
    private static string? Accuracies(string[] words, List<string> lines)
    {
        foreach (var one in words)
        {
            var said = one.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            var measured = default(Measured);
            if (said is [] || !Vocabulary.InstrumentMeasures.Means(said[0], out measured))
            {
                return Nearest.Told(
                    $"--accuracy '{one}' begins with nothing that an instrument measures",
                    said is [] ? null : Nearest.To(said[0], Vocabulary.InstrumentMeasures),
                    $"; write one of {string.Join(", ", Vocabulary.InstrumentMeasures)}, and its keys after it"
                );
            }

            if (said.Skip(1).FirstOrDefault(word => !word.Contains('=', StringComparison.Ordinal)) is { } bare)
            {
                return $"--accuracy '{one}': '{bare}' has no key; write error=0.5% digits=3 step=1ohm up_to=4kohm";
            }

            var (values, fault) = SaidPart.Read(said[1..], FileShapes.Accuracy);
            if (fault is not null)
            {
                return $"--accuracy '{one}': {fault}";
            }

            // The unit of what it measures tells how a step of it is written.
            var dimension = MeasuredDimension.From(measured);
            var line = values.ToDictionary(
                pair => pair.Key,
                pair => InUnits.Contains(pair.Key) ? EnteredValues.Spaced(pair.Value!, dimension, ValueKind.Quantity) : pair.Value,
                StringComparer.Ordinal
            );
            line["measures"] = said[0];
            lines.Add(FlowText.Mapping(FileShapes.Accuracy.Keys.Select(key => (key.Name, line.GetValueOrDefault(key.Name)))));
        }

        return null;
    }
}
