using System.Globalization;
using System.Numerics;
using CsCheck;
using Ohmstead.Electronics.Decimals;

namespace Ohmstead.Electronics.Tests.Decimals;

public class DecimalMathTests
{
    [Theory] // OEIS A002193, A002194, A000796: published digits, rounded to the places a decimal keeps.
    [InlineData("2", "1.4142135623730950488016887242")]
    [InlineData("3", "1.7320508075688772935274463415")]
    public void A_square_root_has_the_published_digits(string value, string expected) =>
        Assert.Equal(expected, DecimalMath.Sqrt(Decimal(value)).ToString(CultureInfo.InvariantCulture));

    [Fact]
    public void Pi_has_the_published_digits() =>
        Assert.Equal("3.1415926535897932384626433833", DecimalMath.Pi.ToString(CultureInfo.InvariantCulture));

    [Theory]
    [InlineData("0", "0")]
    [InlineData("4", "2")]
    [InlineData("0.25", "0.5")]
    [InlineData("0.0000000000000001", "0.00000001")]
    [InlineData("79228162514264337593543950335", "281474976710656.0000000000000")]
    public void An_exact_root_comes_out_exact(string value, string expected) =>
        Assert.Equal(Decimal(expected), DecimalMath.Sqrt(Decimal(value)));

    [Fact]
    public void The_root_of_a_negative_value_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => DecimalMath.Sqrt(-1m));

    [Fact]
    public void The_root_of_a_square_is_the_value() =>
        Gen.Select(Gen.Long[0, 999_999_999_999], Gen.Int[0, 12])
            .Sample(
                (digits, scale) =>
                {
                    var value = digits * DecimalMath.PowerOfTen(-scale);
                    return DecimalMath.Sqrt(value * value) == value;
                }
            );

    [Fact]
    public void The_root_is_within_half_a_unit_of_its_last_place() =>
        Gen.Decimal[0m, 1_000_000m]
            .Sample(value =>
            {
                // In whole numbers of 10^-60, so that the check itself does not round.
                var root = Scaled(DecimalMath.Sqrt(value), 30);
                var lastPlace = Math.Max(DecimalMath.Exponent(DecimalMath.Sqrt(value)) - 27, -28);
                var half = 5 * BigInteger.Pow(10, lastPlace + 29);
                var target = Scaled(value, 60);
                var below = BigInteger.Max(0, root - half);
                return below * below <= target && target <= (root + half) * (root + half);
            });

    [Theory]
    [InlineData("123.45", 2, "120")]
    [InlineData("0.0012345", 3, "0.00123")]
    [InlineData("0.00125", 2, "0.0013")]
    [InlineData("-0.00125", 2, "-0.0013")]
    [InlineData("999.6", 3, "1000")]
    [InlineData("0", 3, "0")]
    public void A_value_is_rounded_to_significant_digits_half_away_from_zero(string value, int digits, string expected) =>
        Assert.Equal(Decimal(expected), DecimalMath.RoundSignificant(Decimal(value), digits));

    [Theory]
    [InlineData("4.7", 0)]
    [InlineData("4700", 3)]
    [InlineData("0.47", -1)]
    [InlineData("0.00", 0)]
    public void The_exponent_is_that_of_the_first_significant_digit(string value, int expected) =>
        Assert.Equal(expected, DecimalMath.Exponent(Decimal(value)));

    [Fact]
    public void The_exponent_of_a_whole_number_is_one_less_than_its_digits_as_the_library_writes_them()
    {
        foreach (
            var power in Enumerable
                .Range(0, 29)
                .Select(digits => decimal.Parse("1" + new string('0', digits), CultureInfo.InvariantCulture))
        )
        {
            foreach (
                var number in new[] { power, power - 1m, power + 1m, power * 2m, power * 5m, power * 7.9m }
                    .Select(decimal.Floor)
                    .Append(decimal.MaxValue)
                    .Where(number => number > 0m)
            )
            {
                Assert.Equal(number.ToString("F0", CultureInfo.InvariantCulture).Length - 1, DecimalMath.Exponent(number));
                Assert.Equal(DecimalMath.Exponent(number), DecimalMath.Exponent(-number));
            }
        }
    }

    [Fact]
    public void Moving_the_point_there_and_back_changes_nothing() =>
        Gen.Select(Gen.Decimal[-1_000_000m, 1_000_000m], Gen.Int[-12, 12])
            .Sample(
                (value, power) =>
                    !DecimalMath.TryShift(value, power, out var moved)
                    || (DecimalMath.TryShift(moved, -power, out var back) && back == value)
            );

    // The largest decimal is 2^96 - 1 = 79228162514264337593543950335.
    [Theory]
    [InlineData("7922816251426433759354395033", 1, "79228162514264337593543950330")]
    [InlineData("7922816251426433759354395034", 1, null)]
    [InlineData("79228162514264337593543950335", 0, "79228162514264337593543950335")]
    [InlineData("792281625142643375935439503", 2, "79228162514264337593543950300")]
    [InlineData("792281625142643375935439504", 2, null)]
    public void The_point_moves_as_far_as_a_decimal_holds(string value, int power, string? moved)
    {
        Assert.Equal(moved is not null, DecimalMath.TryShift(Exact.Of(value), power, out var shifted));
        Assert.Equal(moved is null ? 0m : Exact.Of(moved), shifted);
    }

    [Fact]
    public void What_does_not_fit_is_not_rounded()
    {
        Assert.False(DecimalMath.TryCompose(UInt128.One, -29, out _));
        Assert.False(DecimalMath.TryCompose(UInt128.One, 29, out _));
        Assert.False(DecimalMath.TryCompose(UInt128.MaxValue, 0, out _));
        Assert.True(DecimalMath.TryCompose(10, -29, out var least));
        Assert.Equal(0.0000000000000000000000000001m, least);
    }

    private static BigInteger Scaled(decimal value, int places)
    {
        var bits = decimal.GetBits(value);
        var mantissa = unchecked(((BigInteger)(uint)bits[2] << 64) | ((BigInteger)(uint)bits[1] << 32) | (uint)bits[0]);
        return mantissa * BigInteger.Pow(10, places - ((bits[3] >> 16) & 0xFF));
    }

    private static decimal Decimal(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
