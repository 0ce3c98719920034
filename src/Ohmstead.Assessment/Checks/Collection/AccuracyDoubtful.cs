using System.Globalization;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>What an instrument is said to be good for cannot be what its handbook says: half of it is missing, or it is more than half of
/// the reading, or less than nothing, or finer than any instrument of a bench.</summary>
public sealed class AccuracyDoubtful : ICollectionCheck
{
    // No instrument of a bench is off by more than half of what it shows; 5 written for 5 % is five times the reading.
    private const decimal MostOfReading = 0.5m;

    // A share of 2 % and more that is written without its sign is nearly always a percentage of which the sign is missing.
    private const decimal MostWithoutSign = 0.02m;

    // The finest meter of a bench, of eight and a half digits, is told to some millionths of its reading. Common practice, from memory.
    private const decimal LeastOfReading = 0.000001m;

    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "accuracy-doubtful",
            Severity.Warning,
            "what an instrument is said to be good for cannot be what its handbook says",
            CheckEffect.HoldsBack,
            "how close to a limit its readings can tell is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        if (collection.Workshop.InstrumentsFile is not { } file)
        {
            yield break;
        }

        foreach (var instrument in file.Instruments)
        {
            foreach (var (spot, message, next) in instrument.Accuracies.SelectMany(Doubts))
            {
                yield return new(Description.Name, Description.Severity, spot.In(file.Path), $"{instrument.Id.Value}: {message}", next);
            }
        }
    }

    private static IEnumerable<(Spot Spot, string Message, string Next)> Doubts(Accuracy accuracy)
    {
        if ((Half(accuracy) ?? TooFine(accuracy)) is { } half)
        {
            yield return half;
        }

        foreach (var share in new[] { accuracy.Error, accuracy.Certificate })
        {
            if (share is { } part && part.Value.Value > MostOfReading)
            {
                yield return (
                    part.Spot,
                    $"'{part.Text}' is more than half of what it shows",
                    part.Text.EndsWith('%') ? "write what its handbook says" : $"write {part.Text} % where that is meant"
                );
            }
            else if (share is { Value.Value: >= MostWithoutSign } bare && !bare.Text.EndsWith('%'))
            {
                var hundredths = (bare.Value.Value * 100m).ToString("0.####", CultureInfo.InvariantCulture);
                yield return (
                    bare.Spot,
                    $"'{bare.Text}' without its sign is {hundredths} % of what it shows",
                    $"write {bare.Text} % or {hundredths} %, whichever its handbook says"
                );
            }
        }

        foreach (var value in new[] { accuracy.Error, accuracy.Certificate, accuracy.Step, accuracy.Fixed, accuracy.UpTo })
        {
            if (value is { } less && less.Value.Value < 0m)
            {
                yield return (
                    less.Spot,
                    $"'{less.Text}' is less than nothing",
                    $"write it without the sign: {less.Text.TrimStart('-', '−')}"
                );
            }
        }
    }

    // Together they are less than any instrument of a bench can be off by: as good as exact, and none is. Where nobody says up to which
    // reading it holds, steps and fixed parts count against the finest that is known of the quantity.
    private static (Spot Spot, string Message, string Next)? TooFine(Accuracy accuracy)
    {
        if (accuracy.Error is { Value.Value: >= LeastOfReading or < 0m })
        {
            return null;
        }

        var apart = (accuracy.Digits?.Value ?? 0) * (accuracy.Step?.Value.Value ?? 0m) + (accuracy.Fixed?.Value.Value ?? 0m);
        var least = accuracy.UpTo is { Value.Value: > 0m } top ? top.Value.Value * LeastOfReading : FinestStep(accuracy.Measures.Value);
        return apart < 0m || (apart > 0m && apart >= least)
            ? null
            : (
                accuracy.Spot,
                $"its {accuracy.Measures.Text} is said to be off by less than a millionth, and no instrument of a bench is that good",
                "write error, digits with step, or fixed, as its handbook says; where that is lost, leave this item out"
            );
    }

    // The last digit of the finest instruments, in the base unit; common practice, from memory. Zero where none is known.
    private static decimal FinestStep(Measured measured) =>
        measured switch
        {
            Measured.Capacitance => 1e-17m,
            Measured.Inductance => 1e-10m,
            Measured.Resistance or Measured.Esr => 1e-8m,
            Measured.Voltage or Measured.ForwardVoltage or Measured.Ripple => 1e-9m,
            Measured.Current or Measured.Leakage => 1e-16m,
            Measured.Temperature => 1e-4m,
            Measured.LossFactor => 1e-7m,
            Measured.Insulation or Measured.Frequency or Measured.Gain or Measured.VoltageLoss or Measured.Hours => 0m,
            _ => throw new ArgumentOutOfRangeException(nameof(measured), measured, null),
        };

    // What is missing of how far it may be off. A zero counts as little as what is not written: with zeros alone a reading would decide as
    // if its instrument were exact, which none is.
    private static (Spot Spot, string Message, string Next)? Half(Accuracy accuracy)
    {
        var of = accuracy.Measures.Text;
        return accuracy switch
        {
            { Digits: { } digits, Step: null } => (
                digits.Spot,
                $"{digits.Text} steps of the last digit of its {of}, and no step: they count nothing",
                "add the step of the last digit, such as step: 0.1 µF"
            ),
            { Digits: { Value: > 0 } digits, Step: { Value.Value: 0m } step } => (
                step.Spot,
                $"{digits.Text} steps of the last digit of its {of}, and the step is '{step.Text}': they count nothing",
                "write the step of the last digit on this range as its handbook gives it, with its unit"
            ),
            { Step: { } step, Digits: null } => (
                step.Spot,
                $"a step of its {of}, and not how many of them it may be off",
                "add how many, such as digits: 3"
            ),
            { Error: null, Digits: null, Step: null, Fixed: null } => (
                accuracy.Spot,
                $"its {of} is listed, and not how far it may be off",
                "add error, digits with step, or fixed, as its handbook says"
            ),
            { Error: null or { Value.Value: 0m }, Digits: null or { Value: 0 }, Fixed: null or { Value.Value: 0m } } => (
                accuracy.Spot,
                $"its {of} is said to be off by nothing, and no instrument is exact",
                "write error, digits with step, or fixed, as its handbook says; where that is lost, leave this item out"
            ),
            _ => null,
        };
    }
}
