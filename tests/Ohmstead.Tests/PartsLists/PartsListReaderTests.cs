using Ohmstead.PartsLists;

namespace Ohmstead.Tests.PartsLists;

/// <summary>Whole lists: what is taken, what is left out, and what is said of it.</summary>
public sealed class PartsListReaderTests
{
    [Fact]
    public void A_grouped_line_gives_one_part_for_each_reference()
    {
        var list = Read("Ref,Value,Kind\n\"C1, C3-C4\",100n 63V,polyester film\n");
        Assert.Equal(
            [
                "{ ref: C1, kind: polyester film, capacitance: 100 nF, rated_voltage: 63 V }",
                "{ ref: C3, kind: polyester film, capacitance: 100 nF, rated_voltage: 63 V }",
                "{ ref: C4, kind: polyester film, capacitance: 100 nF, rated_voltage: 63 V }",
            ],
            list.Parts.Select(PartLine.Write)
        );
        Assert.Empty(list.Faults);
    }

    [Fact]
    public void Columns_of_their_own_say_what_the_value_does_not_and_text_that_looks_like_a_number_stays_text()
    {
        var list = Read(
            "Designator;Val;Voltage (V);Tol;Maker;MPN;Date code;Remarks\nC1;4u7;63;K;Ostrel;7805;7834;sleeve shrunk: top\n",
            kinds: [("C", "polyester film")]
        );
        Assert.Equal(
            "{ ref: C1, kind: polyester film, capacitance: 4.7 µF, tolerance: ±10 %, rated_voltage: 63 V, maker: Ostrel, type: "
                + "\"7805\", date_code: \"7834\", note: \"sleeve shrunk: top\" }",
            PartLine.Write(Assert.Single(list.Parts))
        );
    }

    [Fact]
    public void Parts_of_a_letter_that_does_not_say_the_kind_are_told_together()
    {
        var list = Read("Ref,Value\n\"C1,C2\",100n\nR1,10k\nC9,1u\nU1,WX-A1\n");
        Assert.Equal(["U1"], list.Parts.Select(part => part.Reference));
        Assert.Equal(["C: C1 C2 C9", "R: R1"], list.Undecided.Select(one => $"{one.Letters}: {string.Join(' ', one.References)}"));
    }

    [Fact]
    public void The_kind_of_one_part_counts_before_its_letter_and_the_list_before_the_letter()
    {
        var list = Read("Ref,Value\nC1,100n\nC2,100n\nC3,100n X7R\n", kinds: [("C", "polyester film"), ("C2", "mica")]);
        Assert.Equal(["polyester film", "mica", "ceramic class 2"], list.Parts.Select(part => part.Kind.Name));
    }

    [Theory]
    [InlineData("C1,0.1,1,\n", "line 2, column 2", "'0.1' has no unit, expected a capacitance in pF, nF, µF or F")]
    [InlineData("\"C1,C2\",1u,3,\n", "line 2, column 3", "the line names 2 references and counts '3'")]
    [InlineData(",1u,1,\n", "line 2, column 1", "there is no reference")]
    [InlineData("C1,1u,1,x,y\n", "line 2", "the line has 5 cells, the headings have 4")]
    [InlineData("C1,1u\n", "line 2", "the line has 2 cells, the headings have 4")]
    [InlineData("C1,1u,1,=1+1\n", "line 2, column 4", "'=1+1' is a formula of a spreadsheet")]
    [InlineData("C1,1u,1,@x\n", "line 2, column 4", "'@x' is a formula of a spreadsheet")]
    [InlineData("C1,1u,1,a\u0001b\n", "line 2, column 4", "the cell has the hidden character U+0001")]
    [InlineData("C1,1u,1,a\0b\n", "line 2, column 4", "the cell has the hidden character U+0000")]
    [InlineData("C1,1u,1,a\u202Eb\n", "line 2, column 4", "the cell has the hidden character U+202E")]
    [InlineData("\"C1\nC2-8\",1u,,\n", "line 2, column 1", "'C2-8' can be the places C2 to C8, or one place of that name")]
    public void A_line_in_which_anything_is_not_understood_is_left_out_and_told_with_its_place(string line, string place, string message)
    {
        var list = Read("Ref,Value,Qty,Note\n" + line + "C9,1u,1,\n", kinds: [("C", "polyester film")]);
        var fault = Assert.Single(list.Faults);
        Assert.Equal((place, message), (fault.Place, fault.Message));
        Assert.Equal(["C9"], list.Parts.Select(part => part.Reference));
    }

