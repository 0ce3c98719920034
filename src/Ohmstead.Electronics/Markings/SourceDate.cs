namespace Ohmstead.Electronics.Markings;

/// <summary>A maker's number and a date of manufacture, from one code.</summary>
/// <param name="MakerNumber">The three digits of the maker, kept as text.</param>
/// <param name="Date">The week of manufacture.</param>
public sealed record SourceDate(string MakerNumber, ManufactureDate Date);
