using System.Globalization;
using CsCheck;
using Ohmstead.Electronics.PreferredValues;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.PreferredValues;

public class ESeriesTests
{
    [Fact]
    [Trait("CheckValue", "CV12")]
    public void E24_follows_the_rule_but_for_eight_historical_values()
    {
        // IEC 60063: 10^(n/24) to one decimal, except n = 10 to 16 and 22.
        decimal[] exceptions = [2.7m, 3.0m, 3.3m, 3.6m, 3.9m, 4.3m, 4.7m, 8.2m];
        int[] places = [10, 11, 12, 13, 14, 15, 16, 22];
        Assert.Equal(exceptions, places.Select(n => ESeries.E24.Decade[n]));
        Assert.Equal(places, Enumerable.Range(0, 24).Where(n => ESeries.E24.Decade[n] != Math.Round((decimal)Math.Pow(10, n / 24d), 1)));
    }

    [Fact]
    [Trait("CheckValue", "CV13")]
    public void E192_has_9_20_where_the_rule_gives_9_19() => Assert.Equal(9.20m, ESeries.E192.Decade[185]); // IEC 60063

    [Theory]
    [Trait("CheckValue", "CV14")]
    [InlineData(3, "7.9")]
    [InlineData(6, "19.5")]
    [InlineData(12, "42.9")]
    [InlineData(24, "90.1")]
    [InlineData(48, "183.13")]
    [InlineData(96, "370.70")]
    [InlineData(192, "745.99")]
    public void A_decade_of_each_series_adds_up(int count, string sum)
    {
        var series = Assert.Single(ESeries.All, series => series.Count == count);
        Assert.Equal(count, series.Decade.Length);
        Assert.Equal(decimal.Parse(sum, CultureInfo.InvariantCulture), series.Decade.Sum());
    }

    [Theory]
    [InlineData(3, 37.5)]
    [InlineData(6, 20.0)]
    [InlineData(12, 11.1)]
    [InlineData(24, 7.1)]
    [InlineData(48, 2.6)]
    [InlineData(96, 1.48)]
    [InlineData(192, 0.97)]
    public void The_widest_half_gap_matches_the_tolerance_the_series_was_made_for(int count, double percent)
    {
        var decade = ESeries.All.Single(series => series.Count == count).Decade;
        var widest = Enumerable.Range(0, count).Max(n => HalfGap(decade[n], n + 1 < count ? decade[n + 1] : 10m));
        Assert.Equal(percent, (double)(100m * widest), percent < 2 ? 0.005 : 0.05);
    }

    [Fact]
    public void E24_shares_only_a_few_values_with_the_fine_series()
    {
        Assert.Equal([1.0m, 1.1m, 1.3m, 1.5m, 2.0m, 7.5m], ESeries.E24.Decade.Intersect(ESeries.E96.Decade));
        Assert.Equal([1.0m, 1.1m, 1.2m, 1.3m, 1.5m, 1.6m, 1.8m, 2.0m, 2.4m, 4.7m, 7.5m], ESeries.E24.Decade.Intersect(ESeries.E192.Decade));
    }

    [Theory]
    [InlineData("4.7 kΩ", true)]
    [InlineData("470 mΩ", true)]
    [InlineData("47 MΩ", true)]
    [InlineData("500 kΩ", false)]
    [InlineData("0 Ω", false)]
    public void A_value_is_looked_up_in_any_decade(string value, bool expected) =>
        Assert.Equal(expected, ESeries.E12.Contains(QuantityText.Parse(value, Dimension.Resistance).Value));

    [Theory]
    [InlineData("5 kΩ", "4.7 kΩ", "5.6 kΩ", "4.7 kΩ")]
    [InlineData("9.5 Ω", "8.2 Ω", "10 Ω", "10 Ω")]
    [InlineData("33 Ω", "33 Ω", "33 Ω", "33 Ω")]
    public void The_neighbours_of_a_value_are_found(string value, string below, string above, string nearest)
    {
        var neighbours = ESeries.E12.Neighbours(QuantityText.Parse(value, Dimension.Resistance).Value)!.Value;
        Assert.Equal(
            (below, above, nearest),
            (QuantityText.Format(neighbours.Below), QuantityText.Format(neighbours.Above), QuantityText.Format(neighbours.Nearest))
        );
    }

    [Fact]
    public void Nothing_has_no_neighbours() => Assert.Null(ESeries.E12.Neighbours(new Quantity(0m, Dimension.Resistance)));

    [Fact]
    public void Neighbours_are_in_the_series_and_enclose_the_value() =>
        Gen.Select(Gen.Int[1, 100_000_000], Gen.Int[0, 6])
            .Sample(
                (digits, which) =>
                {
                    var series = ESeries.All[which];
                    var value = new Quantity(digits / 1000m, Dimension.Resistance);
                    var neighbours = series.Neighbours(value)!.Value;
                    return neighbours.Below.Value <= value.Value
                        && neighbours.Above.Value >= value.Value
                        && series.Contains(neighbours.Below)
                        && series.Contains(neighbours.Above)
                        && (neighbours.Nearest == neighbours.Below || neighbours.Nearest == neighbours.Above);
                }
            );

    private static decimal HalfGap(decimal low, decimal high) => (high - low) / (high + low);
}
