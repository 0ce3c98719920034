using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Verdicts;

/// <summary>Why an instrument does not vouch for what it showed: the reading lies beyond its range, or its calibration is long
/// gone.</summary>
/// <remarks>
/// Under a rule with a guard band such a reading does not decide, for nobody knows how far it may be off. It still fails a part where the
/// end of the range lies beyond the limit already, or where it is off the limit by more than a meter goes wrong unseen.
/// </remarks>
/// <param name="Why">The reason, as it goes on behind the outcome.</param>
public sealed record MeterDoubt(LazyText Why)
{
    // A meter that is off by more than ten times what it was good for is broken, and shows it: common practice.
    private const decimal TimesUncertainty = 10m;

    /// <summary>The end of the range that the reading lies beyond; null where it lies in a range.</summary>
    public Quantity? Reach { get; init; }

    /// <summary>What an instrument does not vouch for; null where it does, or where it says nothing of the quantity.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="measured">What was measured.</param>
    /// <param name="value">What it showed.</param>
    /// <param name="lapsed">The end of its calibration, as <see cref="LongLapsed"/> tells it for the day of the reading.</param>
    public static MeterDoubt? Find(Instrument instrument, Measured measured, Quantity value, DateOnly? lapsed)
    {
        if (ReadingUncertainty.EndOfRange(instrument, measured) is { } reach && Math.Abs(value.Value) > reach.Value)
        {
            return BeyondRange(instrument, measured, reach);
        }

        return lapsed is { } until ? OutOfCalibration(instrument, until) : null;
    }

    // Apart from the question, which is asked of every reading: a lambda takes room for what it holds before anything is asked.
    private static MeterDoubt BeyondRange(Instrument instrument, Measured measured, Quantity reach) =>
        new(
            new LazyText(() =>
                $"{instrument.Id.Value} is good for {VerdictWords.Describe(measured)} up to {QuantityText.Format(reach)}, and this lies "
                + "beyond"
            )
        )
        {
            Reach = reach,
        };

    private static MeterDoubt OutOfCalibration(Instrument instrument, DateOnly until) =>
        new(
            new LazyText(() =>
                $"the calibration of {instrument.Id.Value} ran out on {IsoDate.Text(until)}, longer ago than it held: what it is "
                + "good for now is not known"
            )
        );

    /// <summary>Whether a reading outside its limit stands all the same.</summary>
    /// <param name="value">The reading.</param>
    /// <param name="mayBe">The values that a part inside its limit may give.</param>
    /// <param name="uncertainty">What the instrument was good for, where that is known.</param>
    internal bool LetsStand(decimal value, Interval mayBe, ReadingUncertainty? uncertainty)
    {
        if (Reach is { } reach)
        {
            return value > 0m && reach.Value > mayBe.Upper?.Value;
        }

        return uncertainty is { } known
            && (
                value - (TimesUncertainty * known.Expanded.Value) > mayBe.Upper?.Value
                || value + (TimesUncertainty * known.Expanded.Value) < mayBe.Lower?.Value
            );
    }

    /// <summary>
    /// The end of a calibration that lies further back than it held; null while it is not, or where none is on record. A round that was
    /// missed by some months is warned of, and no more.
    /// </summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="day">The day of the reading.</param>
    public static DateOnly? LongLapsed(Instrument instrument, DateOnly day)
    {
        Calibration? inForce = null;
        foreach (var calibration in instrument.Calibrations)
        {
            if (calibration.Date.Value <= day && (inForce is null || calibration.Date.Value > inForce.Date.Value))
            {
                inForce = calibration;
            }
        }

        if (inForce is null)
        {
            return null;
        }

        var until = CalibrationRules.Until(inForce);
        var held = until.DayNumber - inForce.Date.Value.DayNumber;
        return day.DayNumber - until.DayNumber > held ? until : null;
    }
}
