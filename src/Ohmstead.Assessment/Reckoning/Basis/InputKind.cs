namespace Ohmstead.Assessment.Reckoning.Basis;

/// <summary>What is written for an input of a rule.</summary>
public enum InputKind
{
    /// <summary>A quantity with its unit, by the grammar of records: 391uF, 4k7, 2.2 kΩ.</summary>
    Quantity,

    /// <summary>A difference of temperatures in kelvin: 5K.</summary>
    Kelvin,

    /// <summary>A whole number of 0 or more.</summary>
    Count,

    /// <summary>One of a few words.</summary>
    Word,

    /// <summary>A text such as a type number.</summary>
    Text,

    /// <summary>A day: 2026-03-14.</summary>
    Date,

    /// <summary>Several entries with commas between them and no spaces.</summary>
    List,
}
