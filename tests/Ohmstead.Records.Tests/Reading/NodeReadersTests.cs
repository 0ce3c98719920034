using System.Text;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Reading;

public sealed class NodeReadersTests
{
    private static readonly byte[] Record = Encoding.UTF8.GetBytes("---\nboard: SP-0007\nparts: [{ ref: C12, ref: C13 }]\n---\n");

    [Fact]
    public void The_first_worker_reads_with_the_programs_own_library() => Assert.IsType<YamlNodeReader>(NodeReaders.Thorough(0));

    [Fact]
    public void Every_other_worker_has_a_copy_of_its_own()
    {
        var one = NodeReaders.Thorough(1);
        var two = NodeReaders.Thorough(2);

        Assert.NotSame(typeof(YamlNodeReader), one.GetType());
        Assert.NotSame(one.GetType(), two.GetType());
        Assert.Equal(typeof(YamlNodeReader).FullName, one.GetType().FullName);
    }

    [Fact]
    public void All_workers_give_the_same_nodes_and_findings()
    {
        var readings = Enumerable
            .Range(0, 4)
            .Select(worker => NodeReaders.ForWorker(worker).Read("a.md", Record, FileForm.Markdown, ReadingLimits.Usual))
            .ToArray();

        Assert.All(readings, reading => Assert.Equal("{board: 'SP-0007', parts: [{ref: 'C12'}]}", reading.Root.Shape()));
        Assert.All(readings, reading => Assert.Equal("3:21 key-repeated", reading.Found()));
    }

    [Fact]
    public void A_copy_explains_broken_yaml_in_the_same_words()
    {
        var broken = Encoding.UTF8.GetBytes("---\na: [a,\nb]\n---\n");

        Assert.Equal(
            NodeReaders.ForWorker(0).Read("a.md", broken, FileForm.Markdown, ReadingLimits.Usual).Findings[0].Message,
            NodeReaders.ForWorker(1).Read("a.md", broken, FileForm.Markdown, ReadingLimits.Usual).Findings[0].Message
        );
    }
}
