using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.PreferredValues;

/// <summary>The values of a series around a value.</summary>
/// <param name="Below">The greatest value of the series that is not above.</param>
/// <param name="Above">The least value of the series that is not below.</param>
/// <param name="Nearest">The one that is nearer by ratio; the lower one when both are as near.</param>
public readonly record struct PreferredNeighbours(Quantity Below, Quantity Above, Quantity Nearest);
