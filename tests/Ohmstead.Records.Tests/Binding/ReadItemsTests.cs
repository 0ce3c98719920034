using System.Text;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Binding;

/// <summary>Two states of a record share what was read of both, and each says what it says alone.</summary>
public sealed class ReadItemsTests
{
    private const string Record = """
        ---
        board: SP-0007
        title: Barograph servo
        parts:
          - { ref: C1, kind: polyester film, capacitance: 100 nF }
          - { ref: C2, kind: polyester film, capacitance: 22 nF }
        bench:
          - date: 2026-02-03
            by: AM
            readings:
              - { point: TP1, voltage: 4.98 V }
        ---
        """;

    private readonly INodeReader reader = NodeReaders.ForStates(0);
    private readonly ReadItems items = new();

    [Fact]
    public void An_item_that_is_the_same_is_read_once()
    {
        var (was, now) = (Read(Record).File!, Read(Record.Replace("22 nF", "33 nF", StringComparison.Ordinal)).File!);

        Assert.Same(was.Parts[0], now.Parts[0]);
        Assert.Equal(("22 nF", "33 nF"), (was.Parts[1].Values.Capacitance!.Text, now.Parts[1].Values.Capacitance!.Text));
        Assert.Same(was.Bench[0].Readings[0], now.Bench[0].Readings[0]);

        items.Begin();
        Assert.NotSame(was.Parts[0], Read(Record).File!.Parts[0]);
    }

    [Fact]
    public void What_is_the_same_in_another_list_is_read_as_what_stands_there()
    {
        var was = Read(Record).File!;
        var now = Read(Record.Replace("readings:", "proof:", StringComparison.Ordinal)).File!;

        Assert.Equal("TP1", was.Bench[0].Readings[0].Point!.Text);
        Assert.Empty(now.Bench[0].Readings);
        Assert.Equal(("TP1", "4.98 V"), (now.Bench[0].Proofs[0].Point.Text, now.Bench[0].Proofs[0].Values[0].Value.Text));
    }

    [Fact]
    public void What_is_wrong_in_both_is_told_of_both()
    {
        var wrong = Record.Replace("capacitance: 100 nF", "capacitance: 100 nX", StringComparison.Ordinal);
        var later = wrong.Replace("22 nF", "33 nF", StringComparison.Ordinal);

        Assert.Equal([5], Read(wrong).Findings.Select(finding => finding.Place.Line));
        Assert.Equal([5], Read(later).Findings.Select(finding => finding.Place.Line));
    }

    private FileReading<BoardFile> Read(string text)
    {
        const string path = "boards/SP-0007.md";
        var nodes = reader.Read(path, Encoding.UTF8.GetBytes(text + "\n"), FileForm.Markdown, ReadingLimits.Usual);
        return FileBinding.Board(path, nodes, items);
    }
}
