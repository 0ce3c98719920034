using System.Collections.Immutable;
using Ohmstead.Electronics.PreferredValues;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The colour bands of resistors: all meanings, in both directions where the start is not known.</summary>
/// <remarks>
/// One black band is a link. Three bands are two digits and a multiplier, 20 %; a fourth is the tolerance. Five are three digits, multiplier and tolerance, or on
/// composition parts a four-band value with a failure level behind gold or silver; six add a temperature coefficient. The first digit is never 0, which often decides the
/// direction. Sources: IEC 60062; MIL-R-39008 for the failure level, from memory.
/// </remarks>
public static class ResistorBands
{
    /// <summary>Reads bands written as colour names.</summary>
    public static Parsed<Marking<BandedResistor>> Parse(ReadOnlySpan<char> text, BandStart start = BandStart.Unknown) =>
        BandColours.Parse(text).Is(out var bands, out var fault) ? Read(bands, start) : Parsed<Marking<BandedResistor>>.Failed(fault);

    /// <summary>Reads one to six bands.</summary>
    public static Parsed<Marking<BandedResistor>> Read(ImmutableArray<BandColour> bands, BandStart start = BandStart.Unknown)
    {
        var readings = new List<MarkingReading<BandedResistor>>();
        Add(readings, bands.AsSpan(), reversed: false);
        if (start is BandStart.Unknown)
        {
            var other = bands.Reverse().ToImmutableArray();
            if (!other.SequenceEqual(bands)) Add(readings, other.AsSpan(), reversed: true);
        }

        var named = string.Join(' ', bands.Select(BandColours.Name));
        return readings.Count > 0
            ? Parsed<Marking<BandedResistor>>.Of(new Marking<BandedResistor>([.. readings]))
            : Parsed<Marking<BandedResistor>>.Failed(new ParseFault(ParseFaultKind.NotUnderstood, 0, named.Length, $"'{named}' is no resistor in {(start is BandStart.Known ? "this direction" : "either direction")}, expected 3 to 6 bands such as yellow violet red gold", null));
    }

    private static void Add(List<MarkingReading<BandedResistor>> readings, ReadOnlySpan<BandColour> bands, bool reversed)
    {
        switch (bands)
        {
            case [BandColour.Black]:
                readings.Add(new MarkingReading<BandedResistor>(new BandedResistor(new Quantity(0m, Dimension.Resistance), default, null, null, false, true), "a single black band is a link", Source.CommonPractice));
                break;
            case [_, _, var multiplier]:
                Add(readings, bands[..2], multiplier, [ResistorBandMeanings.WithoutBand], null, null, reversed);
                break;
            case [_, _, var multiplier, var tolerance]:
                Add(readings, bands[..2], multiplier, ResistorBandMeanings.Tolerance(tolerance), null, null, reversed);
                break;
            case [_, _, _, var multiplier, var tolerance]:
                Add(readings, bands[..3], multiplier, ResistorBandMeanings.Tolerance(tolerance), null, null, reversed);
                if (ResistorBandMeanings.FailureRate(tolerance) is { } rate && multiplier is BandColour.Gold or BandColour.Silver)
                    Add(readings, bands[..2], bands[2], ResistorBandMeanings.Tolerance(multiplier), null, rate, reversed);
                break;
            case [_, _, _, var multiplier, var tolerance, var coefficient]:
                if (ResistorBandMeanings.TemperatureCoefficient(coefficient) is { } change)
                    Add(readings, bands[..3], multiplier, ResistorBandMeanings.Tolerance(tolerance), change, null, reversed);
                break;
            default:
                break;
        }
    }

    private static void Add(
        List<MarkingReading<BandedResistor>> readings, ReadOnlySpan<BandColour> digits, BandColour multiplier, ImmutableArray<ToleranceMeaning> tolerances, decimal? coefficient, decimal? failureRate, bool reversed)
    {
        if (BandColours.Value(digits, multiplier) is not { } ohms || ohms > DimensionFacts.Most(Dimension.Resistance)) return;
        var nominal = new Quantity(ohms, Dimension.Resistance);
        var preferred = digits.Length == 2 ? ESeries.E24.Contains(nominal) : ESeries.E192.Contains(nominal) || ESeries.E24.Contains(nominal);
        foreach (var tolerance in tolerances)
        {
            var rule = $"{digits.Length} digits, multiplier {BandColours.Name(multiplier)}, {tolerance.Tolerance}{(failureRate is null ? "" : ", failure level")}{(reversed ? ", read from the other end" : "")}";
            readings.Add(new MarkingReading<BandedResistor>(
                new BandedResistor(nominal, tolerance.Tolerance, coefficient, failureRate, reversed, preferred), rule, failureRate is null ? tolerance.Source : ResistorBandMeanings.FailureLevel));
        }
    }
}
