using CsCheck;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Schemas;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Tests.Schemas;

/// <summary>The reader follows the shapes and the schemas are written from them: every key of every mapping is tried on both.</summary>
public sealed class ShapesAndSchemasTests
{
    private static readonly SchemaCheck Check = new();

    [Fact]
    public void Every_example_of_every_key_is_accepted_by_reader_and_schema()
    {
        foreach (var (name, way, shape) in ShapeText.Mappings())
        {
            foreach (var key in shape.Keys)
            {
                var text = ShapeText.File(name, way, ShapeText.Needed(shape, key).Append((key.Name, ShapeText.Example(key))));

                AssertNothing(Reads.Findings(name, text), text);
                AssertNothing(Refused(name, text), text);
                Assert.True(SecondOpinion.Accepts(name, Root(name, text)), text);
            }
        }
    }

    [Fact]
    public void Every_example_of_every_mapping_is_accepted_by_reader_and_schema()
    {
        foreach (var (name, way, shape) in ShapeText.Mappings().Where(mapping => mapping.Way.Count > 0))
        {
            var last = way[^1];
            var value = last.Kind == ValueKind.List ? $"[{shape.Example}]" : shape.Example;
            var parent = way.Count == 1 ? FileShapes.All.Single(file => file.SchemaName == name).Shape : way[^2].Inner!;
            var text = ShapeText.File(name, [.. way.SkipLast(1)], ShapeText.Needed(parent).Append((last.Name, value)));

            AssertNothing(Reads.Findings(name, text), text);
            AssertNothing(Refused(name, text), text);
        }
    }

    [Theory]
    [InlineData("{ a: b }")]
    [InlineData("[a]")]
    [InlineData("[[a]]")]
    [InlineData("{}")]
    [InlineData("~")]
    [InlineData("")]
    [InlineData("''")]
    [InlineData("'  '")]
    [InlineData("?!")]
    [InlineData("two words")]
    [InlineData("12")]
    [InlineData("1e3")]
    [InlineData("0x10")]
    [InlineData("true")]
    [InlineData("\"1 V\\t\"")]
    [InlineData("2026-03-14T10:00:00Z")]
    public void What_the_schema_refuses_the_reader_reports_once_and_on_the_same_line(string value)
    {
        foreach (var (name, way, shape) in ShapeText.Mappings())
        {
            foreach (var key in shape.Keys)
            {
                var text = ShapeText.File(name, way, ShapeText.Needed(shape, key).Append((key.Name, value)));
                var refused = Refused(name, text);
                var read = Reads.Findings(name, text);

                Assert.Equal(refused.Count == 0, SecondOpinion.Accepts(name, Root(name, text)));
                if (refused.Count > 0)
                {
                    // A mapping that has a needed key, and an unknown one instead, is told of both by the reader.
                    var missing = key.Kind == ValueKind.Mapping && value == "{ a: b }" ? key.Inner!.Keys.Count(inner => inner.IsNeeded) : 0;
                    Assert.True(
                        refused.Count == 1 && read.Count == 1 + missing,
                        $"{text}\nreader: {string.Join('\n', read)}\nschema: {string.Join('\n', refused)}"
                    );
                    Assert.Equal(read[0].Place.Line, refused[0].Place.Line);
                }
            }
        }
    }

    [Fact]
    public void A_needed_key_that_is_missing_is_reported_by_both_on_the_line_of_its_mapping()
    {
        foreach (var (name, way, shape) in ShapeText.Mappings())
        {
            foreach (var key in shape.Keys.Where(key => key.IsNeeded))
            {
                var other = shape.Keys.First(known => !known.IsNeeded || known.Name != key.Name);
                var rest = ShapeText
                    .Needed(shape, key)
                    .Where(entry => entry.Key != other.Name)
                    .Append((other.Name, ShapeText.Example(other)));
                var text = ShapeText.File(name, way, rest);
                var read = Reads.Findings(name, text);
                var refused = Refused(name, text);

                Assert.True(
                    read.Count == 1 && refused.Count == 1,
                    $"{text}\nreader: {string.Join('\n', read)}\nschema: {string.Join('\n', refused)}"
                );
                Assert.Equal(RecordChecks.KeyMissing, read[0].Check);
                Assert.Equal(read[0].Place.Line, refused[0].Place.Line);
                Assert.False(SecondOpinion.Accepts(name, Root(name, text)));
            }
        }
    }

