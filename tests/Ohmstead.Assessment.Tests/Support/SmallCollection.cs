using System.Collections.Immutable;
using System.Text;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Obligations.Basis;
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

    private readonly YamlNodeReader reader = new();
    private readonly ListedPictures pictures;
    private readonly List<Finding> ofShared = [];
    private readonly List<Finding> ofBoards = [];
    private readonly List<BoardFile> files;
    private readonly ImmutableArray<Finding> all;

    internal SmallCollection(IReadOnlyList<CaseBlock> blocks)
    {
        pictures = new ListedPictures([
            .. blocks.Where(block => block is { Form: "text", Path: "pictures" }).SelectMany(block => block.Lines),
        ]);
        Workshop = new Workshop(
            Read(blocks, "collection.yaml", FileBinding.Collection, ofShared).SingleOrDefault() ?? CollectionFile.Nameless,
            Read(blocks, "instruments.yaml", FileBinding.Instruments, ofShared).SingleOrDefault(),
            Read(blocks, "stock.yaml", FileBinding.Stock, ofShared).SingleOrDefault(),
            Read(blocks, "designs/", FileBinding.Design, ofShared)
        );
        files = Read(blocks, "boards/", FileBinding.Board, ofBoards);
        ImmutableArray<Finding> shared =
        [
            .. ofShared,
            .. CheckCatalogue.LookAtShared(CollectionUnderCheck.From(Workshop, [], Today) with { Stories = new ScriptStories() }),
        ];
        var judged = Judged(new(Workshop, SharedFaults.From(Workshop, shared), Today, pictures) { Stories = new ScriptStories() });
        // What all boards together show is said of each when it is judged again with it.
        Alone = judged;
        Together = BoardsTogether.Compare(Workshop, [.. Alone.Select(board => BoardSummary.From(board))], Today);
        judged = Judged(
            new(Workshop, SharedFaults.From(Workshop, shared.Concat(Together.Findings)), Today, pictures)
            {
                Pieces = Together.Pieces,
                Stories = new ScriptStories(),
            }
        );
        Boards = judged;
        all = [.. shared, .. judged.SelectMany(board => board.Reported), .. ofBoards.Where(IsOfNoRecord), .. Together.Findings];
    }

    internal BoardsTogether Together { get; }

    /// <summary>The boards as each is judged by itself.</summary>
    internal IReadOnlyList<JudgedBoard> Alone { get; }

    internal Workshop Workshop { get; }

    internal IReadOnlyList<JudgedBoard> Boards { get; }

    /// <summary>What reading the files alone has to say.</summary>
    internal IReadOnlyList<Finding> ReadingFindings => [.. ofShared, .. ofBoards];

    /// <summary>What reading the files and all checks have to say, in order of place.</summary>
    internal IReadOnlyList<Finding> Findings() =>
        [
            .. all.OrderBy(finding => finding.Place.Path, StringComparer.Ordinal)
                .ThenBy(finding => finding.Place.Line)
                .ThenBy(finding => finding.Check, StringComparer.Ordinal),
        ];

    // A file of which nothing could be read is no board that tells it.
    private bool IsOfNoRecord(Finding finding) => files.All(file => file.Path != finding.Place.Path);

    // A board is judged with what reading its own file found, and with what is known of the files that it shares.
    private List<JudgedBoard> Judged(BoardJudge judge) =>
        [.. files.Select(board => judge.Judge(board, [.. ofBoards.Where(finding => finding.Place.Path == board.Path)]))];

    private List<T> Read<T>(
        IReadOnlyList<CaseBlock> blocks,
        string path,
        Func<string, NodeReading, FileReading<T>> bind,
        List<Finding> findings
    )
        where T : class
    {
        var read = new List<T>();
        foreach (
            var block in blocks
                .Where(block => block.Path.StartsWith(path, StringComparison.Ordinal))
                .OrderBy(block => block.Path, StringComparer.Ordinal)
        )
        {
            var form = block.Form == "yaml" ? FileForm.Yaml : FileForm.Markdown;
            var reading = bind(block.Path, reader.Read(block.Path, Encoding.UTF8.GetBytes(block.Text), form, ReadingLimits.Usual));
            findings.AddRange(reading.Findings);
            if (reading.File is { } file)
            {
                read.Add(file);
            }
        }

        return read;
    }
}
