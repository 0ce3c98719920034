namespace Ohmstead.Electronics.Quantities;

/// <summary>Where reading a quantity stopped. Cheap to make; the words for a person are found from it only when they are wanted.</summary>
/// <param name="Step">The step that could not be done.</param>
/// <param name="First">The index at which it stopped: the end of the number, or of the code, for a unit.</param>
/// <param name="Second">The index at which the unit starts.</param>
/// <param name="SignificantDigits">How many significant digits were read.</param>
/// <param name="Value">The value in the base unit, when it was known.</param>
internal readonly record struct QuantityFailure(
    QuantityStep Step,
    int First = 0,
    int Second = 0,
    int SignificantDigits = 0,
    decimal Value = 0m
);
