using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Collections;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Running;

namespace Ohmstead.Writing;

/// <summary>Finds a board of a collection by its number.</summary>
internal static class BoardFinder
{
    /// <summary>The board, assessed, with the files and the findings of its run.</summary>
    /// <param name="folder">The collection's folder.</param>
    /// <param name="number">The number of the board.</param>
    /// <param name="options">How the run is made.</param>
    /// <param name="error">Told, with the nearest number, when there is none.</param>
    /// <param name="said">All words that were said, among which the number may stand elsewhere.</param>
    public static FoundBoard? Find(string folder, string number, RunOptions options, TextWriter error, IReadOnlyList<string>? said = null)
    {
        var files = CollectionFolder.Open(folder);
        if (NamedFiles.Inside(files) is { } above)
        {
            error.WriteLine(Printable.Escape(above));
            return null;
        }

        if (files.Boards.Count == 0)
        {
            error.WriteLine(Printable.Escape(Directory.Exists(folder) ? NamedFiles.NoBoards(files) : NamedFiles.Missing(folder, "folder")));
            return null;
        }

        var (found, result, alone) = Look(files, number, options);
        if (found is not null)
        {
            return new(alone, found, result.Findings) { Workshop = result.Workshop, Beside = files };
        }

        if (TellUnread(files, number, result, error))
        {
            return null;
        }

        error.WriteLine(Printable.Escape(Missing(number, result.Boards, said)));
        return null;
    }

    /// <summary>Says that there is no board of a number: it has another one now, it is the name of its file, it stands in another place of
    /// what was said, or which is the nearest.</summary>
    public static string Missing(string number, IReadOnlyList<BoardSummary> boards, IReadOnlyList<string>? said = null)
    {
        if (Formerly(number, boards) is { } former)
        {
            return $"{number} is {former.Id.Value} now ({former.Path}); give that number";
        }

        var file = number.Replace('\\', '/');
        if (
            file.EndsWith(".md", StringComparison.OrdinalIgnoreCase)
            && boards.FirstOrDefault(board => IsEndOf(file, board.Path) || IsEndOf(board.Path, file)) is { } ofFile
        )
        {
            return $"'{number}' is the file of a board; write its number, {ofFile.Id.Value}";
        }

        return boards.FirstOrDefault(board => said?.Contains(board.Id.Value) == true) is { } elsewhere
            ? $"'{number}' is no board and {elsewhere.Id.Value} is one; write {elsewhere.Id.Value} first, then {number}"
            : Nearest.Told(
                $"there is no board '{number}'",
                boards.FirstOrDefault(board => WithoutZeros(board.Id.Value) == WithoutZeros(number))?.Id.Value
                    ?? Nearest.To(number, boards.Select(summary => summary.Id.Value))
            );
    }

    // WH-1 for WH-0001.
    private static string WithoutZeros(string number)
    {
        var stem = number.TrimEnd([.. "0123456789"]);
        return (stem.TrimEnd('-') + number[stem.Length..].TrimStart('0')).ToUpperInvariant();
    }

    private static bool IsEndOf(string path, string end) => path == end || path.EndsWith('/' + end, StringComparison.Ordinal);

    /// <summary>The board that had a number before, or null; capitals do not count.</summary>
    public static BoardSummary? Formerly(string number, IReadOnlyList<BoardSummary> boards) =>
        boards.FirstOrDefault(board => board.Formerly.Any(former => former.Value.Equals(number, StringComparison.OrdinalIgnoreCase)));

    /// <summary>Tells of a board whose file is there and cannot be read: that is another thing than no board.</summary>
    /// <param name="files">The collection.</param>
    /// <param name="number">The number of the board.</param>
    /// <param name="result">The run that did not find it.</param>
    /// <param name="error">Where it is told.</param>
    /// <returns>False when there is no such file.</returns>
    public static bool TellUnread(CollectionFolder files, string number, RunResult result, TextWriter error)
    {
        var likely = Likely(files, number).ToHashSet(StringComparer.Ordinal);
        likely.ExceptWith(result.Boards.Select(board => board.Path));
        var against = result.Findings.FirstOrDefault(finding => finding.Severity == Severity.Error && likely.Contains(finding.Place.Path));
        if (against is null)
        {
            return false;
        }

        error.WriteLine(Printable.Escape($"the record of {number} is there and cannot be read: {against.Place}: {against.Message}"));
        if (against.NextStep is { } next)
        {
            error.WriteLine(Printable.Escape($"  = {next}"));
        }

        return true;
    }

    /// <summary>Whether a file is named after the board.</summary>
    public static bool IsLikely(CollectionFolder files, string number) => Likely(files, number).Length > 0;

    /// <summary>
    /// The board, or null; the run that was looked through, of the files named after it or of all where those do not hold it; and the
    /// collection with that board alone.
    /// </summary>
    public static (JudgedBoard? Found, RunResult Result, CollectionFolder Files) Look(
        CollectionFolder files,
        string number,
        RunOptions options
    )
    {
        var likely = Likely(files, number);
        if (likely.Length > 0 && In(files.Only(likely), number, options) is { Found: not null } named)
        {
            return named;
        }

        return In(files, number, options with { Workers = 1 });
    }

    private static string[] Likely(CollectionFolder files, string number) =>
        [.. files.Boards.Where(path => Path.GetFileNameWithoutExtension(path) == number)];

    // What was learned of its neighbours is kept for the entries that follow.
    private static (JudgedBoard? Found, RunResult Result, CollectionFolder Files) In(
        CollectionFolder files,
        string number,
        RunOptions options
    )
    {
        JudgedBoard? found = null;
        var result = new CollectionRun(files, options).Run(seen: assessment =>
            found = assessment.Board.Id.Value == number ? assessment : found
        );
        return (found, result, files.Boards.Count > 1 && found is not null ? files.Only([found.Board.Path]) : files);
    }
}

/// <summary>A board as it was found.</summary>
/// <param name="Files">The collection, with this board alone.</param>
/// <param name="Board">The board.</param>
/// <param name="Findings">What the run found.</param>
internal sealed record FoundBoard(CollectionFolder Files, JudgedBoard Board, ImmutableArray<Finding> Findings)
{
    /// <summary>What the collection says about itself.</summary>
    public CollectionFile Collection => Workshop.Collection;

    /// <summary>What boards refer to: instruments, lots, orders, designs.</summary>
    public required Workshop Workshop { get; init; }

    /// <summary>The collection with all its boards.</summary>
    public required CollectionFolder Beside { get; init; }
}
