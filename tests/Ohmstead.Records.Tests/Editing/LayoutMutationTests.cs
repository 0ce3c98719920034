using CsCheck;
using Ohmstead.Records.Editing.Layout;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Editing;

/// <summary>Spaces, line ends, remarks and signs put anywhere into a record: whatever is still read is laid out, and its proof never
/// fails.</summary>
public sealed class LayoutMutationTests
{
    private const string Record = """
        ---
        board: SP-0007   # the third
        title: "Barograph \u03A9 servo, with a long
          title: on two lines"
        arrived: { date: 2026-02-02, from: lookout hut store, complaint: 'pen drifts' }
        # a remark
        parts:
          - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: -10/+50 %,
              # its place
              working_voltage: 15.2 V, also: [a, "b", { c: d }, e: f] }
          - ref: R4
            note: |   # as found
              two

                lines
            more: >2+
               folded
              text

          - - nested
            - list
          -
        empty:
        plain: text on
          three lines

          of its own
        ---

        ## Story  
        The pen drifted 😀 after about an hour.
        """;

    private static readonly string[] Pieces =
    [
        " ",
        "  ",
        "    ",
        "\n",
        "\n\n",
        "\r\n",
        "\r",
        "\t",
        " \n",
        "\n ",
        "\n  ",
        "\n      ",
        " # x\n",
        "# x",
        " #",
        "\n# x\n",
        "\n    # x\n",
        ",",
        ", ",
        ":",
        ": ",
        "- ",
        "\n- ",
        "? ",
        "{",
        "}",
        "[",
        "]",
        "{}",
        "[]",
        "\"",
        "'",
        "|",
        ">",
        "|\n  ",
        "\\",
        "\\\n",
        "~",
        "a",
        "a: b",
        "😀",
        "\u00A0",
        "\uFEFF",
        "\u0085",
        "\u2028",
        "---",
        "...",
    ];

    private static readonly Gen<(int At, int Removed, string Added)> Change = Gen.Select(
        Gen.Int[4, Record.Length],
        Gen.Frequency((3, Gen.Const(0)), (1, Gen.Int[1, 6])),
        Gen.Int[0, Pieces.Length - 1].Select(index => Pieces[index])
    );

    [Fact]
    public void The_record_itself_is_tidy() => Assert.Equal(LayoutState.Tidy, Lay(new YamlNodeReader(), Record, FileForm.Markdown));

    [Fact]
    public void Whatever_is_put_in_no_proof_fails()
    {
        var reader = new YamlNodeReader();
        Change.List[1, 3].Sample(changes => Lay(reader, Damage(changes), FileForm.Markdown) != LayoutState.Doubted, iter: 20_000);
    }

    [Fact]
    public void No_heap_of_yaml_signs_makes_a_proof_fail()
    {
        var reader = new YamlNodeReader();
        Gen.Int[0, Pieces.Length - 1]
            .Select(index => Pieces[index])
            .List[1, 20]
            .Sample(pieces => Lay(reader, "a: b\nc: " + string.Concat(pieces), FileForm.Yaml) != LayoutState.Doubted, iter: 20_000);
    }

    private static LayoutState Lay(YamlNodeReader reader, string text, FileForm form) =>
        RecordLayout.Compute("a.md", text, form, reader).State;

    private static string Damage(List<(int At, int Removed, string Added)> changes)
    {
        var text = Record;
        foreach (var change in changes)
        {
            var at = Math.Min(change.At, text.Length);
            text = text[..at] + change.Added + text[Math.Min(at + change.Removed, text.Length)..];
        }

        return text;
    }
}
