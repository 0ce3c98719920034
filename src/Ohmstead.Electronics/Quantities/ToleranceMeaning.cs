namespace Ohmstead.Electronics.Quantities;

/// <summary>One meaning of a tolerance letter, and who uses it so.</summary>
/// <param name="Tolerance">The tolerance that is meant.</param>
/// <param name="Source">The standard or usage it is from.</param>
public sealed record ToleranceMeaning(Tolerance Tolerance, Source Source);
