namespace Ohmstead.Electronics.Substitution;

/// <summary>An offer for a place. Every rule looks at it, and the words of its reasons are written from it alone: they hold nothing
/// else.</summary>
/// <param name="Place">The place.</param>
/// <param name="Offer">What may go into it.</param>
internal sealed record Pairing(CapacitorPlace Place, CapacitorOffer Offer)
{
    /// <summary>What part of the place's value the offer has.</summary>
    internal decimal Share => Offer.Farads / Place.Farads;
}
