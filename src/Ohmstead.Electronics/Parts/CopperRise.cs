namespace Ohmstead.Electronics.Parts;

/// <summary>How hot a copper winding got, from its resistance cold and hot.</summary>
public static class CopperRise
{
    private const decimal CopperConstant = 234.5m;

    // No insulation lives beyond; what comes out hotter is an open or a shorted winding, or two readings of two things.
    private const decimal Coldest = -60m;
    private const decimal Hottest = 300m;

    private static readonly Source Standard = Source.Published(
        "UL and CSA temperature test by change of resistance, T = (R/r)(k + t) - k",
        "k = 234.5 for copper"
    );

    /// <summary>The rise above the surroundings, (R2 - R1)/R1 (234.5 + T1) - (T2 - T1), in kelvin.</summary>
    /// <param name="coldOhms">Resistance R1 at the start.</param>
    /// <param name="hotOhms">Resistance R2 at the end, read at once after switching off.</param>
    /// <param name="startCelsius">Temperature T1 of winding and room at the start.</param>
    /// <param name="endRoomCelsius">Temperature T2 of the room at the end.</param>
    public static Outcome<Worked<decimal>> Kelvin(decimal coldOhms, decimal hotOhms, decimal startCelsius, decimal endRoomCelsius) =>
        Domain
            .Require(Domain.Positive("cold resistance", coldOhms), Domain.Positive("hot resistance", hotOhms))
            .Flatten(() =>
            {
                decimal kelvin = ((hotOhms - coldOhms) / coldOhms * (CopperConstant + startCelsius)) - (endRoomCelsius - startCelsius);
                if (endRoomCelsius + kelvin is < Coldest or > Hottest)
                {
                    return Outcome<Worked<decimal>>.Refused(
                        $"that is a winding at {Figures.Text(endRoomCelsius + kelvin, 4)} degrees, expected {Figures.Text(Coldest)} to "
                            + $"{Figures.Text(Hottest)}: the two readings are not of one whole winding"
                    );
                }

                string working =
                    $"({Figures.Text(hotOhms)} - {Figures.Text(coldOhms)}) / {Figures.Text(coldOhms)} x (234.5 + "
                    + $"{Figures.Text(startCelsius)}) - ({Figures.Text(endRoomCelsius)} - {Figures.Text(startCelsius)}) = "
                    + $"{Figures.Text(kelvin, 4)} K";
                return Outcome<Worked<decimal>>.From(
                    new Worked<decimal>(kelvin, working, Standard) { Remarks = ["copper; an aluminium winding has 225 for 234.5"] }
                );
            });
}
