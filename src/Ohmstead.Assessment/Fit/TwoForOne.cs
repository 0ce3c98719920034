using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Assessment.Fit;

/// <summary>Two parts of one lot in the place of one: in series for more voltage, back to back where the voltage changes sign.</summary>
/// <param name="How">How they are put together.</param>
/// <param name="Reasons">All reasons for and against.</param>
internal sealed record TwoForOne(string How, IReadOnlyList<FitReason> Reasons)
{
    // Each of two in series is used to no more than this share of its rating.
    private const decimal SharedTo = 0.9m;

    /// <summary>The verdict on two of a lot.</summary>
    internal FitVerdict VerdictFor(string lot) => new($"2 x {lot} {How}", Reasons);

    /// <summary>The ways that there are for a lot, and for those that are alike.</summary>
    internal static IEnumerable<TwoForOne> Combine(FitPlace place, LotOffer lot)
    {
        // Never where people rely on one approved part.
        if (place.Capacitor is not { IsOnMains: false } capacitor || lot.For(capacitor) is not { RatedVolts: { } volts } offer)
        {
            yield break;
        }

        if (Combinations.InSeries(offer.Farads, volts).Is(out var series, out _))
        {
            var sum = new Quantity(series.Value.Volts * SharedTo, Dimension.Voltage);
            yield return Judge(
                "in series",
                capacitor,
                offer with
                {
                    Farads = series.Value.Farads,
                    RatedVolts = sum.Value,
                    EsrOhms = 2m * offer.EsrOhms,
                },
                [
                    FitReason.For(FitAspects.Value, series.Arithmetic, series.Source),
                    FitReason.Doubt(
                        FitAspects.Voltage,
                        $"counted as {QuantityText.Format(sum)}: {string.Join("; ", series.Remarks)}",
                        series.Source
                    ),
                ]
            );
        }

        if (capacitor.IsBipolar && !offer.IsBipolar && Combinations.BackToBack(offer.Farads, volts).Is(out var pair, out _))
        {
            yield return Judge(
                "back to back",
                capacitor,
                offer with
                {
                    Farads = pair.Value.Farads,
                    IsBipolar = true,
                    EsrOhms = 2m * offer.EsrOhms,
                },
                [FitReason.For(FitAspects.Value, pair.Arithmetic, pair.Source)]
            );
        }
    }

    private static TwoForOne Judge(string how, CapacitorPlace place, CapacitorOffer two, IEnumerable<FitReason> own)
    {
        // The room and the holes are for one.
        var bare = place with { Form = null, Pitch = null, OriginalDiameter = null, OriginalHeight = null };
        var judged = CapacitorSubstitution.Judge(bare, two);
        IEnumerable<FitReason> reasons = judged.Is(out var verdict, out var refusal)
            ? verdict.Reasons
            : [FitReason.Against(FitAspects.Value, refusal)];
        return new(
            how,
            FitJudge.Sorted([.. reasons, .. own, FitReason.Doubt(FitAspects.Size, "two in the room of one: look whether there is room")])
        );
    }
}
