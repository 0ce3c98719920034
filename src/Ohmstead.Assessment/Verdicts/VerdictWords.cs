using System.Globalization;
using Ohmstead.Assessment.Limits;
using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Verdicts;

/// <summary>The words in which verdicts are told, the same in the terminal, in data and on the pages.</summary>
public static class VerdictWords
{
    /// <summary>The outcome as a person reads it.</summary>
    public static string Describe(VerdictOutcome outcome) =>
        outcome switch
        {
            VerdictOutcome.Inside => "inside",
            VerdictOutcome.Outside => "outside",
            VerdictOutcome.Undecided => "undecided",
            VerdictOutcome.ProvesNothing => "proves nothing",
            _ => "no limit known",
        };

    /// <summary>The outcome as it may be written in a record, or null where none is.</summary>
    public static WrittenVerdict? InRecord(VerdictOutcome outcome) =>
        outcome switch
        {
            VerdictOutcome.Inside => WrittenVerdict.In,
            VerdictOutcome.Outside => WrittenVerdict.Out,
            VerdictOutcome.Undecided => WrittenVerdict.Undecided,
            _ => null,
        };

    /// <summary>The kind of limit as a person reads it.</summary>
    public static string Describe(LimitKind kind) =>
        kind switch
        {
            LimitKind.Delivery => "delivery limit",
            LimitKind.EndOfLife => "end-of-life limit",
            _ => "circuit limit",
        };

    /// <summary>What was measured, as a person reads it.</summary>
    public static string Describe(Measured measured) =>
        measured switch
        {
            Measured.Esr => "ESR",
            Measured.LossFactor => "dissipation factor",
            Measured.Insulation => "insulation resistance",
            Measured.VoltageLoss => "voltage loss",
            Measured.ForwardVoltage => "forward voltage",
            Measured.Gain => "current gain",
            Measured.Hours => "hours of soak",
            Measured.Capacitance => "capacitance",
            Measured.Leakage => "leakage",
            Measured.Resistance => "resistance",
            Measured.Inductance => "inductance",
            Measured.Voltage => "voltage",
            Measured.Ripple => "ripple",
            Measured.Current => "current",
            Measured.Frequency => "frequency",
            Measured.Temperature => "temperature",
            _ => throw new ArgumentOutOfRangeException(nameof(measured), measured, "This quantity has no name."),
        };

    /// <summary>A probability with four decimals.</summary>
    public static string Probability(double probability) =>
        probability switch
        {
            // Nearly all readings are far from their limits: these need no rounding. The rest is left to it.
            >= 0.99995 => "1.0000",
            < 0.00004 => "0.0000",
            _ => probability.ToString("0.0000", CultureInfo.InvariantCulture),
        };

    /// <summary>A fraction as a signed percentage with one decimal: -7.0 %.</summary>
    public static string Percent(decimal fraction) =>
        Tenths(fraction) is var rounded && rounded > 0m ? InPercent("+", rounded) : InPercent(string.Empty, rounded);

    /// <summary>A fraction as a percentage without a sign: one decimal, or three significant digits where that would be zero.</summary>
    public static string Share(decimal fraction) =>
        Math.Abs(fraction) is > 0m and < 0.0005m and var small
            ? QuantityText.Format(new Quantity(small * 100m, Dimension.Number), 3) + " %"
            : InPercent(string.Empty, Tenths(Math.Abs(fraction)));

    /// <inheritdoc cref="LimitWords.Ends"/>
    public static (string Lower, string Upper) Ends(Quantity lower, Quantity upper) => LimitWords.Ends(lower, upper);

    /// <inheritdoc cref="LimitWords.Range"/>
    public static string Range(Interval interval) => LimitWords.Range(interval);

    /// <inheritdoc cref="LimitWords.Short"/>
    public static string Short(Quantity quantity) => LimitWords.Short(quantity);

    private static decimal Tenths(decimal fraction) => Math.Round(fraction * 100m, 1, MidpointRounding.AwayFromZero);

    private static string InPercent(string sign, decimal rounded) => sign + DecimalText.Format(rounded, 1, "%");
}
