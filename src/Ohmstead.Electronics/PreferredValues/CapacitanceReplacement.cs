using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.PreferredValues;

/// <summary>A value made today in place of an old one.</summary>
/// <param name="Value">Today's value.</param>
/// <param name="Deviation">How far it is from the old value, as a signed fraction: 0.25 for 10 µF in place of 8 µF.</param>
public sealed record CapacitanceReplacement(Quantity Value, decimal Deviation);
