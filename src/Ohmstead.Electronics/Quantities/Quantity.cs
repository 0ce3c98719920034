namespace Ohmstead.Electronics.Quantities;

/// <summary>A value with its dimension, held exactly as a decimal in the dimension's base unit.</summary>
/// <remarks>
/// 391 µF is held as 0.000391 with <see cref="Dimension.Capacitance"/>. Two quantities are equal when both parts are; how the
/// value was written (391 µF, 0.391 mF, 391u) is not part of it. The default value is the pure number 0.
/// </remarks>
/// <param name="Value">The value in the base unit of the dimension.</param>
/// <param name="Dimension">What is measured.</param>
public readonly record struct Quantity(decimal Value, Dimension Dimension);
