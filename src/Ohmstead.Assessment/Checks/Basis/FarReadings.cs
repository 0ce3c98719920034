using System.Globalization;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>Readings so far off what they are read against that a slip of the unit or of a zero is likelier than any wear, of boards and
/// of lots alike.</summary>
/// <remarks>
/// What wear does to a quantity decides where a slip begins. A capacitor loses nine tenths and more of its value, it never gains ten times:
/// ten times as much is a slip, a tenth is not, a thousandth is. With a resistor it is the other way round. ESR and leakage rise by tens as
/// parts wear. All of it is common practice.
/// </remarks>
internal static class FarReadings
{
    /// <summary>What to do about one.</summary>
    internal static string NextStep(Verdict verdict) =>
        IsWithoutPercent(verdict)
            ? $"write {Percent(verdict, 1m)} where the meter shows per cent, or {Percent(verdict, 100m)} where it is so"
            : "look at the unit prefix and the decimal point on the meter and in the record";

    // Ten times, less what a tolerance and a little wear take from it.
    private const decimal Tenfold = 8m;

    // A thousand times, less what a dead part takes from it: a factor of 300 is a prefix, not wear.
    private const decimal Thousandfold = 300m;

    // A dried-out part has tens of times its limit, an open one no reading; a loss above fifty times the limit was written in per cent.
    private const decimal TimesEsrLimit = 100m;
    private const decimal TimesLossLimit = 50m;

    // No part is a thousand times better than it has to be.
    private const decimal TimesBetter = 1_000m;

    /// <summary>The verdicts that are so far off, each with the message.</summary>
    internal static IEnumerable<(Verdict Verdict, string Message)> Find(IEnumerable<AssessedReading> readings)
    {
        foreach (var assessed in readings)
        {
            for (var at = 0; at < assessed.Verdicts.Length; at++)
            {
                if (Find(assessed.Verdicts[at], assessed.Point) is { } message)
                {
                    yield return (assessed.Verdicts[at], message);
                }
            }
        }
    }

    /// <summary>The same of proofs.</summary>
    internal static IEnumerable<(Verdict Verdict, string Message)> Find(IEnumerable<AssessedProof> proofs)
    {
        foreach (var assessed in proofs)
        {
            for (var at = 0; at < assessed.Verdicts.Length; at++)
            {
                if (Find(assessed.Verdicts[at], assessed.Point) is { } message)
                {
                    yield return (assessed.Verdicts[at], message);
                }
            }
        }
    }

    private static string? Find(Verdict verdict, TestPoint? point) => point is null ? OfPart(verdict) : AtPoint(verdict, point);

    private static string? OfPart(Verdict verdict) => FromFigures(verdict) ?? WithoutPercent(verdict);

    // A loss factor above one is a dead part; written in per cent nobody takes it for the display of a meter that shows per cent.
    private static string? WithoutPercent(Verdict verdict) =>
        IsWithoutPercent(verdict) ? $"loss factor {verdict.Reading.Text} is written without % and is {Percent(verdict, 100m)}" : null;

    private static bool IsWithoutPercent(Verdict verdict) =>
        verdict is { Measured: Measured.LossFactor, Exact.Value: > 1m } && !verdict.Reading.Text.Contains('%', StringComparison.Ordinal);

    private static string Percent(Verdict verdict, decimal times) =>
        (verdict.Exact!.Value.Value * times).ToString("0.############", CultureInfo.InvariantCulture) + " %";

    private static string? FromFigures(Verdict verdict)
    {
        if (verdict.Exact?.Value is not (> 0m and var read) || verdict.Limit is not { } limit)
        {
            return null;
        }

        if (limit.Nominal is { Value: > 0m } nominal)
        {
            var (times, parts) = FromMark(verdict.Measured);
            return read >= times * nominal.Value || (parts is { } share && nominal.Value >= share * read)
                ? Message(verdict, read, nominal, "the marked")
                : null;
        }

        return limit.Interval.Upper is { Value: > 0m } upper && IsFarFromLimit(verdict.Measured, read, upper.Value)
            ? Message(verdict, read, upper, "its limit of")
            : null;
    }

    // How many times the mark, and what part of it, is a slip.
    private static (decimal Times, decimal? Parts) FromMark(Measured measured) =>
        measured switch
        {
            Measured.Resistance => (Thousandfold, Tenfold),
            Measured.Frequency => (Tenfold, Tenfold),
            Measured.Voltage or Measured.ForwardVoltage => (Tenfold, null),
            _ => (Tenfold, Thousandfold),
        };

    private static bool IsFarFromLimit(Measured measured, decimal read, decimal upper) =>
        measured switch
        {
            Measured.Esr => read >= TimesEsrLimit * upper || upper >= TimesBetter * read,
            Measured.LossFactor => read >= TimesLossLimit * upper,
            Measured.Leakage => read >= Thousandfold * upper,
            Measured.ForwardVoltage or Measured.Voltage => read >= Tenfold * upper,
            _ => false,
        };

    // A dead supply reads millivolts where volts belong: that is no slip. No rail has ten times its volts, and none has more ripple than
    // volts.
    private static string? AtPoint(Verdict verdict, TestPoint point)
    {
        if (point is not { Measures: PointMeasure.Voltage, Nominal.Value: { Value: not 0m } nominal })
        {
            return null;
        }

        if (verdict.Exact is not { } shown)
        {
            return null;
        }

        var (read, rail) = (Math.Abs(shown.Value), Math.Abs(nominal.Value));
        return verdict.Measured switch
        {
            Measured.Voltage when read >= Tenfold * rail => Message(verdict, read, nominal with { Value = rail }, "the"),
            Measured.Ripple when read >= rail =>
                $"ripple {verdict.Reading.Text} is no less than the {QuantityText.Format(nominal)} that it lies on",
            _ => null,
        };
    }

    private static string Message(Verdict verdict, decimal read, Quantity against, string what) =>
        $"{VerdictWords.Describe(verdict.Measured)} {verdict.Reading.Text} is {Factor(read, against.Value)} {what} "
        + VerdictWords.Short(against);

    private static string Factor(decimal reading, decimal mark) =>
        reading > mark
            ? $"{QuantityText.Format(new Quantity(decimal.Round(reading / mark), Dimension.Number), 3)} times"
            : $"1/{QuantityText.Format(new Quantity(decimal.Round(mark / reading), Dimension.Number), 3)} of";
}
