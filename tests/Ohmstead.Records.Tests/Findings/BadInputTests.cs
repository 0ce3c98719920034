using System.Text;
using System.Text.RegularExpressions;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Findings;

/// <summary>
/// More than two hundred things that people and strangers write wrong, each on one line of a record that is sound otherwise. The first
/// message must name the place, what belongs there, and what to do next.
/// </summary>
public sealed class BadInputTests
{
    // What is written where a figure with a unit belongs, whatever the unit.
    private static readonly string[] BadFigures =
    [
        "4,7 UNIT",
        "1,000 UNIT",
        "\"1.000,5 UNIT\"",
        "4.7",
        "NaN",
        "inf",
        "∞",
        "1e400 UNIT",
        "1e-400 UNIT",
        "-0 UNIT",
        "−4.7 UNIT",
        "４.7 UNIT",
        "٤ UNIT",
        "1O0 UNIT",
        "l00 UNIT",
        "0x10 UNIT",
        "1_000 UNIT",
        "5. UNIT",
        "+5 UNIT",
        "1e3 UNIT",
        "4.7.1 UNIT",
        "4 7 UNIT",
        "4.7 furlongs",
        "4.7 UNIT or so",
        "about 4.7 UNIT",
        "1234567890123456789012345678901 UNIT",
        "4.7 UNIT 4.7 UNIT",
        "''",
        "[4.7 UNIT]",
        "{ value: 4.7 UNIT }",
        "~",
        "UNIT",
        "4.7 \u0007UNIT",
    ];

    // The key and its line; what belongs there; the unit.
    private static readonly (string Line, string Expected, string Unit)[] Figures =
    [
        ("  - { ref: C1, kind: polyester film, capacitance: VALUE }", "[pnµ]F|farad|capacitance|digit|[0-9]", "µF"),
        ("  - { ref: R1, kind: carbon film resistor, resistance: VALUE }", "Ω|ohm|resistance|digit|[0-9]", "kΩ"),
        ("  - { ref: C1, kind: polyester film, rated_voltage: VALUE }", "V|volt|digit|[0-9]", "V"),
        ("  - { ref: L1, kind: inductor, inductance: VALUE }", "H|henr|inductance|digit|[0-9]", "mH"),
    ];

    private static readonly (string Line, string Expected)[] Others =
    [
        // Days.
        .. new[]
        {
            "2024-02-30",
            "2023-02-29",
            "2024-13-01",
            "12/05/2024",
            "05.12.2024",
            "2024-1-2",
            "24-06-30",
            "10:00",
            "0000-01-01",
            "9999-01-01",
            "10000-01-01",
            "2024-03-14T10:00",
            "2024-03-14Z",
            "14 March 2024",
            "yesterday",
            "2024",
            "''",
            "[2024-03-14]",
        }.Select(day => ($"bench: [{{ date: {day} }}]", "[0-9]{4}(-[0-9]{2})?|date")),
        // Words of closed lists, keys and names.
        ("  - { ref: R1, kind: resistorr }", "resistor|known"),
        ("  - { ref: R1, kind: [] }", "single value"),
        ("  - { ref: R1, kind: '' }", "value such as"),
        ("  - { ref: R1 }", "kind: "),
        ("  - { kind: fuse }", "ref: "),
        ("  - { reff: R1, kind: fuse }", "ref:"),
        ("  - { Ref: R1, kind: fuse }", "ref:"),
        ("  - { ref: R 1, kind: fuse }", "letters, digits"),
        ("  - { ref: ../R1, kind: fuse }", "letters, digits"),
        ("  - { ref: con, kind: fuse }", "letters, digits"),
        ("  - { ref: R1, kind: fuse, current: 1 furlong }", "A"),
        ("  - { ref: R1, kind: fuse, colour: red }", "known keys|write"),
        ("  - R1", "ref|mapping"),
        ("  - [R1]", "ref|mapping"),
        ("  - { ref: C1, kind: polyester film, capacitance: 1 µF, tolerance: twenty }", "%|unit"),
        ("  - { ref: C1, kind: polyester film, capacitance: 1 µF, tolerance: 20 }", "%|unit"),
        ("  - { ref: C1, kind: polyester film, capacitance: 1 µF, tolerance: 200 % }", "100 %"),
        ("  - { ref: C1, kind: polyester film, capacitance: 1 µF, tolerance: +20 % }", "both"),
        ("  - { ref: C1, kind: polyester film, capacitance: 1 µF, tolerance: -10/-20 % }", "lower and upper|form"),
        ("parts2: []", "parts|known"),
        ("Parts: []", "parts"),
        ("format: 99", "newer"),
        ("format: 0", "1"),
        ("format: one", "whole number"),
        ("parts: 7", "a list"),
        ("parts: { ref: R1 }", "a list"),
        ("arrived: yesterday", "keys and values"),
        ("design: a b", "letters, digits"),
        ("duty: { hours_per_year: 1.5 }", "whole number"),
        ("duty: { hours_per_year: -1 }", "whole number"),
        ("duty: { hours_per_year: 010 }", "whole number"),
        // What YAML allows and a record does not, and what YAML does not allow.
        ("note: &x a", "quotes"),
        ("note: *x", "value"),
        ("note: !!binary a", "value alone"),
        ("note: !x a", "value alone"),
        ("<<: { a: b }", "written out"),
        ("note: a: b", "quotes"),
        ("note: [a", "]"),
        ("note: {a", "}|:"),
        ("note: \"a", "quote"),
        ("note: 'a", "quote"),
        ("note: ]", "value|quotes|remove"),
        ("note: }", "value|quotes|remove"),
        ("note: @a", "quotes"),
        ("note: `a", "quotes"),
        ("note: %a", "quotes"),
        ("note: a #b", "quotes"),
        ("\tnote: a", "spaces"),
        ("? note", "key|quotes|colon"),
        ("note", "colon|key: value"),
        ("- note", "key|item"),
        ("note:a", "space"),
        ("title: y", "keep \"x\" or \"y\""),
        ("[a]: b", "key"),
        ("'': b", "key"),
        (": b", "key"),
        ("note: [a]]", "remove"),
        ("note: \"a\" b", "end of the line"),
        ("note: \"\\q\"", "\\\\|quotes"),
        ("note: \"\\x07\"", "remove"),
        ("note: \"\\uD800\"", "remove|character"),
        ("note: a\u0007b", "remove"),
        ("note: a\u200Bb", "remove"),
        ("note: a\u202Eb", "remove"),
        ("note: \uFFFE", "remove"),
        ("<<<<<<< HEAD", "keep the lines"),
        ("note: > 20 MΩ", "quotes"),
        ("note: | a", "next line|\\|"),
    ];

