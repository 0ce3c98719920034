using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>A rule of the library, worked at the bench.</summary>
public sealed class CalculateCommandTests
{
    [Fact]
    public void A_rule_is_worked_with_its_arithmetic_and_source()
    {
        var run = Run.Of("calculate", "esr", "capacitance=391uF", "tan-delta=0.2", "frequency=100Hz");
        Assert.Equal(0, run.Exit);
        // 0.2 / (2 pi x 100 x 391e-6), by hand calculator.
        Assert.Equal(
            """
            ESR: 814.09 mΩ
              arithmetic: 0.2 / (2 pi x 100 Hz x 391 µF) = 814.092 mΩ
              source: Vishay 038 RSU data sheet 28309, maximum ESR from tan delta

            """,
            run.Out
        );
    }

    [Fact]
    public void Programs_get_the_figure_in_its_base_unit_and_the_cautions()
    {
        using var document = JsonDocument.Parse(
            Run.Of("calculate", "discharge", "capacitance=470uF", "from=400V", "resistance=2k2", "--form", "json").Out
        );
        var first = document.RootElement.GetProperty("answer")[0];
        // 2.2 kΩ x 470 µF x ln(400 / 60); a circuit simulator gave 1.96162 s.
        Assert.Equal(1.9616, first.GetProperty("value").GetDouble(), 4);
        Assert.Equal("s", first.GetProperty("unit").GetString());
        Assert.Contains(document.RootElement.GetProperty("cautions").EnumerateArray(), caution =>
            caution.GetString()!.Contains("defer to local codes", StringComparison.Ordinal)
        );
    }

    // 450 V hurt whatever the rule is about: the caution of the pages stands in the text and in the document alike.
    [Fact]
    public void A_figure_above_touch_voltage_carries_its_caution_in_text_and_json()
    {
        Assert.Contains(
            "\ncaution: a bleeder may be open",
            Run.Of("calculate", "surge", "rated-voltage=450V").Out,
            StringComparison.Ordinal
        );
        using var document = JsonDocument.Parse(Run.Of("calculate", "surge", "rated-voltage=450V", "--form", "json").Out);
        Assert.Contains(document.RootElement.GetProperty("cautions").EnumerateArray(), caution =>
            caution.GetString()!.StartsWith("a bleeder may be open", StringComparison.Ordinal)
        );
        Assert.DoesNotContain("caution:", Run.Of("calculate", "surge", "rated-voltage=35V").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_rule_all_are_listed() => Assert.Matches("\n  tan-delta +the dissipation factor", Run.Of("calculate").Out);

    [Fact]
    public void Without_values_a_rule_is_explained_by_an_example_that_is_worked()
    {
        var run = Run.Of("calculate", "q");
        Assert.Contains("  formula: Q = 1 / D", run.Out, StringComparison.Ordinal);
        Assert.Contains("  example: ohmstead calculate q tan-delta=0.2\n    quality factor Q: 5\n", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(new[] { "calculate", "esrr" }, "there is no rule 'esrr', 'esr' is the nearest\n  = ohmstead calculate\n")]
    [InlineData(
        new[] { "calculate", "esr", "capacitance=391uF" },
        "esr needs tan-delta (a share, such as 0.2, 20% or 50ppm) and frequency (in hertz, such as 100Hz)\n  = ohmstead calculate esr "
            + "capacitance=391uF tan-delta=0.2 frequency=100Hz\n"
    )]
    public void What_cannot_be_worked_is_answered_by_an_example(string[] words, string expected)
    {
        var run = Run.Of(words);
        Assert.Equal((2, string.Empty, expected), (run.Exit, run.Out, run.Error));
    }

    [Fact]
    public void A_refusal_is_one_whole_document_too()
    {
        var run = Run.Of("calculate", "esr", "capacitance=391mF", "--form", "json");
        Assert.Equal(2, run.Exit);
        using var document = JsonDocument.Parse(run.Out);
        Assert.StartsWith("capacitance: 'mF'", document.RootElement.GetProperty("refused").GetString(), StringComparison.Ordinal);
    }
}
