using System.Collections.Immutable;
using Ohmstead.Assessment.Changes;
using Ohmstead.Collections;
using Ohmstead.Records.Entries;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Comparing;

/// <summary>What differs in the files that boards share.</summary>
/// <param name="Entries">The entries that differ.</param>
/// <param name="TouchesAll">True where any board may be judged otherwise for it: the collection's own rules, or a file that cannot be taken
/// apart.</param>
internal sealed record SharedChanges(IReadOnlyList<InputDifference> Entries, bool TouchesAll);

/// <summary>Compares the files that boards share.</summary>
/// <param name="before">Reads the earlier state.</param>
/// <param name="after">Reads the later one.</param>
internal sealed class SharedDifferences(FileReader before, FileReader after)
{
    private readonly List<InputDifference> entries = [];
    private bool isAll;

    /// <summary>Compares them.</summary>
    public SharedChanges Find(
        (CollectionFolder Folder, IReadOnlyDictionary<string, string> Names) was,
        (CollectionFolder Folder, IReadOnlyDictionary<string, string> Names) now
    )
    {
        Compare(was, now, ("collection.yaml", FileShapes.Collection, InputFile.Collection));
        Compare(was, now, ("instruments.yaml", FileShapes.Instruments, InputFile.Instruments));
        Compare(was, now, ("stock.yaml", FileShapes.Stock, InputFile.Stock));
        foreach (var path in was.Folder.Designs.Union(now.Folder.Designs, StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            Compare(was, now, (path, FileShapes.Design, InputFile.Design));
        }

        return new(entries, isAll || entries.Any(one => one.File == InputFile.Collection));
    }

    private void Compare(
        (CollectionFolder Folder, IReadOnlyDictionary<string, string> Names) was,
        (CollectionFolder Folder, IReadOnlyDictionary<string, string> Names) now,
        (string Path, Shape Shape, InputFile Kind) file
    )
    {
        var (old, name) = (was.Names.GetValueOrDefault(file.Path), now.Names.GetValueOrDefault(file.Path));
        if (old is not null && old == name)
        {
            return;
        }

        var (isBefore, isAfter) = (Has(was, file.Path), Has(now, file.Path));
        if (!isBefore && !isAfter)
        {
            return;
        }

        var (earlier, later) = (isBefore ? Read(before, file) : [], isAfter ? Read(after, file) : []);
        // What cannot be taken apart cannot be narrowed down.
        isAll |= earlier is null || later is null;
        entries.AddRange(
            EntryComparer
                .Compare(earlier ?? [], later ?? [])
                .Differences.Select(one => new InputDifference(file.Kind, isBefore ? file.Path : null, isAfter ? file.Path : null, one))
        );
    }

    private static bool Has((CollectionFolder Folder, IReadOnlyDictionary<string, string> Names) side, string path) =>
        side.Names.ContainsKey(path) || side.Folder.Designs.Contains(path) || side.Folder.Named(path) is not null;

    private static ImmutableArray<RecordEntry>? Read(FileReader reader, (string Path, Shape Shape, InputFile Kind) file)
    {
        var read = reader.Read(file.Path, file.Kind == InputFile.Design ? FileForm.Markdown : FileForm.Yaml);
        return read.Root is { } root ? RecordEntries.List(root, file.Shape) : null;
    }
}
