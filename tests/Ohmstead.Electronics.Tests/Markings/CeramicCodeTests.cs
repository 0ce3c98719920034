using System.Globalization;
using Ohmstead.Electronics.Markings;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Markings;

public class CeramicCodeTests
{
    [Theory] // EIA-198 as quoted by makers
    [InlineData("C0G", "0", "30")]
    [InlineData("COG", "0", "30")]
    [InlineData("U2J", "-750", "120")]
    [InlineData("S1G", "-33", "30")]
    [InlineData("P2H", "-150", "60")]
    [InlineData("M7G", "100", "30")]
    [InlineData("R2H", "-220", "60")]
    [InlineData("T2K", "-470", "250")]
    [InlineData("P3L", "-1500", "500")]
    [InlineData("S3M", "-3300", "1000")]
    [InlineData("U8N", "7500", "2500")]
    public void A_class_1_code_is_a_slope_and_its_spread(string code, string slope, string spread) =>
        Assert.Equal(new TemperatureCharacteristic.Linear(Decimal(slope), Decimal(spread)), CeramicCode.Parse(code).Value.Value);

    [Theory]
    [InlineData("NP0", "0")]
    [InlineData("NPO", "0")]
    [InlineData("N750", "-750")]
    [InlineData("N1500", "-1500")]
    [InlineData("P100", "100")]
    public void A_named_slope_has_no_spread_of_its_own(string code, string slope) =>
        Assert.Equal(new TemperatureCharacteristic.Linear(Decimal(slope), null), CeramicCode.Parse(code).Value.Value);

    [Theory] // EIA-198 as quoted by makers
    [InlineData("X7R", -55, 125, "-0.15", "0.15")]
    [InlineData("X5R", -55, 85, "-0.15", "0.15")]
    [InlineData("Y5V", -30, 85, "-0.82", "0.22")]
    [InlineData("Z5U", 10, 85, "-0.56", "0.22")]
    [InlineData("X7T", -55, 125, "-0.33", "0.22")]
    [InlineData("X7B", -55, 125, "-0.015", "0.015")]
    public void A_class_2_code_is_a_range_and_its_greatest_change(string code, int low, int high, string below, string above) =>
        Assert.Equal(new TemperatureCharacteristic.Bounded(low, high, Decimal(below), Decimal(above)), CeramicCode.Parse(code).Value.Value);

    [Theory]
    [InlineData("X3R")]
    [InlineData("Q7R")]
    [InlineData("NP")]
    [InlineData("N75x")]
    [InlineData("")]
    public void What_is_no_temperature_code_is_a_fault(string code) => Assert.NotNull(CeramicCode.Parse(code).Fault);

    [Theory] // DIN 41379 style
    [InlineData("KS", "polystyrene", false)]
    [InlineData("KP", "polypropylene", false)]
    [InlineData("KT", "polyester", false)]
    [InlineData("MKT", "polyester", true)]
    [InlineData("MKC", "polycarbonate", true)]
    [InlineData("MKP", "polypropylene", true)]
    [InlineData("MP", "paper", true)]
    public void Film_letters_name_the_dielectric_and_whether_it_is_metallised(string letters, string dielectric, bool metallised)
    {
        var film = FilmDielectric.Parse(letters).Value;
        Assert.Equal((dielectric, metallised), (film.Dielectric, film.IsMetallised));
    }

    [Fact]
    public void Unknown_film_letters_are_a_fault() => Assert.NotNull(FilmDielectric.Parse("MKX").Fault);

    [Theory] // IEC 60062
    [InlineData("K", 1)]
    [InlineData("M", 5)]
    [InlineData("P", 15)]
    [InlineData("Q", 25)]
    [InlineData("R", 50)]
    [InlineData("S", 100)]
    [InlineData("U", 250)]
    public void A_letter_is_a_resistors_temperature_coefficient(string letter, int millionths) =>
        Assert.Equal(new Quantity(millionths / 1000000m, Dimension.Ratio), TemperatureCoefficientLetter.Parse(letter).Value);

    [Fact]
    public void Ten_kilohm_with_letter_S_changes_by_at_most_20_ohm_over_20_kelvin() =>
        Assert.Equal(20m, 10000m * TemperatureCoefficientLetter.Parse("S").Value.Value * 20m);

    [Theory]
    [InlineData("Z")]
    [InlineData("A")]
    [InlineData("")]
    public void A_letter_without_a_figure_is_a_fault(string letter) => Assert.NotNull(TemperatureCoefficientLetter.Parse(letter).Fault);

    private static decimal Decimal(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
