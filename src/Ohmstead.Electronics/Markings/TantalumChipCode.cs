using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The print of tantalum chips: a letter for the rated voltage and three digits for the value in picofarad.</summary>
/// <remarks>
/// e 2.5, G 4, J 6.3, A 10, C 16, D 20, E 25, V 35, T or H 50 V. G106 is 10 µF 4 V. Lists with B for 16 V and C for 20 V go about and are
/// wrong. Source:
/// makers' code, from memory. The bar is the positive end; a polarity taken from a marking alone is to be confirmed before power.
/// </remarks>
public static class TantalumChipCode
{
    private const int Length = 4;
    private static readonly Source Source = Source.FromMemory("tantalum chip code of makers");

    /// <summary>Reads a print: a letter and three digits, the last from 4 to 8.</summary>
    public static Parsed<Marking<MarkedValue>> Parse(ReadOnlySpan<char> text)
    {
        // Below 100 nF and above 1000 µF no tantalum chip is made.
        if (
            text.Length != Length
            || Volts(text[0]) is not { } volts
            || text[3] is < '4' or > '7'
            || !DigitCode.Parse(text[1..]).Is(out var code, out _)
        )
            return Marking<MarkedValue>.Failed(
                text,
                $"'{Excerpt.From(text)}' is no print of a tantalum chip, expected a letter and three digits such as G106"
            );
        var read = code.Readings[0];
        var rated = new Quantity(volts, Dimension.Voltage);
        return Marking<MarkedValue>.Read(
            new MarkingReading<MarkedValue>(
                read.Value with
                {
                    RatedVoltage = rated,
                },
                $"{text[0]} is {QuantityText.Format(rated)}; {read.Rule}",
                Source
            )
        );
    }

    private static decimal? Volts(char letter) =>
        letter switch
        {
            'e' => 2.5m,
            'G' => 4m,
            'J' => 6.3m,
            'A' => 10m,
            'C' => 16m,
            'D' => 20m,
            'E' => 25m,
            'V' => 35m,
            'T' or 'H' => 50m,
            _ => null,
        };
}