    [Fact]
    public void What_the_reader_accepts_the_schema_accepts() =>
        GenFile()
            .Sample(
                file =>
                {
                    var (name, text) = file;
                    AssertNothing(Reads.Findings(name, text), text);
                    AssertNothing(Refused(name, text), text);
                    Assert.True(SecondOpinion.Accepts(name, Root(name, text)), text);
                },
                iter: 300
            );

    [Fact]
    public void Every_quantity_that_the_reader_accepts_fits_the_pattern_of_its_dimension()
    {
        const string Letters = "pnuµμmkKMGTRrLFfHhVvAaWJCc°%‰Ωsdyin/oe℃\u2126";
        string[] words =
        [
            "ohm",
            "ohms",
            "Ohm",
            "kohm",
            "MOHMS",
            "meg",
            "Megohm",
            "megohms",
            "mfd",
            "MFD",
            "mmfd",
            "uufd",
            "µµF",
            "μμf",
            "farad",
            "farads",
            "microfarad",
            "Microfarads",
            "picofarad",
            "picofarads",
            "khy",
            "volt",
            "Volts",
            "watt",
            "watts",
            "kWh",
            "mAh",
            "kHz",
            "MHz",
            "kc/s",
            "cps",
            "sec",
            "second",
            "seconds",
            "minute",
            "minutes",
            "hour",
            "hours",
            "day",
            "days",
            "week",
            "weeks",
            "month",
            "months",
            "year",
            "years",
            "degC",
            "inch",
            "inches",
            "mils",
            "ppm",
            "uufd",
            "mmf",
            "UUF",
        ];
        var units = Letters.Select(letter => $"{letter}").Concat(words).Prepend("").ToList();
        var twoLetters = (from one in Letters from two in Letters select $"{one}{two}").ToList();
        var threeLetters = from one in Letters from two in Letters from three in "fFzhmn" select $"{one}{two}{three}";
        string[] numbers =
        [
            "4.7",
            ".047",
            "47",
            "-4.7",
            "0",
            "4k7",
            "p47",
            "R47",
            "4R7",
            "3V3",
            "2A5",
            "2m2",
            "1F5",
            "4µ7",
            "100 ",
            "100\u00A0",
            "1\u202F",
            "1\u2009",
        ];
        var texts = (from number in numbers from unit in units select number + unit)
            .Concat(twoLetters.Concat(threeLetters).Select(unit => "4.7" + unit))
            .Concat(twoLetters.Select(unit => "4k7" + unit))
            .ToList();
        foreach (var dimension in Enum.GetValues<Dimension>())
        {
            var accepted = 0;
            foreach (var text in texts)
            {
                if (QuantityText.Parse(text, dimension).Fault is null)
                {
                    accepted++;
                    Assert.Matches(SchemaPatterns.Quantity(dimension), text);
                    Assert.Matches(SchemaPatterns.AnyQuantity, text);
                }
            }

            Assert.True(accepted > 0, $"no text was accepted as {dimension}");
        }
    }

    [Theory]
    [InlineData("20 %")]
    [InlineData("±20 %")]
    [InlineData("+-20 %")]
    [InlineData("+/-20%")]
    [InlineData("-10/+50 %")]
    [InlineData("0/+100 %")]
    [InlineData("-0/+100 %")]
    [InlineData("±0.5 pF")]
    [InlineData("±p5F")]
    [InlineData("K")]
    [InlineData("500 ppm")]
    public void Every_tolerance_that_the_reader_accepts_fits_its_pattern(string text)
    {
        Assert.Null(Tolerance.Parse(text, Dimension.Capacitance, new Quantity(0.0000001m, Dimension.Capacitance)).Fault);
        Assert.Matches(SchemaPatterns.Tolerance, text);
    }

    // Values whose meaning another key decides keep that key's first word, so that every file is a sound one.
    private static Gen<(string Name, string Text)> GenFile() =>
        from file in Pick([.. FileShapes.All])
        from lines in GenMapping(file.Shape, 0)
        select (file.SchemaName, Reads.InFile(file.SchemaName, lines));

