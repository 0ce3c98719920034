using System.Text;
using CsCheck;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Reading;

/// <summary>Damages a good record in ten thousand ways: whatever comes, a reader answers with findings that lie in the file.</summary>
public sealed class MutationTests
{
    private const string Record = """
        ---
        board: SP-0007
        title: "Barograph \u03A9 servo"
        arrived: { date: 2026-02-02, from: lookout hut store, complaint: 'pen drifts' }
        # a comment
        parts:
          - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: -10/+50 %,
              working_voltage: 15.2 V }
          - ref: R4
            note: |
              two
              lines
        ---

        ## Story
        The pen drifted 😀 after about an hour.
        """;

    private static readonly string[] Pieces =
    [
        "\"",
        "'",
        "{",
        "}",
        "[",
        "]",
        ",",
        ":",
        ": ",
        " #",
        "#3",
        "- ",
        "? ",
        "&a ",
        "*a",
        "!!",
        "!![",
        "%",
        "<<",
        "|",
        ">",
        "\t",
        "\n",
        "\r",
        "\r\n",
        "---\n",
        "...\n",
        "\n---\n",
        "<<<<<<< a\n",
        "\0",
        "\u001B",
        "\u0085",
        "\u2028",
        "\uFEFF",
        "\u202E",
        "\uFFFE",
        "\\",
        "\\uD800",
        "\\x",
        "\u0061\u0301",
        "😀",
        "@",
        "`",
        "1,5",
        " ",
        "  ",
        "a",
        "b: 1",
        "key",
        "x: ",
    ];

    private static readonly Gen<string> Piece = Gen.Int[0, Pieces.Length - 1].Select(index => Pieces[index]);

    private static readonly Gen<(int At, int Removed, byte[] Added)> Change = Gen.Select(
        Gen.Int[0, Encoding.UTF8.GetByteCount(Record)],
        Gen.Int[0, 12],
        Gen.OneOf(Piece.Select(Encoding.UTF8.GetBytes), Gen.Byte.Array[1, 3])
    );

    [Fact]
    public void The_record_that_is_damaged_is_good() => Assert.Empty(ReadText.Markdown(Record).Findings);

    [Fact]
    public void No_damage_makes_the_reader_throw_and_every_finding_lies_in_the_file()
    {
        var reader = new YamlNodeReader();
        Change.List[1, 4].Sample(changes => IsAnswered(reader, Damage(Encoding.UTF8.GetBytes(Record), changes)), iter: 10_000);
    }

    [Fact]
    public void No_heap_of_yaml_signs_makes_the_reader_throw()
    {
        var reader = new YamlNodeReader();
        Piece.List[1, 30].Sample(pieces => IsAnswered(reader, Encoding.UTF8.GetBytes($"---\n{string.Concat(pieces)}\n---\n")), iter: 3_000);
    }

    private static bool IsAnswered(YamlNodeReader reader, byte[] bytes)
    {
        foreach (var form in (FileForm[])[FileForm.Markdown, FileForm.Yaml])
        {
            var reading = reader.Read("a.md", bytes, form, ReadingLimits.Usual);
            var lines = new SourceText("a.md", Encoding.UTF8.GetString(bytes));
            var isInside = reading.Findings.All(finding =>
                IsInside(finding.Place, lines) && finding.Related.All(related => IsInside(related.Place, lines))
            );
            var isSaid = reading.Root is not null || reading.Findings.Length > 0;
            var isOurs = reading.Findings.All(finding =>
                !finding.Message.Contains("While ", StringComparison.Ordinal) && !finding.Message.EndsWith('.')
            );
            if (!isInside || !isSaid || !isOurs)
            {
                return false;
            }
        }

        return true;
    }

    // Bytes that are no UTF-8 are replaced here, so only the line is compared, and the column with room for what was replaced.
    private static bool IsInside(Place place, SourceText lines) =>
        place.Line >= 1
        && place.Line <= lines.LineCount
        && place.Column >= 1
        && place.Column + place.Length <= lines.Line(place.Line).Length + 2;

    private static byte[] Damage(byte[] bytes, List<(int At, int Removed, byte[] Added)> changes)
    {
        foreach (var change in changes)
        {
            var at = Math.Min(change.At, bytes.Length);
            var rest = Math.Min(at + change.Removed, bytes.Length);
            bytes = [.. bytes[..at], .. change.Added, .. bytes[rest..]];
        }

        return bytes;
    }
}
