namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>What a finding of a check does to the state of a board.</summary>
public enum CheckEffect
{
    /// <summary>It holds the board back, whether it is an error or a warning.</summary>
    HoldsBack,

    /// <summary>It holds the board back as an error; as a warning it is told.</summary>
    HoldsBackAsError,

    /// <summary>It holds the board back while what it speaks of still counts for something that sits on the board.</summary>
    HoldsBackWhileItCounts,

    /// <summary>An obligation or a verdict of its own says it, with the evidence that would answer it.</summary>
    SaidElsewhere,

    /// <summary>It is told and holds nothing back.</summary>
    Told,
}
