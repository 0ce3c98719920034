using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Collections;
using Ohmstead.Git;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Comparing;

/// <summary>The files of a collection as a revision of its repository has them.</summary>
/// <param name="entries">The files, by path from the root of the collection.</param>
/// <param name="objects">Their contents.</param>
internal sealed class RevisionFiles(IReadOnlyDictionary<string, GitEntry> entries, GitObjects objects) : IRecordFiles
{
    private readonly IReadOnlyDictionary<string, GitEntry> entries = entries;

    private static readonly string[] NoRecords = ["README.md", "DEVELOPERS.md"];

    /// <summary>Where else contents lie, by their names: in the folder that is compared, where they are read without asking git, and in a
    /// clone without contents at all.</summary>
    public (IRecordFiles Files, IReadOnlyDictionary<string, string> ByName)? Elsewhere { get; set; }

    /// <inheritdoc/>
    public bool Has(string name) =>
        entries.ContainsKey(name) || entries.Keys.Any(path => path.StartsWith(name + "/", StringComparison.Ordinal));

    /// <inheritdoc/>
    public IFileBytes ForWorker(ReadingLimits limits) => new RevisionBytes(this, limits);

    /// <inheritdoc/>
    public IPictures Pictures(RunOptions options) => new RevisionPictures(entries, objects);

    /// <summary>The collection in a revision, by the same rules as that in a folder.</summary>
    /// <param name="label">What stands for the folder where one is told.</param>
    public CollectionFolder Open(string label)
    {
        var boards = Below("boards");
        var isCollection = boards.Count > 0 || entries.Keys.Any(path => path.StartsWith("designs/", StringComparison.Ordinal));
        return new(label, isCollection ? boards : AtTheRoot(), Below("designs")) { Files = this };
    }

    private List<string> Below(string folder) =>
        [
            .. entries
                .Values.Where(entry =>
                    (entry.Path == folder && entry.Kind == GitEntryKind.Link)
                    || (
                        entry.Path.StartsWith(folder + "/", StringComparison.Ordinal)
                        && !IsHidden(entry.Path)
                        && (entry.Kind == GitEntryKind.Link || IsMarkdown(entry.Path))
                    )
                )
                .Select(entry => entry.Path)
                .Order(StringComparer.Ordinal),
        ];

    private List<string> AtTheRoot() =>
        [
            .. entries
                .Keys.Where(path => !path.Contains('/', StringComparison.Ordinal) && !IsHidden(path) && IsMarkdown(path))
                .Except(NoRecords, StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];

    private static bool IsMarkdown(string path) => path.EndsWith(".md", StringComparison.Ordinal);

    private static bool IsHidden(string path) => path[0] == '.' || path.Contains("/.", StringComparison.Ordinal);

    private sealed class RevisionBytes(RevisionFiles files, ReadingLimits limits) : IFileBytes
    {
        private readonly IFileBytes? elsewhere = files.Elsewhere?.Files.ForWorker(limits);

        public (ReadOnlyMemory<byte> Bytes, NodeReading? Refused) Open(string path) =>
            elsewhere is not null
            && files.entries.GetValueOrDefault(path) is { Kind: GitEntryKind.File } entry
            && files.Elsewhere!.Value.ByName.TryGetValue(entry.Id, out var other)
            && elsewhere.Open(other) is (var bytes, null)
                ? (bytes, null)
                : files.Open(path, limits);
    }

    private (ReadOnlyMemory<byte> Bytes, NodeReading? Refused) Open(string path, ReadingLimits limits)
    {
        if (!entries.TryGetValue(path, out var entry))
        {
            return (default, FileReader.Refused(path, "there is no such file", "keep it in place"));
        }

        if (entry.Kind == GitEntryKind.Link)
        {
            return (default, FileReader.RefusedLink(path));
        }

        if (entry.Kind == GitEntryKind.Repository)
        {
            return (default, FileReader.Refused(path, "it is another repository", "put the file itself there"));
        }

        var (bytes, length) = objects.Read(entry.Id, limits.FileBytes);
        return bytes is not null ? (bytes, null)
            : length > limits.FileBytes ? (default, FileReader.RefusedLarge(path, length, limits))
            : (default, FileReader.Refused(path, "this clone does not hold its content", "fetch it: git fetch --refetch"));
    }
}