    [Fact]
    public void A_value_that_a_column_beside_it_contradicts_is_told() =>
        Assert.Equal(
            "rated_voltage is 50 V here, and 63 V in the column Value",
            Assert.Single(Read("Ref,Value,Voltage\nC1,100n 63V,50 V\n", kinds: [("C", "mica")]).Faults).Message
        );

    [Fact]
    public void A_reference_that_the_list_has_twice_is_one_part_when_both_agree_and_a_contradiction_when_not()
    {
        Assert.Single(Read("Ref,Value\nC1,100n\nC1,0.1µF\n", kinds: [("C", "mica")]).Parts);
        Assert.Equal(
            "C1 is mica 10 nF, and mica 100 nF on line 2",
            Assert.Single(Read("Ref,Value\nC1,100n\nC1,10n\n", kinds: [("C", "mica")]).Contradictions).Message
        );
    }

    [Theory]
    [InlineData("Title of it\n\nRef,Value\nU1,WX-A1\n", null)]
    [InlineData("A,B\nU1,WX-A1\n", "no column holds references; the headings are 'A', 'B'")]
    [InlineData("Ref,Ref,Value\nU1,U2,WX\n", "columns 1 and 2 can both be 'ref': Ref, Ref")]
    public void Headings_are_found_or_what_is_missing_is_named(string text, string? fault)
    {
        var plans = CsvTableReader
            .Read(text)
            .Rows.Select(row => ColumnPlan.For(row, new Dictionary<string, string>(StringComparer.Ordinal)))
            .ToArray();
        Assert.Equal(fault, plans.Any(plan => plan.Plan is not null) ? null : plans[0].Fault);
    }

    [Fact]
    public void What_a_person_says_of_the_columns_counts_before_the_headings()
    {
        var row = CsvTableReader.Read("Ref,Ref,Value,Note\n").Rows[0];
        var (plan, _, _) = ColumnPlan.For(
            row,
            new Dictionary<string, string>(StringComparer.Ordinal)
            {
                ["ref"] = "#2",
                ["type"] = "value",
                ["note"] = string.Empty,
            }
        );
        Assert.Equal("columns: ref = Ref, type = Value; not used: Ref, Note", plan!.InWords());
        Assert.Equal(
            "no column is headed 'Val'; there are 'Ref', 'Ref', 'Value', 'Note'",
            ColumnPlan.For(row, new Dictionary<string, string>(StringComparer.Ordinal) { ["value"] = "Val" }).Fault
        );
    }

    [Fact]
    public void A_field_of_a_megabyte_is_told_and_not_read()
    {
        var list = Read("Ref,Value,Note\nC1,1u,\"" + new string('x', 1 << 20) + "\"\nC2,1u,\n", kinds: [("C", "mica")]);
        Assert.Equal("the cell has 1048576 characters, at most 500 are read", Assert.Single(list.Faults).Message);
        Assert.Equal(["C2"], list.Parts.Select(part => part.Reference));
    }

    [Fact]
    public void Whatever_a_table_holds_comes_back_as_parts_or_as_faults()
    {
        var random = new Random(4180);
        const string letters = "Rr C1-,;\t\"\n\r=%+/.µΩkRnu0789\0\u202E±é'";
        for (var i = 0; i < 2000; i++)
        {
            var text =
                "Ref,Value,Tol\n" + string.Concat(Enumerable.Range(0, random.Next(60)).Select(_ => letters[random.Next(letters.Length)]));
            var list = Read(text, kinds: [("C", "mica"), ("R", "carbon film resistor")]);
            Assert.All(list.Parts, part => Assert.DoesNotContain('\n', PartLine.Write(part)));
            Assert.All(list.Faults, fault => Assert.InRange(fault.Line, 1, 70));
        }
    }

    private static PartsList Read(string text, (string Key, string Kind)[]? kinds = null)
    {
        var table = CsvTableReader.Read(text);
        var plan = table
            .Rows.Select(row => ColumnPlan.For(row, new Dictionary<string, string>(StringComparer.Ordinal)).Plan)
            .First(plan => plan is not null)!;
        return PartsListReader.Read(
            table,
            plan,
            new(
                (kinds ?? []).ToDictionary(kind => kind.Key, kind => KindOf.Named(kind.Kind), StringComparer.Ordinal),
                new Dictionary<string, string>(StringComparer.Ordinal),
                _ => null
            )
        );
    }
}
