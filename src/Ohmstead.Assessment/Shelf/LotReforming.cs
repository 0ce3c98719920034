using Ohmstead.Assessment.Limits;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Life;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Shelf;

/// <summary>How to form the parts of a lot again.</summary>
public static class LotReforming
{
    private const decimal MicroAmperesPerAmpere = 1_000_000m;

    /// <summary>Whether parts like these are formed again: wet aluminium electrolytics with a right way round.</summary>
    public static bool IsFor(Lot lot) =>
        lot.Values.Kind.Value == PartKinds.AluminiumElectrolytic
        && !(lot.Values.Polarity is { } polarity && polarity.Value.IsEitherWayRound());

    /// <summary>
    /// The plan for one part of a lot: the gentlest procedure, since nobody knows how long it really lay; or why there is none.
    /// </summary>
    public static Outcome<ReformingPlan> Plan(Lot lot)
    {
        if (!IsFor(lot))
        {
            return Outcome<ReformingPlan>.Refused(
                $"there is no plan for a part of kind '{lot.Values.Kind.Text}', only for aluminium electrolytics with a right way round"
            );
        }

        if (lot.Values.RatedVoltage is not { } rated)
        {
            return Outcome<ReformingPlan>.Refused("its rated voltage is not written, as in rated_voltage: 25 V");
        }

        var limit = LeakageLimits.For(lot.Values, new ReadingConditions(true, null, null, null))?.Interval.Upper;
        return ReformingPlan.For(rated.Value.Value, ReformingProcedure.LongStored, limit?.Value * MicroAmperesPerAmpere);
    }
}
