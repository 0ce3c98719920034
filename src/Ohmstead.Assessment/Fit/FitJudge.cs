using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>Judges whether lots fit places, and puts those that do in order.</summary>
public static class FitJudge
{
    // Over this, or under a third of it, no role stands a capacitance.
    private const decimal WidestShare = 3m;

    // Hardly a lot has more reasons.
    private const int Usual = 32;

    /// <summary>All reasons for and against a lot in a place.</summary>
    public static FitVerdict Judge(FitPlace place, LotOffer lot) => new(lot.Name, Sorted(Reasons(place, lot)));

    /// <summary>The best first, by <see cref="FitRank"/>, then by name.</summary>
    public static IOrderedEnumerable<T> Rank<T>(
        FitPlace place,
        IEnumerable<T> fits,
        Func<T, FitVerdict> verdict,
        Func<T, IFitPart> values
    ) => fits.OrderBy(fit => FitRank.For(place, verdict(fit), values(fit))).ThenBy(fit => verdict(fit).Lot, StringComparer.Ordinal);

    /// <summary>Whether it is worth judging a lot at all: another sort of part, or a value far away, never fits.</summary>
    internal static bool MayFit(IFitPart place, IFitPart lot)
    {
        if (place.Kind.Value.Family != lot.Kind.Value.Family)
        {
            return false;
        }

        return (FitRank.Value(place), FitRank.Value(lot)) is not ({ } was, { } now)
            || was <= 0m
            || place.Low is not null
            || place.High is not null
            || (now <= was * WidestShare && now >= was / WidestShare);
    }

    /// <summary>Reasons in order: those against first, then doubts; among them what weighs most.</summary>
    internal static IReadOnlyList<FitReason> Sorted(IEnumerable<FitReason> reasons)
    {
        FitReason[] sorted = [.. reasons];
        Span<int> order = sorted.Length <= Usual ? stackalloc int[sorted.Length] : new int[sorted.Length];
        for (var at = 0; at < order.Length; at++)
        {
            // The place it came in counts last, so that equals stay as they were.
            order[at] = (Order(sorted[at]) * order.Length) + at;
        }

        order.Sort(sorted.AsSpan());
        return sorted;
    }

    private static int Order(FitReason reason) =>
        FitAspects.Rank(reason.Aspect)
        + ((FitAspects.LastRank + 1) * ((reason.IsMissing ? 1 : 0) + (2 * (ReasonWeight.Against - reason.Weight))));

    private static IEnumerable<FitReason> Reasons(FitPlace place, LotOffer lot)
    {
        if (place.Capacitor is not { } capacitor || lot.For(capacitor) is not { } offer)
        {
            return PlainRules.Reasons(place.Values, lot.Values);
        }

        var judged = CapacitorSubstitution.Judge(capacitor, offer);
        return judged.Is(out var verdict, out var refusal) ? verdict.Reasons : [FitReason.Doubt(FitAspects.Value, refusal)];
    }
}
