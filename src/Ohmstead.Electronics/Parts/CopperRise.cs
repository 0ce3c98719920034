namespace Ohmstead.Electronics.Parts;

/// <summary>How hot a copper winding got, from its resistance cold and hot.</summary>
public static class CopperRise
{
    private const decimal CopperConstant = 234.5m;

    private static readonly Source Standard = Source.FromMemory("IEC 60335-1; IEC 61558", "clause 11; winding temperature by resistance");

    /// <summary>The rise above the surroundings, (R2 - R1)/R1 (234.5 + T1) - (T2 - T1), in kelvin.</summary>
    /// <param name="coldOhms">Resistance R1 at the start.</param>
    /// <param name="hotOhms">Resistance R2 at the end, read at once after switching off.</param>
    /// <param name="startCelsius">Temperature T1 of winding and room at the start.</param>
    /// <param name="endRoomCelsius">Temperature T2 of the room at the end.</param>
    public static Outcome<Worked<decimal>> Kelvin(decimal coldOhms, decimal hotOhms, decimal startCelsius, decimal endRoomCelsius) =>
        Domain.Of(Domain.Positive("cold resistance", coldOhms), Domain.Positive("hot resistance", hotOhms)).Compute(() =>
        {
            decimal kelvin = ((hotOhms - coldOhms) / coldOhms * (CopperConstant + startCelsius)) - (endRoomCelsius - startCelsius);
            string working = $"({Figures.Text(hotOhms)} - {Figures.Text(coldOhms)}) / {Figures.Text(coldOhms)} x (234.5 + {Figures.Text(startCelsius)}) - ({Figures.Text(endRoomCelsius)} - {Figures.Text(startCelsius)}) = {Figures.Text(kelvin, 4)} K";
            return new Worked<decimal>(kelvin, working, Standard);
        });
}
