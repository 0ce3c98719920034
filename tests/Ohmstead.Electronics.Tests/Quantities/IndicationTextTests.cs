using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Quantities;

public sealed class IndicationTextTests
{
    [Theory]
    [InlineData("> 20 MΩ", IndicationKind.Above, "20000000")]
    [InlineData(">20Mohm", IndicationKind.Above, "20000000")]
    [InlineData(">= 20 MΩ", IndicationKind.AtLeast, "20000000")]
    [InlineData("≥ 20 MΩ", IndicationKind.AtLeast, "20000000")]
    [InlineData("< 0.1 Ω", IndicationKind.Below, "0.1")]
    [InlineData("<= 0.1 Ω", IndicationKind.AtMost, "0.1")]
    [InlineData("≤\u00A00.1 Ω", IndicationKind.AtMost, "0.1")]
    public void A_sign_before_a_quantity_says_on_which_side_the_value_lies(string text, IndicationKind kind, string bound)
    {
        var read = IndicationText.Parse(text, Dimension.Resistance).Value;
        Assert.Equal(kind, read.Kind);
        Assert.Equal(decimal.Parse(bound, System.Globalization.CultureInfo.InvariantCulture), read.Bound!.Value.Value);
        Assert.Null(read.Exact);
    }

    [Theory]
    [InlineData("open", IndicationKind.Open)]
    [InlineData("short", IndicationKind.Short)]
    [InlineData("over range", IndicationKind.OverRange)]
    public void A_word_of_the_meter_has_no_figure(string text, IndicationKind kind)
    {
        var read = IndicationText.Parse(text, Dimension.Capacitance).Value;
        Assert.Equal(kind, read.Kind);
        Assert.Equal(Dimension.Capacitance, read.Dimension);
        Assert.Null(read.Exact);
        Assert.Null(read.Bound);
    }

    [Fact]
    public void A_figure_is_the_value()
    {
        var read = IndicationText.Parse("4k7", Dimension.Resistance).Value;
        Assert.Equal(new Quantity(4700m, Dimension.Resistance), read.Exact);
        Assert.Null(read.Bound);
    }

    [Theory]
    [InlineData("OL", "over range")]
    [InlineData("inf", "over range")]
    [InlineData("∞", "over range")]
    [InlineData("shorted", "short")]
    [InlineData("Open", "open")]
    [InlineData("o/c", "open")]
    public void What_displays_show_is_told_with_the_word_to_write(string text, string word)
    {
        Assert.False(IndicationText.Parse(text, Dimension.Resistance).Is(out _, out var fault));
        Assert.Equal(word, fault.NextStep);
    }

    [Theory]
    [InlineData("> 20 MF", Dimension.Resistance)]
    [InlineData(">", Dimension.Resistance)]
    [InlineData("> > 20 MΩ", Dimension.Resistance)]
    [InlineData("=> 20 MΩ", Dimension.Resistance)]
    [InlineData("~ 20 MΩ", Dimension.Resistance)]
    [InlineData("opens", Dimension.Resistance)]
    [InlineData("", Dimension.Resistance)]
    public void What_is_no_reading_is_told(string text, Dimension expected) =>
        Assert.False(IndicationText.Parse(text, expected).Is(out _, out _));

    [Fact]
    public void What_is_wrong_behind_the_sign_is_told_at_its_place_and_the_sign_stays()
    {
        Assert.False(IndicationText.Parse("> 1.4", Dimension.Temperature).Is(out _, out var fault));
        Assert.InRange(fault.Offset, 2, 5);
        Assert.StartsWith("> 1.4 °C", fault.NextStep, StringComparison.Ordinal);
    }
}
