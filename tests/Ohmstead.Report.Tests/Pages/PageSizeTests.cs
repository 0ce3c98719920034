using System.Text;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Nodes;
using Ohmstead.Synthetic;
using Ohmstead.Synthetic.Files;
using Ohmstead.Yaml;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>Pages of invented boards with 40 parts and more than 60 readings each.</summary>
public class PageSizeTests
{
    // 64 kB is promised. The pages here lack what the program adds beside them and are not the largest of all: together under 1,000 bytes.
    private const int Most = 63_200;
    private const int Boards = 10_000;
    private const int Counted = 1_000;
    private const int Looked = 60;

    // What readings and proofs give; each value has a verdict on the page. The leading blank keeps 'voltage' out of 'at_voltage'.
    private static readonly string[] Values =
    [
        " capacitance: ",
        " esr: ",
        " leakage: ",
        " loss_factor: ",
        " resistance: ",
        " inductance: ",
        " gain: ",
        " forward_voltage: ",
        " voltage: ",
        " ripple: ",
        " hours: ",
    ];

    // All pages of 10,000 boards take a minute. What makes one large is the number of its values, and boards repeat: of the first 1,000
    // boards, the largest page of the sixty with the most values is within 300 bytes of the largest page of all 10,000.
    [Fact]
    public void The_pages_of_boards_with_the_most_values_take_at_most_64_kilobytes()
    {
        var plan = new CollectionPlan(Boards);
        var workshop = Shared(plan);
        var drawer = Drawer.Count(workshop, new LotUse([]), Judged.Today);
        string[] largest =
        [
            .. Enumerable
                .Range(1, Counted)
                .Select(number => SyntheticCollection.Board(plan, number))
                .OrderByDescending(ValuesIn)
                .Take(Looked),
        ];
        int[] sizes = [.. largest.Select(record => OneBoard.Bytes(record, workshop, drawer: drawer).Length)];
        Assert.InRange(sizes.Max(), Most / 2, Most);
        Assert.Contains(largest, record => Judged.Board(record, workshop).State == BoardState.FaultStands);
    }

    [Fact]
    public void The_same_board_gives_the_same_bytes()
    {
        var plan = new CollectionPlan(1, 7);
        var record = SyntheticCollection.Board(plan, 1);
        Assert.Equal(OneBoard.Bytes(record, Shared(plan)), OneBoard.Bytes(record, Shared(plan)));
    }

    private static int ValuesIn(string record)
    {
        var (start, end) = (record.IndexOf("\nbench:", StringComparison.Ordinal), record.IndexOf("\n## Story", StringComparison.Ordinal));
        var bench = record.AsSpan(start..end);
        var count = 0;
        foreach (var value in Values)
        {
            count += bench.Count(value);
        }

        return count;
    }

    private static Workshop Shared(CollectionPlan plan)
    {
        var files = SyntheticCollection
            .Files(plan)
            .TakeWhile(file => !file.Path.StartsWith("boards/", StringComparison.Ordinal))
            .ToDictionary(file => file.Path, file => file.Text, StringComparer.Ordinal);
        var nodes = new YamlNodeReader();
        T Read<T>(string path, FileForm form, Func<string, NodeReading, FileReading<T>> bind)
            where T : class => bind(path, nodes.Read(path, Encoding.UTF8.GetBytes(files[path]), form, ReadingLimits.Usual)).File!;
        return new Workshop(
            Read("collection.yaml", FileForm.Yaml, FileBinding.Collection),
            Read("instruments.yaml", FileForm.Yaml, FileBinding.Instruments),
            Read("stock.yaml", FileForm.Yaml, FileBinding.Stock),
            [
                .. files
                    .Keys.Where(path => path.StartsWith("designs/", StringComparison.Ordinal))
                    .Select(path => Read(path, FileForm.Markdown, FileBinding.Design)),
            ]
        );
    }
}
