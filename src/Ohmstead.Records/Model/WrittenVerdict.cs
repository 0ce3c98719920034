namespace Ohmstead.Records.Model;

/// <summary>A verdict as it may be written beside a reading.</summary>
public enum WrittenVerdict
{
    /// <summary>Inside its limits.</summary>
    In,

    /// <summary>Outside.</summary>
    Out,

    /// <summary>Nobody can tell.</summary>
    Undecided,
}
