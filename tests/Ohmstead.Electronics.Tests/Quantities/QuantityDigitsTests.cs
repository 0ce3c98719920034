using System.Globalization;
using CsCheck;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Quantities;

/// <summary>Quantities write their digits themselves; the decimals of the library say what they must be.</summary>
public class QuantityDigitsTests
{
    private const int MostPlaces = 28;

    // Few digits, as in a record; all that 64 bits hold; and more.
    private static readonly Gen<decimal> Values = Gen.Select(
        Gen.OneOf(
            Gen.Long[-9_999, 9_999].Select(digits => (decimal)digits),
            Gen.Long.Select(digits => (decimal)digits),
            Gen.ULong.Select(digits => (decimal)digits),
            Gen.ULong.Select(digits => digits * 1_000m)
        ),
        Gen.Int[0, MostPlaces],
        (digits, places) => digits * new decimal(1, 0, 0, false, (byte)places)
    );

    [Theory]
    [InlineData("0.10", "0.1")]
    [InlineData("4700", "4700")]
    [InlineData("-0.0047000", "-0.0047")]
    [InlineData("18446744073709551615", "18446744073709551615")]
    [InlineData("18446744073709551616.50", "18446744073709551616.5")]
    [InlineData("0.000", "0")]
    public void All_digits_are_written_and_no_zeros_at_the_end(string value, string expected) =>
        Assert.Equal(expected, Format(Decimal(value)));

    [Theory]
    [InlineData("1.4", 3, "1.40")]
    [InlineData("1764", 3, "1760")]
    [InlineData("0.00999", 2, "0.010")]
    [InlineData("-99.95", 3, "-100")]
    [InlineData("-12.345", 4, "-12.35")]
    [InlineData("0", 3, "0.00")]
    public void So_many_digits_are_written_with_their_zeros(string value, int digits, string expected) =>
        Assert.Equal(expected, Format(Decimal(value), digits));

    [Fact]
    public void All_digits_are_those_that_the_library_writes() =>
        Values.Sample(value =>
        {
            var whole = value.ToString(CultureInfo.InvariantCulture);
            Assert.Equal(whole.Contains('.', StringComparison.Ordinal) ? whole.TrimEnd('0').TrimEnd('.') : whole, Format(value));
        });

    [Fact]
    public void Rounded_digits_are_those_that_the_library_writes() =>
        Gen.Select(Values, Gen.Int[1, MostPlaces])
            .Sample(
                (value, digits) =>
                {
                    if (value == 0m)
                    {
                        return;
                    }

                    var scientific = value.ToString(FormattableString.Invariant($"E{digits - 1}"), CultureInfo.InvariantCulture);
                    var exponent = Exponent(value);
                    var places = digits - 1 - exponent;
                    var rounded = places > MostPlaces ? value : decimal.Parse(scientific, NumberStyles.Float, CultureInfo.InvariantCulture);
                    Assert.Equal(
                        rounded.ToString(
                            FormattableString.Invariant($"F{Math.Clamp(digits - 1 - Exponent(rounded), 0, MostPlaces)}"),
                            CultureInfo.InvariantCulture
                        ),
                        Format(value, digits)
                    );
                }
            );

    private static int Exponent(decimal value) =>
        int.Parse(
            value.ToString("E28", CultureInfo.InvariantCulture).Split('E')[1],
            NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture
        );

    private static string Format(decimal value) => QuantityText.Format(new Quantity(value, Dimension.Number));

    private static string Format(decimal value, int digits) => QuantityText.Format(new Quantity(value, Dimension.Number), digits);

    private static decimal Decimal(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
