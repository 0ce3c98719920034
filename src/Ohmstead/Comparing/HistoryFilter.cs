using Ohmstead.Collections;
using Ohmstead.Git;
using Ohmstead.Records.Entries;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Yaml;

namespace Ohmstead.Comparing;

/// <summary>Which commits can change the meaning of a board at all: those that touch its record, a file that boards share, a picture, or
/// the record of a board that names a lot or a number of it.</summary>
/// <param name="objects">The contents of the repository.</param>
/// <param name="limits">How much of a file is read.</param>
internal sealed class HistoryFilter(GitObjects objects, ReadingLimits limits)
{
    private readonly Dictionary<string, bool> known = new(StringComparer.Ordinal);
    private readonly INodeReader nodes = NodeReaders.ForWorker(0);
    private NamesInText names = new([], []);
    private string of = string.Empty;

    /// <summary>Whether a commit can.</summary>
    /// <param name="commit">The commit.</param>
    /// <param name="records">The paths of the records at that time.</param>
    public bool Touches(GitCommit commit, IReadOnlyDictionary<string, string> records) =>
        commit.Files.Any(file => records.ContainsKey(file.Path) || !IsBoard(file.Path))
        || commit.Files.Any(file => Names(file.Was) || Names(file.Now));

    /// <summary>Looks from now on for what some records name.</summary>
    /// <param name="records">The paths of the records.</param>
    /// <param name="side">The state in which they lie there.</param>
    public void LookFor(IEnumerable<string> records, ComparedSide side)
    {
        string[] contents = [.. records.Select(path => side.Known?.GetValueOrDefault(path)).OfType<string>()];
        if (string.Join(' ', contents) is var all && all == of)
        {
            return;
        }

        of = all;
        known.Clear();
        var (lots, numbers) = (new HashSet<string>(StringComparer.Ordinal), new HashSet<string>(StringComparer.Ordinal));
        foreach (var fact in contents.SelectMany(Facts))
        {
            switch (fact.Key)
            {
                case "lot":
                    lots.Add(fact.Text);
                    break;
                case "board" or "number":
                    numbers.Add(fact.Text);
                    break;
                case "taken_from" or "went_to" when BoardPlace.Parse(fact.Text) is { } place:
                    numbers.Add(place.Board);
                    break;
            }
        }

        names = new(lots, numbers);
    }

    private IEnumerable<EntryFact> Facts(string content) =>
        objects.Read(content, limits.FileBytes).Bytes is { } bytes && nodes.Read("board", bytes, FileForm.Markdown, limits).Root is { } root
            ? RecordEntries.List(root, FileShapes.Board).SelectMany(entry => entry.Facts)
            : [];

    private static bool IsBoard(string path) =>
        path.StartsWith("boards/", StringComparison.Ordinal) && path.EndsWith(".md", StringComparison.Ordinal);

    private bool Names(string? content)
    {
        if (content is null)
        {
            return false;
        }

        if (!known.TryGetValue(content, out var does))
        {
            does = objects.Read(content, limits.FileBytes).Bytes is not { } bytes || names.MayStandIn(bytes);
            known.Add(content, does);
        }

        return does;
    }
}
