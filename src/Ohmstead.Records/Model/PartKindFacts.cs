namespace Ohmstead.Records.Model;

/// <summary>What the voltage written on a part means.</summary>
public enum VoltageMeaning
{
    /// <summary>The most it stands: more is as good.</summary>
    Borne,

    /// <summary>What it gives, or what it works at: another is another part.</summary>
    Given,
}

/// <summary>Which junction a meter sees in a part.</summary>
public enum Junction
{
    /// <summary>None that is read.</summary>
    None,

    /// <summary>One that is read by its forward drop; a current beside it is how it was read.</summary>
    Rectifying,

    /// <summary>One that is read by the voltage it holds; a current beside it is how it was read.</summary>
    Breakdown,

    /// <summary>The base of a transistor, read by its forward drop; a current beside it is a value of its own.</summary>
    Base,
}

/// <summary>What the trade lists a kind of part by.</summary>
public enum TypeNumber
{
    /// <summary>By its values; a type number stands beside them.</summary>
    BesideItsValues,

    /// <summary>By its values or by its type number.</summary>
    InsteadOfValues,

    /// <summary>By its type number; a voltage in it is part of a name and no rating.</summary>
    Alone,
}

/// <summary>Letters of a reference designator that mean a kind of part, or may.</summary>
/// <param name="Letters">The letters, such as RV.</param>
/// <param name="Rank">Where it stands among the kinds that the letters may mean; those of one rank follow the vocabulary.</param>
/// <param name="IsCertain">Whether the letters alone decide for the kind.</param>
public readonly record struct Designation(string Letters, int Rank, bool IsCertain);
