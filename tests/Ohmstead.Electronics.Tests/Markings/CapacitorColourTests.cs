using Ohmstead.Electronics.Markings;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Markings;

public class CapacitorColourTests
{
    [Fact]
    public void Brown_black_yellow_white_red_is_100_nanofarad_ten_per_cent_250_volt()
    {
        // from memory
        var marked = Assert
            .Single(
                PolyesterBands.Read(BandColour.Brown, BandColour.Black, BandColour.Yellow, BandColour.White, BandColour.Red).Value.Readings
            )
            .Value;
        Assert.Equal(
            ("100 nF", "±10 %", "250 V"),
            (QuantityText.Format(marked.Nominal), marked.Tolerance.ToString(), QuantityText.Format(marked.RatedVoltage!.Value))
        );
    }

    [Fact]
    public void A_polyester_part_with_a_colour_of_no_meaning_is_a_fault() =>
        Assert.NotNull(PolyesterBands.Read(BandColour.Brown, BandColour.Black, BandColour.Yellow, BandColour.Gold, BandColour.Red).Fault);

    [Fact]
    public void Yellow_violet_with_a_white_spot_and_a_pink_foot_is_4_7_microfarad_35_volt()
    {
        // from memory
        var marked = Assert
            .Single(TantalumSpots.Read(BandColour.Yellow, BandColour.Violet, BandColour.White, BandColour.Pink).Value.Readings)
            .Value;
        Assert.Equal(("4.7 µF", "35 V"), (QuantityText.Format(marked.Nominal), QuantityText.Format(marked.RatedVoltage!.Value)));
    }

    [Fact]
    public void A_bead_without_a_readable_foot_has_no_rated_voltage() =>
        Assert.Null(TantalumSpots.Read(BandColour.Brown, BandColour.Black, BandColour.Black).Value.Readings[0].Value.RatedVoltage);

    [Theory]
    [InlineData(BandColour.Green, null)]
    [InlineData(BandColour.Black, BandColour.Gold)]
    public void A_spot_or_foot_of_no_meaning_is_a_fault(BandColour spot, BandColour? foot) =>
        Assert.NotNull(TantalumSpots.Read(BandColour.Brown, BandColour.Black, spot, foot).Fault);

    [Fact]
    public void Colour_names_are_read_with_either_spelling() =>
        Assert.Equal(
            [BandColour.Grey, BandColour.Grey, BandColour.Violet, BandColour.Gold],
            BandColours.Parse("grey-gray, Purple/GOLD").Value
        );
}
