using Ohmstead.Records.Text;

namespace Ohmstead.Records.Model;

/// <summary>What became of a board: where it went, or whose it is now.</summary>
public enum WhereaboutsKind
{
    /// <summary>It stands at another place of the house.</summary>
    Moved,

    /// <summary>Somebody else owns it, and it stays.</summary>
    ChangedHands,

    /// <summary>Somebody has it for a while.</summary>
    Lent,

    /// <summary>It is here again.</summary>
    CameBack,

    /// <summary>It was sold, and is not here any more.</summary>
    Sold,

    /// <summary>It was given away, and is not here any more.</summary>
    GivenAway,

    /// <summary>Nobody knows where it is.</summary>
    Lost,

    /// <summary>It was taken apart for what sits on it.</summary>
    BrokenUp,

    /// <summary>It is kept as it is, for show.</summary>
    Retired,

    /// <summary>What was kept for show shall run again.</summary>
    UsedAgain,
}

/// <summary>One step of where a board went.</summary>
/// <param name="Date">The day.</param>
/// <param name="Did">What became of it.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record WhereaboutsEntry(Written<DateOnly> Date, Written<WhereaboutsKind> Did, Spot Spot)
{
    /// <summary>Initials of who says so.</summary>
    public Written<string>? By { get; init; }

    /// <summary>The place where it stands.</summary>
    public Written<string>? At { get; init; }

    /// <summary>Who owns it.</summary>
    public Written<string>? Owner { get; init; }

    /// <summary>Who has it now.</summary>
    public Written<string>? To { get; init; }

    /// <summary>When it is to come back.</summary>
    public Written<DateOnly>? Until { get; init; }

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }
}
