using System.Collections.Immutable;
using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Faults;

/// <summary>A report of a small collection, and the one after it: a page has changed, one has come and one has gone.</summary>
internal sealed class TwoReports : IDisposable
{
    private static readonly string[] Kept = ["SP-0001", "SP-0003", "SP-0004"];

    private readonly CollectionCopy records = CollectionCopy.Make();
    private readonly CollectionCopy first = CollectionCopy.Empty();

    public TwoReports() => Line = $"exec $ohmstead report {records.Root} --to pages --workers 1";

    /// <summary>What makes the new one.</summary>
    public string Line { get; }

    /// <summary>The digests of the old one.</summary>
    public ImmutableSortedDictionary<string, string> Old { get; private set; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>The digests of the new one.</summary>
    public ImmutableSortedDictionary<string, string> New { get; private set; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>The calls that make the new one out of the old one.</summary>
    public IReadOnlyList<SystemCall> Calls { get; private set; } = [];

    /// <summary>Makes both, once.</summary>
    /// <param name="foreign">A file of somebody else among the pages, or null.</param>
    public async Task<TwoReports> MadeAsync(string? foreign)
    {
        if (Calls.Count > 0)
        {
            return this;
        }

        foreach (
            var board in Directory.GetFiles(records.At("boards")).Where(file => !Kept.Contains(Path.GetFileNameWithoutExtension(file)))
        )
        {
            File.Delete(board);
        }

        Assert.Equal(0, (await Child.ShellAsync(Line, first.Root)).Exit);
        first.Write("pages/notes.txt", "mine");
        if (foreign is not null)
        {
            first.Write("pages/" + foreign, "mine too");
        }

        Old = Pages(first);
        const string changed = "boards/SP-0003.md";
        records.Write(changed, records.Read(changed).Replace("spare from the boat house", "spare out of it", StringComparison.Ordinal));
        records.Write("boards/SP-0005.md", await File.ReadAllTextAsync(Path.Combine(CollectionCopy.Untouched, "boards/SP-0005.md")));
        File.Delete(records.At("boards/SP-0001.md"));
        using var site = CollectionCopy.Empty();
        await PutOldAsync(site);
        var whole = await new WatchedProgram(Child.Program, site.Root).ShellAsync(Line);
        Assert.Equal((0, string.Empty), (whole.Run.Exit, whole.Run.Error));
        Calls = whole.Calls;
        New = Pages(site);
        Assert.NotEqual(Old, New);
        return this;
    }

    /// <summary>Puts the old one into a folder, instead of whatever is there.</summary>
    public async Task PutOldAsync(CollectionCopy site)
    {
        foreach (var folder in Directory.GetDirectories(site.Root))
        {
            Directory.Delete(folder, recursive: true);
        }

        await Child.ShellAsync($"cp -a '{first.At("pages")}' '{site.At("pages")}'", "/");
    }

    /// <summary>The digests of the pages; what a run that failed left for the next to clear away is none.</summary>
    public static ImmutableSortedDictionary<string, string> Pages(CollectionCopy site) =>
        FilesBelow
            .Of(site.At("pages"))
            .Where(entry =>
                entry.Value != "a folder"
                && !entry.Key.StartsWith(".ohmstead-new", StringComparison.Ordinal)
                && entry.Key is not (".ohmstead-building" or ".ohmstead-held")
            )
            .ToImmutableSortedDictionary(entry => entry.Key, entry => entry.Value.Split(' ')[1], StringComparer.Ordinal);

    /// <inheritdoc/>
    public void Dispose()
    {
        records.Dispose();
        first.Dispose();
    }
}
