using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Assessment.Fit;

/// <summary>Whether a lot fits a place, with every reason.</summary>
/// <param name="Lot">The lot, or what stands for it where several parts together do the work of one.</param>
/// <param name="Reasons">All reasons, those against first, then doubts.</param>
public sealed record FitVerdict(string Lot, IReadOnlyList<FitReason> Reasons)
{
    /// <summary>The heaviest of the reasons; a doubt when there is none.</summary>
    public ReasonWeight Outcome { get; } = Heaviest(Reasons);

    /// <summary>How many doubts there are, the standing notice about safety apart.</summary>
    public int Doubts
    {
        get
        {
            var count = 0;
            for (var at = 0; at < Reasons.Count; at++)
            {
                count += Reasons[at].Weight == ReasonWeight.Doubt && !IsNotice(Reasons[at]) ? 1 : 0;
            }

            return count;
        }
    }

    /// <summary>
    /// True when it can be promised for the place unseen: nothing speaks against it, and no doubt is left but the notice about safety and
    /// sizes that are not written.
    /// </summary>
    public bool IsSure =>
        Reasons.All(reason =>
            reason.Weight == ReasonWeight.For
            || (reason.Weight == ReasonWeight.Doubt && (IsNotice(reason) || (reason.IsMissing && FitAspects.IsMechanical(reason.Aspect))))
        );

    /// <summary>True when a rating of the part is not written: nothing speaks against it, and nobody can say that it fits.</summary>
    public bool IsUnknown => Outcome == ReasonWeight.Doubt && Reasons.Any(reason => reason.IsUnwritten);

    /// <summary>Whether a reason is the standing notice about safety, which is said of every part on the mains.</summary>
    internal static bool IsNotice(FitReason reason) =>
        reason is { Weight: ReasonWeight.Doubt, IsMissing: false } && reason.Aspect == FitAspects.Safety;

    private static ReasonWeight Heaviest(IReadOnlyList<FitReason> reasons)
    {
        var heaviest = reasons.Count == 0 ? ReasonWeight.Doubt : reasons[0].Weight;
        for (var at = 1; at < reasons.Count; at++)
        {
            heaviest = reasons[at].Weight > heaviest ? reasons[at].Weight : heaviest;
        }

        return heaviest;
    }
}
