namespace Ohmstead.Electronics.Quantities;

/// <summary>The steps of reading a quantity, by what can go wrong in them.</summary>
internal enum QuantityStep
{
    /// <summary>Nothing went wrong.</summary>
    Done,

    /// <summary>There is no text.</summary>
    Empty,

    /// <summary>The text is too long to be a quantity.</summary>
    TooLong,

    /// <summary>The number cannot begin or go on.</summary>
    Number,

    /// <summary>Something stands behind a marking code.</summary>
    AfterCode,

    /// <summary>What follows the number is no unit of the dimension.</summary>
    Unit,

    /// <summary>The unit is mF or MF and the print is not known.</summary>
    TwoFacedFarad,

    /// <summary>A decimal cannot hold the value exactly.</summary>
    NotHeld,

    /// <summary>Zero with a minus sign.</summary>
    MinusZero,

    /// <summary>The value cannot be meant.</summary>
    Implausible,
}
