using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Quantities;

public sealed class UnitSpellingsTests
{
    [Fact]
    public void Every_spelling_is_read_as_it_says()
    {
        Assert.All(UnitSpellings.Units, unit =>
        {
            Assert.True(QuantityText.TryRead("0.5" + unit.Spelling, unit.Dimension, unit.Print, out var quantity), unit.ToString());
            var value = 0.5m * unit.Multiplier;
            for (var power = unit.Power; power != 0; power -= Math.Sign(power))
            {
                value = power > 0 ? value * 10 : value / 10;
            }

            Assert.Equal(new Quantity(value, unit.Dimension), quantity);
        });
    }

    [Fact]
    public void Every_letter_of_a_code_is_read_as_it_says()
    {
        Assert.Contains(new CodeLetter('k', Dimension.Resistance, 3), UnitSpellings.Codes);
        Assert.All(UnitSpellings.Codes, code =>
            Assert.True(
                QuantityText.TryRead($"0{code.Letter}7", code.Dimension, UnitPrint.Unstated, out var quantity)
                    && decimal.Parse(
                        $"0.7e{code.Power}",
                        System.Globalization.NumberStyles.Float,
                        System.Globalization.CultureInfo.InvariantCulture
                    ) == quantity.Value,
                code.ToString()
            )
        );
    }

    // As a person writes them, and not found by going through our own table.
    [Theory]
    [InlineData("µF", Dimension.Capacitance, -6, 1)]
    [InlineData("mfd", Dimension.Capacitance, -6, 1)]
    [InlineData("kΩ", Dimension.Resistance, 3, 1)]
    [InlineData("K", Dimension.Resistance, 3, 1)]
    [InlineData("mV", Dimension.Voltage, -3, 1)]
    [InlineData("MHz", Dimension.Frequency, 6, 1)]
    [InlineData("min", Dimension.Duration, 0, 60)]
    [InlineData("%", Dimension.Ratio, -2, 1)]
    public void The_usual_ones_are_there(string spelling, Dimension dimension, int power, int multiplier) =>
        Assert.Contains(new SpelledUnit(spelling, dimension, power, multiplier, UnitPrint.Unstated), UnitSpellings.Units);
}
