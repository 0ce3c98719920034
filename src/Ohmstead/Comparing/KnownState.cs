using System.Collections.Frozen;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Git;

#pragma warning disable CA2000 // What is opened is handed on inside the outcome to whoever asked, who disposes of it.
namespace Ohmstead.Comparing;

/// <summary>A collection as its repository knew it at the end of a day.</summary>
/// <param name="Files">The collection.</param>
/// <param name="Commit">The last commit of that day or before it.</param>
internal sealed record KnownState(CollectionFolder Files, string Commit) : IDisposable
{
    private GitObjects? Objects { get; init; }

    private IReadOnlyCollection<GitEntry> Entries { get; init; } = [];

    /// <summary>Opens it, or says why it cannot be had: there is no repository, or its history begins later.</summary>
    /// <param name="folder">The collection's folder.</param>
    /// <param name="day">The day, in UTC, as commits are dated.</param>
    public static Outcome<KnownState> Open(string folder, DateOnly day)
    {
        if (!GitRepository.Open(folder).Is(out var git, out var why) || !git.LastOf(day).Is(out var commit, out why))
        {
            return Outcome<KnownState>.Refused(why);
        }

        if (!git.Files(commit).Is(out var entries, out why) || !git.Objects().Is(out var objects, out why))
        {
            return Outcome<KnownState>.Refused(why);
        }

        var files = entries
            .DistinctBy(entry => entry.Path, StringComparer.Ordinal)
            .ToFrozenDictionary(entry => entry.Path, StringComparer.Ordinal);
        return Outcome<KnownState>.From(
            new(new RevisionFiles(files, objects).Open(Path.GetFullPath(folder)), commit) { Objects = objects, Entries = entries.ToArray() }
        );
    }

    /// <summary>Writes its files into an empty folder, for what works on a folder alone: the pictures of pages are made there. What was a
    /// link or another repository is left out.</summary>
    /// <param name="folder">The folder.</param>
    public void Extract(string folder)
    {
        foreach (var entry in Entries.Where(entry => entry.Kind == GitEntryKind.File && IsPlain(entry.Path)))
        {
            if (Objects!.Read(entry.Id, int.MaxValue).Bytes is { } bytes)
            {
                var path = Path.Combine(folder, entry.Path);
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                File.WriteAllBytes(path, bytes);
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose() => Objects?.Dispose();

    // Git refuses such names itself; a name that leads out of the folder is never written.
    private static bool IsPlain(string path) =>
        !Path.IsPathRooted(path)
        && !path.Split('/', '\\').Any(part => part is "" or "." or ".." or ".git")
        && !path.Contains(':', StringComparison.Ordinal);
}
