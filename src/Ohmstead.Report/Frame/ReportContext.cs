using System.Collections.Frozen;
using System.Collections.Immutable;
using Ohmstead.Assessment.Ahead;
using Ohmstead.Assessment.Buying;
using Ohmstead.Assessment.Changes;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Assessment.Years;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Frame;

/// <summary>What every page of a report knows.</summary>
/// <param name="Workshop">The workshop of the collection.</param>
/// <param name="Boards">The numbers of all boards, so that a reference to one becomes a link.</param>
/// <param name="Today">The day of the report.</param>
/// <param name="Version">The version of the program.</param>
public sealed record ReportContext(Workshop Workshop, IReadOnlySet<string> Boards, DateOnly Today, string Version)
{
    // The order of the lots is worked out once for the pages of all boards.
    private readonly Lazy<Func<string, LocalLink?>> lots = new(() => LotAddresses.For(Workshop, 1));

    // Thousands of pages ask which board comes before and after theirs.
    private readonly Lazy<string[]> inOrder = new(() => [.. Boards.Order(StringComparer.Ordinal)]);

    /// <summary>What is left in the drawer, or null before all boards were read.</summary>
    public Drawer? Drawer { get; init; }

    /// <summary>The commit of the collection that the records were read from, as a short name; null when the caller does not say.</summary>
    public string? Commit { get; init; }

    /// <summary>Where the pages are found on the web; null when nobody says it, and then no page shows a code.</summary>
    public PublishedAt? Published { get; init; }

    /// <summary>The names of the checks that have a page.</summary>
    public IReadOnlySet<string> Checks { get; init; } = FrozenSet<string>.Empty;

    /// <summary>The pictures of the report; null when it has none.</summary>
    public IReportPictures? Pictures { get; init; }

    /// <summary>What to buy, when it was worked out already.</summary>
    public IReadOnlyList<BuyingLine>? Buying { get; init; }

    /// <summary>What falls due within a year, when it was worked out already.</summary>
    public IReadOnlyList<DueItem>? Ahead { get; init; }

    /// <summary>The collection on past days, when it was counted; the last of them is today.</summary>
    public ImmutableArray<PastPoint> Past { get; init; } = [];

    /// <summary>The collection a year ago, when it was counted and there was one; its work is that of the year since.</summary>
    public PastPoint? YearAgo { get; init; }

    /// <summary>What the repository tells of boards, by the paths of their records; empty when it was not asked.</summary>
    public IReadOnlyDictionary<string, CommitHistory> Histories { get; init; } = FrozenDictionary<string, CommitHistory>.Empty;

    /// <summary>What changed since an earlier state, for a page of its own; or null.</summary>
    public ChangesSince? Since { get; init; }

    /// <summary>Files beside the pages that hold the same for programs, told in the head and the foot of every page.</summary>
    public IReadOnlyList<Alternate> ForPrograms { get; init; } = [];

    /// <summary>The picture of the report that stands for a picture of the collection, seen from a page one folder below the root; null
    /// when it is not shown.</summary>
    internal LocalLink? PictureOf(string path) =>
        PictureNames.IsSafe(path) && Pictures?.Find(path) is { } shown ? LocalLink.ToFile(shown.Large.Path, 1) : null;

    /// <summary>The board before another in order of their numbers, and the one after it; null at either end.</summary>
    internal (string? Before, string? After) Beside(string board)
    {
        var place = Array.BinarySearch(inOrder.Value, board, StringComparer.Ordinal);
        return place < 0
            ? (null, null)
            : (place == 0 ? null : inOrder.Value[place - 1], place == inOrder.Value.Length - 1 ? null : inOrder.Value[place + 1]);
    }

    /// <summary>Where a lot is told, seen from a page one folder below the root; null when nothing is known of it.</summary>
    internal LocalLink? LotOf(string lot) => lots.Value(lot);

    /// <summary>The page that stands for a record of the collection; null when there is none.</summary>
    /// <param name="record">The path of the record.</param>
    /// <param name="levelsUp">How many folders below the root the linking page stands.</param>
    internal LocalLink? PageOf(string record, int levelsUp = 1)
    {
        if (!record.EndsWith(".md", StringComparison.Ordinal))
        {
            return null;
        }

        var name = Path.GetFileNameWithoutExtension(record);
        return Workshop.Designs.GetValueOrDefault(name) is { } design && design.Path == record
                ? LocalLink.ToFile(SiteAddress.Design(name), levelsUp)
            : Boards.Contains(name) ? LocalLink.ToFile(SiteAddress.Board(name), levelsUp)
            : null;
    }
}
