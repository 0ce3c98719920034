using System.Text;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Meters;

/// <summary>A meter that is asked in the words of IEEE 488.2 and SCPI.</summary>
/// <param name="wire">The wire to it.</param>
/// <param name="patience">How long to wait for an answer.</param>
/// <param name="meter">What its answer holds; null for what the meter itself says of it.</param>
internal sealed class ScpiMeter(IWire wire, TimeSpan patience, Meter? meter) : IMeter
{
    // A meter that does not know a question stays silent.
    private static readonly TimeSpan OfAside = TimeSpan.FromSeconds(2);

    private readonly WireLines lines = new(wire, patience);

    /// <summary>Who the meter says that it is, safe to print; or why it says nothing.</summary>
    public (string? Who, string? Fault) Greet(Func<bool> isStopped)
    {
        var (end, line) = Ask(ScpiWords.Who, isStopped, null);
        return end == WireEnd.Line ? (Printable.Escape(line.Length > 100 ? line[..100] + "…" : line), null) : (null, WireFault.Told(end));
    }

    /// <inheritdoc/>
    public MeterAnswer Read(Func<bool> isStopped)
    {
        try
        {
            return meter is { Fields.Length: > 0 } ? ByDescription(meter, isStopped) : ByItsFunction(isStopped);
        }
        catch (IOException problem)
        {
            return MeterAnswer.Without($"the meter cannot be asked: {Printable.Escape(problem.Message)}");
        }
    }

    /// <inheritdoc/>
    public void Dispose() => wire.Dispose();

    private MeterAnswer ByItsFunction(Func<bool> isStopped)
    {
        var (end, function) = Ask(ScpiWords.Function, isStopped, null);
        if (end != WireEnd.Line)
        {
            return MeterAnswer.Without(WireFault.Told(end));
        }

        if (ScpiWords.Measures(function) is not var (measured, unit, path))
        {
            return MeterAnswer.Without(
                $"the meter is on {Printable.Escape(function)}, which says nothing that a record holds; describe it in meters.yaml"
            );
        }

        var (answered, line) = Ask(ScpiWords.Read, isStopped, null);
        if (answered != WireEnd.Line)
        {
            return MeterAnswer.Without(WireFault.Told(answered));
        }

        // Somebody may have turned the knob meanwhile: figure and function would not belong together.
        var (again, after) = Ask(ScpiWords.Function, isStopped, null);
        if (again != WireEnd.Line || after != function)
        {
            return MeterAnswer.Without("the meter was switched while it was read; nothing was taken");
        }

        var first = line.Split(',')[0].Trim();
        if (MeterFigure.IsOverload(first))
        {
            return MeterAnswer.Without("the meter shows that it is beyond its range, or has no reading; nothing was taken");
        }

        if (MeterFigure.Parse(first) is not { } figure || MeterFigure.With(figure, unit, MeasuredDimension.From(measured)) is not { } read)
        {
            return MeterAnswer.Without($"'{Printable.Escape(WireFault.Short(line))}' is no figure; nothing was taken");
        }

        return MeterAnswer.With(
            new([
                (MeasuredKey.For(measured).Name, QuantityText.Format(read)),
                .. Aside($"SENS:{path}:RANG?", BenchShape.Range, unit, MeasuredDimension.From(measured), isStopped),
            ])
        );
    }

    private MeterAnswer ByDescription(Meter described, Func<bool> isStopped)
    {
        var (end, line) = Ask(described.Ask?.Value ?? ScpiWords.Read, isStopped, null);
        if (end != WireEnd.Line)
        {
            return MeterAnswer.Without(WireFault.Told(end));
        }

        var answer = new LineMeaning(described).Read(line);
        if (answer.Reading is not { } reading)
        {
            return answer;
        }

        var values = reading.Values.ToList();
        if (described.AskFrequency is { } frequency)
        {
            values.AddRange(Aside(frequency.Value, BenchShape.Frequency, "Hz", Dimension.Frequency, isStopped));
        }

        var place = BenchShape.Reading.PlaceOf(values[0].Key);
        if (described.AskRange is { } range && place >= 0 && UnitOf(described) is { } unit)
        {
            values.AddRange(Aside(range.Value, BenchShape.Range, unit, BenchShape.Reading.Keys[place].Dimension, isStopped));
        }

        return MeterAnswer.With(new([.. values.DistinctBy(value => value.Key)]));
    }

    private static string? UnitOf(Meter described) =>
        described.Fields.FirstOrDefault(field => field.Holds.Value.Role == MeterFieldRole.Measured)?.Unit?.Value;

    // What a meter does not tell stays unsaid.
    private IEnumerable<(string Key, string Value)> Aside(string query, Key key, string unit, Dimension dimension, Func<bool> isStopped) =>
        Ask(query, isStopped, OfAside < patience ? OfAside : patience) is (WireEnd.Line, var line)
        && MeterFigure.Parse(line) is { } figure
        && figure > 0m
        && MeterFigure.With(figure, unit, dimension) is { } value
            ? [(key.Name, QuantityText.Format(value))]
            : [];

    private (WireEnd End, string Line) Ask(string query, Func<bool> isStopped, TimeSpan? within)
    {
        lines.Begin(isStopped);
        wire.Write(Encoding.ASCII.GetBytes(query + "\n"));
        return lines.Next(isStopped, within);
    }
}
