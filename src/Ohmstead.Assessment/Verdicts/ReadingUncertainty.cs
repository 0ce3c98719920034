using System.Collections.Immutable;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Verdicts;

/// <summary>The expanded uncertainty of a reading, from what the instrument is good for.</summary>
/// <param name="Expanded">U with k = 2, in the unit of the reading.</param>
/// <param name="Arithmetic">How it was reached.</param>
public sealed record ReadingUncertainty(Quantity Expanded, LazyText Arithmetic)
{
    /// <summary>The rule by which an error of an instrument becomes an uncertainty.</summary>
    public const string Rule = "JCGM 100:2008, 4.3.7 (from memory)";

    /// <summary>The rule as it stands at the end of the working.</summary>
    public const string RuleCited = "; " + Rule;

    /// <summary>What stands before the error that an instrument may have, in the working of an uncertainty.</summary>
    public const string Opening = "U = 2 x (";

    /// <summary>What stands between that error and the uncertainty.</summary>
    public const string Closing = ") / sqrt(3) = ";

    /// <summary>The uncertainty of a value, or null when the instrument says nothing about this quantity.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="measured">What was measured.</param>
    /// <param name="value">What it showed.</param>
    /// <param name="on">The range that it was on, where that is known: a little value on a large range has what that range is good
    /// for.</param>
    public static ReadingUncertainty? Compute(Instrument instrument, Measured measured, Quantity value, Quantity? on = null)
    {
        var reached = on is { } range ? Math.Max(Math.Abs(range.Value), Math.Abs(value.Value)) : Math.Abs(value.Value);
        if ((Fitting(instrument.Accuracies, RangeFor(measured), reached) ?? Widest(instrument, measured, value, on)) is not { } fitting)
        {
            return null;
        }

        var specification = new AccuracySpecification(
            (fitting.Error?.Value.Value ?? 0m) * 100m,
            fitting.Digits?.Value ?? 0m,
            fitting.Step?.Value.Value ?? 0m,
            fitting.Fixed?.Value.Value ?? 0m
        );
        if (!specification.ExpandedUncertainty(value.Value).Is(out var expanded, out _))
        {
            return null;
        }

        if (
            fitting.Certificate is { } certificate
            && WithCalibration(expanded, certificate.Value.Value * Math.Abs(value.Value)) is { } both
        )
        {
            return Calibrated(fitting, value, expanded, certificate.Text, new Quantity(both, value.Dimension));
        }

        return expanded > 0 ? new(new Quantity(expanded, value.Dimension), new FromSpecification(fitting, value, expanded)) : null;
    }

    // A drop across a junction is read on the range for voltage.
    private static Measured RangeFor(Measured measured) => measured == Measured.ForwardVoltage ? Measured.Voltage : measured;

    /// <summary>The end of the widest range for a quantity; null where a range has no end, or the instrument says nothing of the
    /// quantity.</summary>
    internal static Quantity? EndOfRange(Instrument instrument, Measured measured)
    {
        Quantity? end = null;
        foreach (var range in instrument.Accuracies)
        {
            if (range.Measures.Value != RangeFor(measured))
            {
                continue;
            }

            if (range.UpTo is not { } upTo)
            {
                return null;
            }

            end = end is { } known && known.Value >= upTo.Value.Value ? end : upTo.Value;
        }

        return end;
    }

    // A meter that says it is on a larger range than any that is written is at least as doubtful as on the largest.
    private static Accuracy? Widest(Instrument instrument, Measured measured, Quantity value, Quantity? on) =>
        on is not null && Fitting(instrument.Accuracies, RangeFor(measured), Math.Abs(value.Value)) is not null
            ? instrument.Accuracies.Where(range => range.Measures.Value == RangeFor(measured)).MaxBy(Reach)
            : null;

    // Of several ranges that hold for a value the one that reaches least far.
    private static Accuracy? Fitting(ImmutableArray<Accuracy> ranges, Measured measured, decimal value)
    {
        Accuracy? fitting = null;
        for (var at = 0; at < ranges.Length; at++)
        {
            var range = ranges[at];
            if (range.Measures.Value == measured && value <= Reach(range) && (fitting is null || Reach(range) < Reach(fitting)))
            {
                fitting = range;
            }
        }

        return fitting;
    }

    private static ReadingUncertainty Calibrated(Accuracy fitting, Quantity value, decimal expanded, string certificate, Quantity both) =>
        new(
            both,
            new LazyText(() =>
                $"{Working(fitting, value, expanded)}; with {certificate} from the certificate: sqrt(U1² + U2²) = "
                + $"{QuantityText.Format(both, 3)}; {UncertaintyBudget.Source.Text}"
            )
        );

    // Both are expanded with k = 2 and independent: the root of the sum of squares, expanded again. Null when it cannot be computed or is
    // zero.
    private static decimal? WithCalibration(decimal specification, decimal certificate) =>
        new UncertaintyBudget([
            new("specification", StandardUncertainty.OfExpanded((double)specification, 2)),
            new("calibration", StandardUncertainty.OfExpanded((double)certificate, 2)),
        ])
            .Combined()
            .Is(out var together, out _) && together is > 0 and < 1e15
            ? 2m * (decimal)together
            : null;

    private static decimal Reach(Accuracy range) => range.UpTo?.Value.Value ?? decimal.MaxValue;

    private static string Working(Accuracy accuracy, Quantity value, decimal expanded)
    {
        var terms = new List<string>(3);
        if (accuracy.Error is { } error)
        {
            terms.Add($"{error.Text} of {QuantityText.Format(value)}");
        }

        if (accuracy.Digits is { } digits && accuracy.Step is { } step)
        {
            terms.Add($"{digits.Text} x {step.Text}");
        }

        if (accuracy.Fixed is { } add)
        {
            terms.Add(add.Text);
        }

        return $"{Opening}{string.Join(" + ", terms)}{Closing}"
            + $"{QuantityText.Format(new Quantity(expanded, value.Dimension), 3)}{RuleCited}";
    }

    private sealed class FromSpecification(Accuracy accuracy, Quantity value, decimal expanded) : LazyText
    {
        protected override string Write() => Working(accuracy, value, expanded);
    }
}
