using System.Collections.Frozen;
using Ohmstead.Assessment.Changes;
using Ohmstead.Report.Frame;

namespace Ohmstead.Publishing;

/// <summary>What a report is to tell beside the records themselves.</summary>
internal sealed record ReportWishes
{
    /// <summary>Nothing else.</summary>
    public static ReportWishes None { get; } = new();

    /// <summary>The commit told on the page about the verdicts, or null.</summary>
    public string? Commit { get; init; }

    /// <summary>The address at which the pages will be found, for the links of the feed; or null.</summary>
    public Uri? Site { get; init; }

    /// <summary>What the repository tells of boards, by the paths of their records; empty when it is not asked.</summary>
    public IReadOnlyDictionary<string, CommitHistory> Histories { get; init; } = FrozenDictionary<string, CommitHistory>.Empty;

    /// <summary>Whether a collection of any size is counted on past days, too.</summary>
    public bool IsCounted { get; init; }

    /// <summary>What changed since an earlier state, or null.</summary>
    public ChangesSince? Since { get; init; }
}
