using Ohmstead.Electronics.Markings;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Markings;

// Two or three digits and the number of zeros: IEC 60062:2016, from memory.
public sealed class ResistorDigitCodeTests
{
    [Theory]
    [InlineData("103", "10 kΩ")]
    [InlineData("220", "22 Ω")]
    [InlineData("1002", "10 kΩ")]
    [InlineData("4751", "4.75 kΩ")]
    [InlineData("000", "0 Ω")]
    public void The_last_digit_counts_the_zeros(string code, string ohms) =>
        Assert.Equal(ohms, QuantityText.Format(ResistorDigitCode.Parse(code).Value.Readings.Single().Value.Nominal));

    [Theory]
    [InlineData("")]
    [InlineData("10")]
    [InlineData("10000")]
    [InlineData("4R7")]
    [InlineData("047")]
    public void Anything_else_is_no_digit_code_of_a_resistor(string code) => Assert.NotNull(ResistorDigitCode.Parse(code).Fault);
}
