using CsCheck;
using Ohmstead.Electronics.PreferredValues;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.PreferredValues;

public class RatedVoltagesTests
{
    [Theory] // common practice
    [Trait("CheckValue", "CV15")]
    [InlineData("64 V", "80 V")]
    [InlineData("6.4 V", "10 V")]
    [InlineData("300 V", "315 V")]
    [InlineData("3 V", "4 V")]
    [InlineData("6 V", "6.3 V")]
    [InlineData("12 V", "16 V")]
    [InlineData("15 V", "16 V")]
    [InlineData("18 V", "25 V")]
    [InlineData("30 V", "35 V")]
    [InlineData("40 V", "50 V")]
    [InlineData("60 V", "63 V")]
    [InlineData("70 V", "80 V")]
    [InlineData("75 V", "80 V")]
    [InlineData("150 V", "160 V")]
    [InlineData("275 V", "315 V")]
    [InlineData("325 V", "350 V")]
    [InlineData("385 V", "400 V")]
    [InlineData("450 V", "450 V")]
    [InlineData("475 V", "500 V")]
    public void An_old_mark_gets_the_lowest_rating_that_is_not_below(string mark, string rating) =>
        Assert.Equal(rating, QuantityText.Format(RatedVoltages.Replace(Volts(mark)).Rating!.Value));

    [Theory]
    [InlineData("525 V")]
    [InlineData("600 V")]
    public void A_mark_above_all_ratings_gets_advice_instead(string mark)
    {
        var replacement = RatedVoltages.Replace(Volts(mark));
        Assert.Null(replacement.Rating);
        Assert.Contains("in series", replacement.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_64_volt_mark_keeps_a_quarter_in_hand() => Assert.Equal(1.25m, RatedVoltages.Replace(Volts("64 V")).Ratio);

    [Fact]
    public void A_450_volt_mark_names_500_volt_as_well() =>
        Assert.Equal(["500 V"], RatedVoltages.Replace(Volts("450 V")).Also.Select(QuantityText.Format));

    [Fact]
    public void The_replacement_is_never_below_the_mark() =>
        Gen.Int[1, 5000]
            .Sample(tenths =>
                RatedVoltages.Replace(new Quantity(tenths / 10m, Dimension.Voltage)).Rating is { } rating && rating.Value >= tenths / 10m
            );

    [Theory] // common practice
    [InlineData("8 µF", "10 µF +25.0 %, 8.2 µF +2.5 %")]
    [InlineData("16 µF", "15 µF -6.25 %, 22 µF +37.5 %")]
    [InlineData("20 µF", "22 µF +10.0 %")]
    [InlineData("25 µF", "22 µF -12.0 %, 27 µF +8.0 %")]
    [InlineData("30 µF", "33 µF +10.0 %")]
    [InlineData("32 µF", "33 µF +3.125 %")]
    [InlineData("40 µF", "39 µF -2.5 %, 47 µF +17.5 %")]
    [InlineData("50 µF", "47 µF -6.0 %")]
    [InlineData("64 µF", "68 µF +6.25 %")]
    [InlineData("250 µF", "270 µF +8.0 %, 220 µF -12.0 %")]
    [InlineData("500 µF", "470 µF -6.0 %")]
    [InlineData("3200 µF", "3300 µF +3.125 %")]
    [InlineData("0.005 µF", "4.7 nF -6.0 %")]
    [InlineData("0.02 µF", "22 nF +10.0 %")]
    [InlineData("0.05 µF", "47 nF -6.0 %")]
    [InlineData("0.25 µF", "220 nF -12.0 %, 270 nF +8.0 %")]
    [InlineData("0.5 µF", "470 nF -6.0 %")]
    [InlineData("47 µF", "47 µF 0.0 %")]
    public void An_old_capacitance_gets_the_values_made_today(string legacy, string expected) =>
        Assert.Equal(
            expected,
            string.Join(
                ", ",
                LegacyCapacitances
                    .Replace(QuantityText.Parse(legacy, Dimension.Capacitance).Value)
                    .Select(found =>
                        $"{QuantityText.Format(found.Value)} "
                        + $"{(100m * found.Deviation).ToString("+0.0##;-0.0##;0.0", System.Globalization.CultureInfo.InvariantCulture)} %"
                    )
            )
        );

    [Fact]
    public void Every_replacement_lies_inside_the_old_delivery_tolerance() =>
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 6])
            .Sample(
                (place, zeros) =>
                {
                    decimal[] figures = [1m, 1.25m, 1.6m, 2m, 2.5m, 3.2m, 4m, 5m, 6.4m, 8m];
                    var legacy = new Quantity(figures[place] * (decimal)Math.Pow(10, zeros) * 0.000001m, Dimension.Capacitance);
                    return LegacyCapacitances.Replace(legacy) is { Length: > 0 } found
                        && found.All(value => value.Deviation is >= -0.2m and <= 0.5m);
                }
            );

    private static Quantity Volts(string text) => QuantityText.Parse(text, Dimension.Voltage).Value;
}
