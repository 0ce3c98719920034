using System.Text;
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
    private const int Most = 100_000;
    private const int Boards = 20;

    [Fact]
    public void A_board_of_forty_parts_and_sixty_readings_takes_at_most_a_hundred_kilobytes()
    {
        var plan = new CollectionPlan(Boards, 1);
        var workshop = Shared(plan);
        string[] large = [.. Enumerable.Range(1, Boards).Select(number => SyntheticCollection.Board(plan, number)).Where(record => record.Split("- { part:").Length > 60)];
        Assert.InRange(large.Length, 10, Boards);
        Assert.All(large, record => Assert.InRange(OneBoard.Bytes(record, workshop).Length, Most / 2, Most));
    }

    [Fact]
    public void The_same_board_gives_the_same_bytes()
    {
        var plan = new CollectionPlan(1, 7);
        var record = SyntheticCollection.Board(plan, 1);
        Assert.Equal(OneBoard.Bytes(record, Shared(plan)), OneBoard.Bytes(record, Shared(plan)));
    }

    private static Workshop Shared(CollectionPlan plan)
    {
        var files = SyntheticCollection.Files(plan).Where(file => !file.Path.StartsWith("boards/", StringComparison.Ordinal)).ToDictionary(file => file.Path, file => file.Text, StringComparer.Ordinal);
        var nodes = new YamlNodeReader();
        T Read<T>(string path, FileForm form, Func<string, NodeReading, FileReading<T>> bind)
            where T : class => bind(path, nodes.Read(path, Encoding.UTF8.GetBytes(files[path]), form, ReadingLimits.Usual)).File!;
        return new Workshop(
            Read("collection.yaml", FileForm.Yaml, FileBinding.Collection),
            Read("instruments.yaml", FileForm.Yaml, FileBinding.Instruments),
            Read("stock.yaml", FileForm.Yaml, FileBinding.Stock),
            [.. files.Keys.Where(path => path.StartsWith("designs/", StringComparison.Ordinal)).Select(path => Read(path, FileForm.Markdown, FileBinding.Design))]);
    }
}