    private static IEnumerable<(string Line, string Expected)> All =>
        Figures
            .SelectMany(key =>
                BadFigures.Select(figure =>
                    (
                        key.Line.Replace("VALUE", figure.Replace("UNIT", key.Unit, StringComparison.Ordinal), StringComparison.Ordinal),
                        key.Expected
                    )
                )
            )
            .Concat(Others);

    [Fact]
    public void There_are_more_than_two_hundred_of_them() => Assert.InRange(All.Distinct().Count(), 201, int.MaxValue);

    [Fact]
    public void Each_is_told() => Assert.Empty(All.Where(input => First(input.Line) is null).Select(input => input.Line));

    [Fact]
    public void Nearly_all_name_the_place() => Share(98, (finding, _) => finding.Place.Line is 4 or 5);

    [Fact]
    public void Nearly_all_name_what_belongs_there() =>
        Share(98, (finding, expected) => Regex.IsMatch($"{finding.Message}; {finding.NextStep}", expected));

    [Fact]
    public void Each_has_a_next_step() =>
        Assert.Empty(
            All.SelectMany(input => Read(input.Line))
                .Where(finding => string.IsNullOrWhiteSpace(finding.NextStep))
                .Select(finding => finding.Message)
        );

    [Fact]
    public void A_character_that_nobody_sees_is_one_finding_however_much_it_spoils() =>
        Assert.All(
            [
                "  - { ref: C\u00071, kind: fuse }",
                "  - { ref: C\u200B1, kind: fuse }",
                "  - { ref: \"C\\x071\", kind: fuse }",
                "  - { ref: C1, kind: fu\u0007se }",
                "bench: [{ date: 2026\u0007-03-14 }]",
            ],
            line => Assert.Single(Read(line))
        );

    [Theory]
    [InlineData("note: |\nfirst\n second", 5, "indent the text by two spaces more than its key")]
    [InlineData("note: >-\nfirst", 5, "indent the text by two spaces more than its key")]
    [InlineData("note: |\n    first\n  second", 6, "indent the line as the first line of the block is")]
    public void A_block_with_too_little_indentation_is_told_at_its_line(string lines, int line, string next)
    {
        var finding = Assert.Single(Read(lines));
        Assert.Equal((line, next), (finding.Place.Line, finding.NextStep));
    }

    private static void Share(int percent, Func<Finding, string, bool> holds)
    {
        string[] not =
        [
            .. All.Where(input => First(input.Line) is not { } finding || !holds(finding, input.Expected))
                .Select(input =>
                    $"{input.Line} -> {First(input.Line)?.Place.Line}: {First(input.Line)?.Message}; {First(input.Line)?.NextStep}"
                ),
        ];
        Assert.True(
            100 * (All.Count() - not.Length) >= percent * All.Count(),
            $"{not.Length} of {All.Count()}:\n" + string.Join('\n', not)
        );
    }

    private static Finding? First(string line) =>
        Read(line).OrderBy(finding => finding.Place.Line).ThenBy(finding => finding.Place.Column).FirstOrDefault();

    // A line of a list stands below its key, which is one line more.
    private static IEnumerable<Finding> Read(string line)
    {
        var record =
            $"---\nboard: SP-0001\ntitle: x\n{(line.StartsWith("  -", StringComparison.Ordinal) ? "parts:\n" : string.Empty)}{line}\n---\n";
        var text = new YamlNodeReader().Read("boards/SP-0001.md", Encoding.UTF8.GetBytes(record), FileForm.Markdown, ReadingLimits.Usual);
        return FileBinding.Board("boards/SP-0001.md", text).Findings;
    }
}
