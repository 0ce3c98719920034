using Ohmstead.Records.Editing.Edits;

namespace Ohmstead.Records.Editing;

/// <summary>A record of a board taken apart into a design and what is left of the board, or the reason why it stays whole.</summary>
/// <param name="Board">The whole text of the board, which names the design now; or null.</param>
/// <param name="Design">The whole text of the design; or null.</param>
/// <param name="Refusal">Why there is neither, or null.</param>
public sealed record DesignSplit(string? Board, string? Design, EditRefusal? Refusal)
{
    /// <summary>How many parts the design lists.</summary>
    public int Parts { get; init; }

    /// <summary>How many test points the design lists.</summary>
    public int Points { get; init; }

    /// <summary>How many hazards the design lists.</summary>
    public int Hazards { get; init; }

    /// <summary>Parts that the board still lists as well, because their date codes are its own.</summary>
    public IReadOnlyList<string> Kept { get; init; } = [];

    internal static DesignSplit Refused(string message, string nextStep) => new(null, null, new EditRefusal(message, nextStep));
}
