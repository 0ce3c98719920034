using Ohmstead.PartsLists;

namespace Ohmstead.Tests.PartsLists;

/// <summary>Tables by RFC 4180, from whatever wrote them.</summary>
public sealed class CsvTableReaderTests
{
    [Theory]
    [InlineData("Ref,Value\nC1,100n\n", ',')]
    [InlineData("Ref;Value\nC1;100n\n", ';')]
    [InlineData("Ref\tValue\nC1\t100n\n", '\t')]
    [InlineData("\"Ref;s\",Value,Note\nC1,100n,\n", ',')]
    [InlineData("Ref\nC1\n", ',')]
    [InlineData("sep=;\r\nRef;Value\r\nC1;100n\r\n", ';')]
    public void The_separator_is_the_one_that_stands_in_the_headings_outside_quotes(string text, char separator) =>
        Assert.Equal(separator, CsvTableReader.Read(text).Separator);

    [Theory]
    [InlineData("sep= \nRef;Value\nC1;100n\n")]
    [InlineData("sep=\u00A0\nRef;Value\nC1;100n\n")]
    [InlineData("sep=\"\nRef;Value\nC1;100n\n")]
    [InlineData("sep=x\nRef;Value\nC1;100n\n")]
    [InlineData("sep=\0\nRef;Value\nC1;100n\n")]
    public void What_cannot_separate_is_not_taken_for_a_separator(string text) => Assert.Equal(',', CsvTableReader.Read(text).Separator);

    [Fact]
    public void Quotes_come_off_and_a_quote_written_twice_is_one()
    {
        // RFC 4180, section 2, rules 5 to 7.
        var table = CsvTableReader.Read("Ref,Note\r\n\"C1, C2\",\"a \"\"wet\"\" one\"\r\n");
        Assert.Equal(["C1, C2", "a \"wet\" one"], table.Rows[1].Cells);
        Assert.Empty(table.Faults);
    }

    [Fact]
    public void A_line_is_the_line_of_the_file_whatever_breaks_stand_in_quotes_and_whatever_lines_are_blank()
    {
        var table = CsvTableReader.Read("Ref,Note\r\n\"C1\",\"two\r\nlines\"\r\n\r\n,\r\nC2,x\r\n");
        Assert.Equal([1, 2, 6], table.Rows.Select(row => row.Line));
        Assert.Equal(3, CsvTableReader.Read("sep=,\nRef,Note\nC1,x\n").Rows[1].Line);
    }

    [Theory]
    [InlineData("Ref,Value\nC1,\"100n\nC2,10n\n", 2)]
    [InlineData("Ref,Value\nC1,\"100n\"x\nC2,10n\n", 2)]
    [InlineData("Ref,Value\nC2,10n\nC1,5\" can\n", 3)]
    public void Quotes_that_do_not_pair_are_told_on_their_line(string text, int line)
    {
        var fault = Assert.Single(CsvTableReader.Read(text).Faults);
        Assert.Equal(line, fault.Line);
        Assert.StartsWith("the quotes do not pair near '", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_slip_on_two_lines_is_told_on_each() =>
        Assert.Equal([1, 2], CsvTableReader.Read("\"Ref\"x,Value\nC1,\"Ref\"x").Faults.Select(fault => fault.Line));

    [Fact]
    public void Lines_beside_a_broken_one_are_still_rows() =>
        Assert.Equal(["Ref", "C2"], CsvTableReader.Read("Ref,Value\nC1,5\" can\nC2,10n\n").Rows.Select(row => row.Cells[0]));

    [Theory]
    [InlineData("")]
    [InlineData("\n\r\n\r")]
    [InlineData(",,,\n,,\n")]
    public void A_table_without_words_has_no_rows(string text) => Assert.Empty(CsvTableReader.Read(text).Rows);
}
