using Ohmstead.Records.Editing;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Editing;

/// <summary>A list within an item of a list: begun, gone on with, and of an item in braces, whose values stay as they were
/// written.</summary>
public sealed class ItemListTests
{
    private const string Line = "{ line: 1, quantity: 2, what: a belt }";

    [Fact]
    public void An_item_in_braces_becomes_lines_each_value_as_it_was_written()
    {
        const string before =
            "orders:\n  - { order: PO-1, placed: 2026-11-09, for: 'a \"belt\"', from: \"Wells, Low\",\n      note: x } # ours\n"
            + "  - { order: PO-2, placed: 2026-11-09, for: y }\n";
        Assert.Equal(
            "orders:\n  - order: PO-1 # ours\n    placed: 2026-11-09\n    for: 'a \"belt\"'\n    from: \"Wells, Low\"\n    lines:\n"
                + $"      - {Line}\n    note: x\n  - {{ order: PO-2, placed: 2026-11-09, for: y }}\n",
            Append(before, "PO-1")
        );
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\n")]
    public void A_list_goes_on_behind_its_last_item_with_the_line_end_of_the_file(string end)
    {
        var before =
            $"orders:{end}  - order: PO-1{end}    placed: 2026-11-09{end}    for: x{end}    lines:{end}      - {Line}{end}"
            + $"    # the rest{end}    note: y{end}";
        Assert.Equal(before.Replace($"{Line}{end}", $"{Line}{end}      - {Line}{end}", StringComparison.Ordinal), Append(before, "PO-1"));
    }

    [Fact]
    public void A_file_without_a_last_line_end_takes_a_list_into_its_last_item()
    {
        Assert.Equal(
            $"orders:\n  - order: PO-1\n    placed: 2026-11-09\n    for: x\n    lines:\n      - {Line}",
            Append("orders:\n  - { order: PO-1, placed: 2026-11-09, for: x }", "PO-1")
        );
    }

    [Theory]
    [InlineData("orders:\n  - { order: PO-1, placed: 2026-11-09, # when\n      for: x }\n", "a remark between the braces")]
    [InlineData("orders:\n  - { order: PO-1, placed: 2026-11-09, for: \"x\n      y\" }\n", "a value over two lines")]
    [InlineData("orders: [{ order: PO-1, placed: 2026-11-09, for: x }]\n", "no dash")]
    [InlineData("orders:\n  - { order: PO-1, placed: 2026-11-09, for: x, lines: [] }\n", "a list in the braces")]
    [InlineData("orders:\n  - { order: PO-2, placed: 2026-11-09, for: x }\n", "no such item")]
    public void What_cannot_be_made_into_lines_stays_and_is_told_by_hand(string before, string why)
    {
        var editor = Open(before);
        var outcome = editor.Append(OrderShape.Order, ("orders", editor.IndexOf("orders", "order", "PO-1")), "lines", [Line]);
        Assert.True(outcome.Text is null && outcome.Refusal!.NextStep.Contains(Line, StringComparison.Ordinal), why);
    }

    [Fact]
    public void A_key_goes_into_an_item_of_a_list_within_an_item()
    {
        const string before =
            "orders:\n  - order: PO-1\n    lines:\n      - { line: 1, quantity: 2, what: a }\n      - { line: 2, quantity: 2, what: b }\n";
        var editor = Open(before);
        var at = ("orders", editor.IndexOf("orders", "order", "PO-1"));
        Assert.Equal(
            before.Replace("what: b }", "what: b, lost: 2026-11-20 }", StringComparison.Ordinal),
            editor.Add(at, ("lines", editor.IndexOf(at, ("lines", "line"), "2")), "lost", "2026-11-20").Text
        );
        Assert.Null(editor.Add(at, ("lines", editor.IndexOf(at, ("lines", "line"), "3")), "lost", "2026-11-20").Text);
    }

    private static string? Append(string before, string order)
    {
        var editor = Open(before);
        return editor.Append(OrderShape.Order, ("orders", editor.IndexOf("orders", "order", order)), "lines", [Line]).Text;
    }

    private static ItemSplicer Open(string text) => new(RecordEditor.Open("stock.yaml", text, FileForm.Yaml, new YamlNodeReader(), out _)!);
}
