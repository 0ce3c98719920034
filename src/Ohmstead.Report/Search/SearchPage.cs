using Ohmstead.Report.Html;

namespace Ohmstead.Report.Search;

/// <summary>What a page that is found is about, in the order in which groups of equal weight are told.</summary>
public enum SearchGroup
{
    /// <summary>A board.</summary>
    Boards,

    /// <summary>A design.</summary>
    Designs,

    /// <summary>A lot of the drawer.</summary>
    Lots,

    /// <summary>An order.</summary>
    Orders,

    /// <summary>An instrument.</summary>
    Instruments,

    /// <summary>A maker.</summary>
    Makers,

    /// <summary>Findings on files that no board is written in.</summary>
    Findings,

    /// <summary>A check.</summary>
    Checks,

    /// <summary>Any other page of the report.</summary>
    Pages,
}

/// <summary>A sentence that can be found.</summary>
/// <param name="Head">What holds for it and its neighbours: the day of the visit and who wrote it; empty where nothing does.</param>
/// <param name="Anchor">The place on the page, or null for the page itself.</param>
/// <param name="Text">The sentence, on one line, with nothing hidden in it.</param>
public readonly record struct SearchSentence(string Head, ElementId? Anchor, string Text);

/// <summary>A page as it is found: what it is called and every sentence, what presses most first.</summary>
/// <param name="Group">What it is about.</param>
/// <param name="Name">What it is called: the number of a board.</param>
/// <param name="Title">What that is.</param>
/// <param name="About">What is said beside it: the state of a board.</param>
/// <param name="Address">Its file from the root of the report, with the place in it where it shares one.</param>
/// <param name="Sentences">What it says.</param>
public sealed record SearchPage(
    SearchGroup Group,
    string Name,
    string Title,
    string About,
    LocalLink Address,
    IReadOnlyList<SearchSentence> Sentences
)
{
    /// <summary>Whatever it is asked for by as a whole, besides its name and title.</summary>
    public IReadOnlyList<string> AlsoCalled { get; init; } = [];

    /// <summary>The name of the design whose parts it has, too; or null.</summary>
    public string? Design { get; init; }
}
