using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Assessment.Tests.Support;

/// <summary>A collection of a few files, read as the program reads it.</summary>
internal sealed class SmallCollection
{
    internal static readonly DateOnly Today = new(2026, 11, 25);

    private readonly List<Finding> findings = [];
    private readonly List<BoardFile> boards;
    private readonly ImmutableArray<Finding> all;
    private readonly YamlNodeReader reader = new();
    private readonly ListedPictures pictures;

    internal SmallCollection(IReadOnlyList<CaseBlock> blocks)
    {
        pictures = new ListedPictures([.. blocks.Where(block => block is { Form: "text", Path: "pictures" }).SelectMany(block => block.Lines)]);
        Workshop = new Workshop(
            Read(blocks, "collection.yaml", FileBinding.Collection).SingleOrDefault() ?? CollectionFile.Nameless,
            Read(blocks, "instruments.yaml", FileBinding.Instruments).SingleOrDefault(),
            Read(blocks, "stock.yaml", FileBinding.Stock).SingleOrDefault(),
            Read(blocks, "designs/", FileBinding.Design));
        boards = Read(blocks, "boards/", FileBinding.Board);
        var known = findings.ToArray();
        findings.AddRange(CheckCatalogue.Shared.SelectMany(check => check.Look(new CollectionUnderCheck(Workshop, [], FrozenDictionary<string, int>.Empty, Today))));
        var judged = Judged(findings);
        ImmutableArray<Finding> together = [.. CheckCatalogue.Together.SelectMany(check => check.Look(Together(judged)))];
        // What is found about all boards together is said of each when they are judged again with it.
        judged = together.Any(CheckEffects.HoldsBack) ? Judged(findings.Concat(together)) : judged;
        Boards = [.. judged.Select(board => board.Assessment)];
        all = [.. findings.Where(finding => known.All(read => !ReferenceEquals(read, finding)) || !IsOfABoard(finding)), .. judged.SelectMany(board => board.Findings), .. together];
        ReadingFindings = known;
    }

    internal Workshop Workshop { get; }

    internal IReadOnlyList<BoardAssessment> Boards { get; }

    /// <summary>What reading the files alone has to say.</summary>
    internal IReadOnlyList<Finding> ReadingFindings { get; }

    /// <summary>What reading the files and all checks have to say, in order of place.</summary>
    internal IReadOnlyList<Finding> Findings() =>
    [
        .. all.OrderBy(finding => finding.Place.Path, StringComparer.Ordinal).ThenBy(finding => finding.Place.Line).ThenBy(finding => finding.Check, StringComparer.Ordinal),
    ];

    private static bool IsOfABoard(Finding finding) => finding.Place.Path.StartsWith("boards/", StringComparison.Ordinal);

    // A board is judged with what reading its own file found.
    private List<JudgedBoard> Judged(IEnumerable<Finding> shared)
    {
        var judge = new BoardJudge(Workshop, SharedFaults.Of(Workshop, shared.Where(finding => !IsOfABoard(finding) || CheckCatalogue.Together.Any(check => check.Description.Name == finding.Check))), Today, pictures);
        return [.. boards.Select(board => judge.Judge(board, [.. findings.Where(finding => finding.Place.Path == board.Path)]))];
    }

    private CollectionUnderCheck Together(List<JudgedBoard> judged) => new(
        Workshop,
        [.. judged.Select(board => new BoardNumber(board.Assessment.Board.Path, board.Assessment.Board.Id))],
        judged.SelectMany(board => board.Assessment.Visits).SelectMany(visit => visit.Work).Where(work => work.PutsAPartIn && work.Lot is not null)
            .CountBy(work => work.Lot!.Value, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal),
        Today);

    private List<T> Read<T>(IReadOnlyList<CaseBlock> blocks, string path, Func<string, NodeReading, FileReading<T>> bind)
        where T : class
    {
        var files = new List<T>();
        foreach (var block in blocks.Where(block => block.Path.StartsWith(path, StringComparison.Ordinal)).OrderBy(block => block.Path, StringComparer.Ordinal))
        {
            var form = block.Form == "yaml" ? FileForm.Yaml : FileForm.Markdown;
            var reading = bind(block.Path, reader.Read(block.Path, Encoding.UTF8.GetBytes(block.Text), form, ReadingLimits.Usual));
            findings.AddRange(reading.Findings);
            if (reading.File is { } file)
            {
                files.Add(file);
            }
        }

        return files;
    }
}
