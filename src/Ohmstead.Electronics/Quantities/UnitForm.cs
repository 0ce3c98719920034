namespace Ohmstead.Electronics.Quantities;

/// <summary>What else a unit's spelling stands for.</summary>
internal enum UnitForm
{
    /// <summary>Exactly these letters.</summary>
    Exact,

    /// <summary>These letters in upper or lower case.</summary>
    AnyCase,

    /// <summary>These letters, with or without an SI prefix.</summary>
    Prefixed,

    /// <summary>These letters in upper or lower case, with or without an SI prefix, whose case counts.</summary>
    PrefixedAnyCase,
}
