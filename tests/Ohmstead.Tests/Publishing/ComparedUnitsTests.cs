using System.Text;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Publishing;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Tests.Publishing;

/// <summary>Of each design the first units are kept, whatever worker was first with which board.</summary>
public sealed class ComparedUnitsTests
{
    [Theory]
    [InlineData(new[] { 1, 2, 3, 4, 5, 6, 7, 8, 9 })]
    [InlineData(new[] { 9, 8, 7, 6, 5, 4, 3, 2, 1 })]
    [InlineData(new[] { 5, 9, 1, 8, 3, 2, 7, 6, 4 })]
    public void The_first_six_by_number_are_kept_in_any_order_of_arrival(int[] arrival)
    {
        var nodes = new YamlNodeReader();
        T Read<T>(string path, string text, Func<string, NodeReading, FileReading<T>> bind)
            where T : class =>
            bind(
                path,
                nodes.Read(
                    path,
                    Encoding.UTF8.GetBytes(text),
                    path.EndsWith(".md", StringComparison.Ordinal) ? FileForm.Markdown : FileForm.Yaml,
                    ReadingLimits.Usual
                )
            ).File!;
        var workshop = new Workshop(
            Read("collection.yaml", "collection: Saltmarsh Point\n", FileBinding.Collection),
            null,
            null,
            [Read("designs/tide.md", "---\ndesign: tide\ntitle: Tide logger\n---\n", FileBinding.Design)]
        );
        var assessor = new Assessor(workshop);
        var compared = new ComparedUnits();
        foreach (var number in arrival)
        {
            compared.Add(
                assessor.Assess(
                    Read($"boards/SP-{number}.md", $"---\nboard: SP-{number}\ntitle: Tide logger\ndesign: tide\n---\n", FileBinding.Board)
                )
            );
        }

        Assert.Equal(["SP-1", "SP-2", "SP-3", "SP-4", "SP-5", "SP-6"], compared.For("tide").Select(unit => unit.Board));
        Assert.Empty(compared.For("barograph"));
    }
}
