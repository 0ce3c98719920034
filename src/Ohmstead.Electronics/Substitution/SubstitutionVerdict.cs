namespace Ohmstead.Electronics.Substitution;

/// <summary>Whether an offer may go into a place, with every reason.</summary>
/// <param name="Offer">The offer.</param>
/// <param name="Reasons">All reasons, those against first, then doubts.</param>
public sealed record SubstitutionVerdict(CapacitorOffer Offer, IReadOnlyList<FitReason> Reasons)
{
    /// <summary>The heaviest of the reasons: one against decides, else one doubt.</summary>
    public ReasonWeight Outcome => Reasons.Count == 0 ? ReasonWeight.Doubt : Reasons.Max(r => r.Weight);

    /// <summary>How many doubts there are.</summary>
    public int Doubts => Reasons.Count(r => r.Weight == ReasonWeight.Doubt);
}
