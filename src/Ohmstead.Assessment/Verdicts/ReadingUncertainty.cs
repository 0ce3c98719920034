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
    /// <summary>The uncertainty of a value, or null when the instrument says nothing about this quantity.</summary>
    public static ReadingUncertainty? Of(Instrument instrument, Measured measured, Quantity value)
    {
        var name = NameOf(measured);
        var fitting = instrument.Accuracies
            .Where(a => a.Measures.Value == name && (a.UpTo is not { } most || Math.Abs(value.Value) <= most.Value.Value))
            .OrderBy(a => a.UpTo?.Value.Value ?? decimal.MaxValue)
            .FirstOrDefault();
        if (fitting is null)
        {
            return null;
        }

        var specification = new AccuracySpecification(
            (fitting.Error?.Value.Value ?? 0m) * 100m, fitting.Digits?.Value ?? 0m, fitting.Step?.Value.Value ?? 0m, fitting.Fixed?.Value.Value ?? 0m);
        return specification.ExpandedUncertaintyOf(value.Value).Is(out var worked, out _) && worked.Value > 0
            ? new(new Quantity(worked.Value, value.Dimension), new(() => Working(fitting, value, worked.Value)))
            : null;
    }

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

        return $"U = 2 x ({string.Join(" + ", terms)}) / sqrt(3) = {QuantityText.Format(new Quantity(expanded, value.Dimension), 3)}; JCGM 100:2008, 4.3.7 (from memory)";
    }

    private static string NameOf(Measured measured) => measured switch
    {
        Measured.LossFactor => "loss_factor",
        Measured.VoltageLoss => "voltage_loss",
        Measured.ForwardVoltage => "voltage",
        _ => measured.ToString().ToLowerInvariant(),
    };
}
