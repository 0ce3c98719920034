using System.Collections.Immutable;

namespace Ohmstead.Assessment.Searching;

/// <summary>What a stretch of a text is for a search.</summary>
public enum SearchItemKind
{
    /// <summary>A word of letters.</summary>
    Word,

    /// <summary>A number without a unit.</summary>
    Number,

    /// <summary>A name with digits in it: SP-0007, C12, bridge-1.</summary>
    Name,

    /// <summary>A quantity.</summary>
    Quantity,

    /// <summary>A day, a month or a day of any year.</summary>
    Day,

    /// <summary>Words with hyphens between them: tide-logger.</summary>
    Words,
}

/// <summary>A stretch of a text, as a search holds it and as it asks for it.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Token">What it is called in the index.</param>
public readonly record struct SearchItem(SearchItemKind Kind, string Token)
{
    private readonly ImmutableArray<string> beside;
    private readonly ImmutableArray<ImmutableArray<string>> asked;

    /// <summary>What else it is found by.</summary>
    public ImmutableArray<string> Beside
    {
        get => beside.IsDefault ? [] : beside;
        init => beside = value;
    }

    /// <summary>What is looked for when somebody writes it: one of these, and of that all; the first that is found anywhere tells what was
    /// meant, except that all meanings of a quantity count.</summary>
    public ImmutableArray<ImmutableArray<string>> Asked
    {
        get =>
            asked.IsDefault
                ?
                [
                    [Token],
                ]
                : asked;
        init => asked = value;
    }

    /// <summary>Everything it is found by.</summary>
    public IEnumerable<string> Held => Beside.Prepend(Token);
}
