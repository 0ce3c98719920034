using System.Text;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks;
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
        var assessor = new Assessor(Workshop);
        Boards = [.. Read(blocks, "boards/", FileBinding.Board).Select(assessor.Assess)];
    }

    internal Workshop Workshop { get; }

    internal IReadOnlyList<BoardAssessment> Boards { get; }

    /// <summary>What reading the files alone has to say.</summary>
    internal IReadOnlyList<Finding> ReadingFindings => findings;

    /// <summary>What reading the files and all checks have to say, in order of place.</summary>
    internal IReadOnlyList<Finding> Findings() =>
    [
        .. findings
            .Concat(Boards.Select(board => new BoardUnderCheck(board, Workshop, Today, pictures)).SelectMany(board => CheckCatalogue.Boards.SelectMany(check => check.Look(board))))
            .Concat(CheckCatalogue.Collection.SelectMany(check => check.Look(Together())))
            .OrderBy(finding => finding.Place.Path, StringComparer.Ordinal).ThenBy(finding => finding.Place.Line).ThenBy(finding => finding.Check, StringComparer.Ordinal),
    ];

    private CollectionUnderCheck Together() => new(
        Workshop,
        [.. Boards.Select(board => new BoardNumber(board.Board.Path, board.Board.Id))],
        Boards.SelectMany(board => board.Visits).SelectMany(visit => visit.Work).Where(work => work.PutsAPartIn && work.Lot is not null)
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
