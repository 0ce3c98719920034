namespace Ohmstead.Synthetic.Parts;

/// <summary>The condition a part is invented in.</summary>
public enum PartCondition
{
    /// <summary>Inside its limits.</summary>
    Sound,

    /// <summary>So near its limit that the instrument cannot decide.</summary>
    OnItsLimit,

    /// <summary>Outside its limits.</summary>
    Worn,
}