    private static Gen<string> GenMapping(Shape shape, int depth)
    {
        var indent = new string(' ', depth * 2);
        var texts = shape.Keys.Select(key => GenEntry(key, depth)).ToArray();
        var entries =
            from order in Gen.Shuffle(Enumerable.Range(0, texts.Length).ToArray())
            from count in Gen.Int[0, 6]
            from written in Chosen(shape, texts, order, count)
            let all = written.Count == 0 ? [$"{shape.Keys[0].Name}: {ShapeText.Example(shape.Keys[0])}\n"] : written
            select string.Concat(all.Select(line => indent + line));
        return entries;
    }

    // Chosen anew at each value, so that the keys of one mapping do not hang on those of another.
    private static Gen<List<string>> Chosen(Shape shape, Gen<string>[] texts, int[] order, int count) =>
        Gen.Const(0)
            .SelectMany(_ =>
                Sequence([.. order.Where(at => shape.Keys[at].IsNeeded || Array.IndexOf(order, at) < count).Select(at => texts[at])])
            );

    private static Gen<string> GenEntry(Key key, int depth) =>
        key.Kind switch
        {
            ValueKind.Word when key.Name is "kind" or "measures" => Gen.Const($"{key.Name}: {key.Words[0]}\n"),
            ValueKind.Word => Pick([.. key.Words]).Select(word => $"{key.Name}: {word}\n"),
            ValueKind.Words => Pick([.. key.Words]).List[0, 3].Select(words => $"{key.Name}: [{string.Join(", ", words)}]\n"),
            ValueKind.Text => Pick(
                    "0412",
                    "1E3",
                    "no",
                    "0x1F",
                    "0x",
                    "0o17",
                    "123456789012345678901234567890",
                    "1e999",
                    "1_000",
                    "'7834'",
                    "true",
                    ".inf",
                    "-5.0e-3",
                    "1:30",
                    "Ω und µ",
                    "\"a\\nb\""
                )
                .Select(text => $"{key.Name}: {text}\n"),
            ValueKind.Id => Pick("C12", "1E3", "0412", "true", "+15V", "7834", "-15V", "ÄÖ-1", "0o17", "12.5", ".5x")
                .Where(text => text[0] != '.')
                .Select(text => $"{key.Name}: {text}\n"),
            ValueKind.RoughDate => Pick("1978", "1978-05", "1978-05-31", "'1978'").Select(text => $"{key.Name}: {text}\n"),
            ValueKind.Count when key.Name is "format" => Pick("1", "'1'").Select(text => $"{key.Name}: {text}\n"),
            ValueKind.Count => Pick("0", "1", "'1'").Select(text => $"{key.Name}: {text}\n"),
            ValueKind.Number => Pick("0", "140", "0.5", ".5", "'4'").Select(text => $"{key.Name}: {text}\n"),
            ValueKind.Mapping => Gen.Bool.SelectMany(isEmpty =>
                isEmpty ? Gen.Const($"{key.Name}:\n") : GenMapping(key.Inner!, depth + 1).Select(inner => $"{key.Name}:\n{inner}")
            ),
            ValueKind.List => Gen.Int[0, 2]
                .SelectMany(count =>
                    count == 0
                        ? Gen.Const($"{key.Name}: []\n")
                        : Sequence([.. Enumerable.Repeat(GenMapping(key.Inner!, depth + 2), count)])
                            .Select(items =>
                                $"{key.Name}:\n"
                                + string.Concat(items.Select(item => new string(' ', (depth * 2) + 2) + "- " + item[((depth * 2) + 4)..]))
                            )
                ),
            _ => Gen.Const($"{key.Name}: {key.Example}\n"),
        };

    private static Gen<T> Pick<T>(params T[] items) => Gen.Int[0, items.Length - 1].Select(at => items[at]);

    private static Gen<List<string>> Sequence(IReadOnlyList<Gen<string>> texts) =>
        texts.Aggregate(Gen.Const(new List<string>()), (before, next) =>
            before.SelectMany(list => next.Select(text => new List<string>(list) { text }))
        );

    private static void AssertNothing(IReadOnlyList<Finding> findings, string text) =>
        Assert.True(findings.Count == 0, text + "\n" + string.Join('\n', findings));

    private static IReadOnlyList<Finding> Refused(string name, string text) =>
        Check.Check(Reads.PathOf(name), Root(name, text), FileShapes.All.Single(file => file.SchemaName == name).Shape);

    private static MappingNode Root(string name, string text)
    {
        var nodes = Reads.Nodes(name, text);
        Assert.True(nodes.Root is not null, text + string.Join('\n', nodes.Findings));
        return nodes.Root;
    }
}
