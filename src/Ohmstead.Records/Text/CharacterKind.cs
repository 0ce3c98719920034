namespace Ohmstead.Records.Text;

/// <summary>What a code point is to a reader who sees only what is shown.</summary>
public enum CharacterKind
{
    /// <summary>A character like any other.</summary>
    Ordinary,

    /// <summary>A control character other than tab, LF and CR.</summary>
    Control,

    /// <summary>Reserved for ever as no character, or half of a surrogate pair.</summary>
    NoCharacter,

    /// <summary>U+2028 or U+2029, which some readers take for the end of a line.</summary>
    LineSeparator,

    /// <summary>Turns the direction of the writing that follows, so that it shows in another order than it is read.</summary>
    Direction,

    /// <summary>Shows nothing at all and joins nothing.</summary>
    Invisible,

    /// <summary>Shows nothing, but has a meaning between letters of some scripts and within pictograms.</summary>
    Joiner,
}
