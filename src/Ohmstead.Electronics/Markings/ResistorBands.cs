using System.Collections.Immutable;
using Ohmstead.Electronics.PreferredValues;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The colour bands of resistors: all meanings, in both directions where the start is not known.</summary>
/// <remarks>
/// One black band is a link. Three bands are two digits and a multiplier, 20 %; a fourth is the tolerance. Five are three digits,
/// multiplier and tolerance, or on composition parts a four-band value with a failure level behind gold or silver; six add a temperature
/// coefficient. The first digit is never 0, which often decides the direction. Sources: IEC 60062; MIL-R-39008 for the failure level, from
/// memory.
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
            if (!other.SequenceEqual(bands))
                Add(readings, other.AsSpan(), reversed: true);
        }

        if (readings.Count > 0)
            return Parsed<Marking<BandedResistor>>.From(new Marking<BandedResistor>([.. readings]));
        var named = string.Join(' ', bands.Select(BandColours.Name));
        var where = start is BandStart.Known ? "in this direction" : "in either direction";
        return Marking<BandedResistor>.Failed(
            named,
            $"'{named}' is no resistor {where}, expected 3 to 6 bands such as yellow violet red gold"
        );
    }

    private static void Add(List<MarkingReading<BandedResistor>> readings, ReadOnlySpan<BandColour> bands, bool reversed)
    {
        switch (bands)
        {
            case [BandColour.Black]:
                var link = new BandedResistor(new Quantity(0m, Dimension.Resistance), default, null, null, false, true);
                readings.Add(new MarkingReading<BandedResistor>(link, "a single black band is a link", Source.CommonPractice));
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
        List<MarkingReading<BandedResistor>> readings,
        ReadOnlySpan<BandColour> digits,
        BandColour multiplier,
        ImmutableArray<ToleranceMeaning> tolerances,
        decimal? coefficient,
        decimal? failureRate,
        bool reversed
    )
    {
        if (BandColours.Value(digits, multiplier) is not { } ohms || ohms > DimensionFacts.Most(Dimension.Resistance))
            return;
        var nominal = new Quantity(ohms, Dimension.Resistance);
        var preferred = ESeries.E24.Contains(nominal) || (digits.Length == 3 && ESeries.E192.Contains(nominal));
        var rule = $"{(digits.Length == 2 ? "two" : "three")} digits, multiplier {BandColours.Name(multiplier)}";
        var extra = $"{(failureRate is null ? "" : ", failure level")}{(reversed ? ", read from the other end" : "")}";
        foreach (var meaning in tolerances)
        {
            var resistor = new BandedResistor(nominal, meaning.Tolerance, coefficient, failureRate, reversed, preferred);
            var source = failureRate is null ? meaning.Source : ResistorBandMeanings.FailureLevel;
            readings.Add(new MarkingReading<BandedResistor>(resistor, $"{rule}, {meaning.Tolerance}{extra}", source));
        }
    }
}
