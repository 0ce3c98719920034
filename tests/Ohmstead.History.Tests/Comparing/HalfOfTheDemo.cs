using Ohmstead.Collections;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>Half of the boards of the demo with their designs, as they were: only to be read, and judged once for all that is held against
/// it.</summary>
/// <param name="boards">The numbers.</param>
internal sealed class HalfOfTheDemo(IReadOnlyList<string> boards) : IDisposable
{
    private readonly CollectionCopy copy = Copy(boards);
    private Judgement? judged;

    /// <summary>The two: boards that share a design or take pieces of one lot are together, for the most part.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Both { get; } =
    [
        ["SP-0001", "SP-0002", "SP-0003", "SP-0004", "SP-0005", "SP-0006", "SP-0009", "SP-0010", "SP-0016", "SP-0017"],
        ["SP-0007", "SP-0008", "SP-0011", "SP-0012", "SP-0013", "SP-0014", "SP-0015", "SP-0018", "SP-0019", "SP-0020"],
    ];

    /// <summary>The folder.</summary>
    public string Root => copy.Root;

    /// <summary>A copy that may be changed.</summary>
    public CollectionCopy Copy() => Copy(boards);

    /// <summary>What judging it gives.</summary>
    /// <param name="options">How; the same at each call.</param>
    public Judgement Judged(RunOptions options) => judged ??= Judgement.Of(CollectionFolder.Open(Root), options);

    public void Dispose() => copy.Dispose();

    private static CollectionCopy Copy(IReadOnlyList<string> boards)
    {
        var made = CollectionCopy.Make();
        foreach (
            var path in Directory.EnumerateFiles(made.At("boards")).Where(path => !boards.Contains(Path.GetFileNameWithoutExtension(path)))
        )
        {
            File.Delete(path);
        }

        var texts = string.Concat(Directory.EnumerateFiles(made.At("boards")).Select(File.ReadAllText));
        foreach (
            var path in Directory
                .EnumerateFiles(made.At("designs"))
                .Where(path => !texts.Contains($"\ndesign: {Path.GetFileNameWithoutExtension(path)}\n", StringComparison.Ordinal))
        )
        {
            File.Delete(path);
        }

        return made;
    }
}
