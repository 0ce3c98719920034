using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>What the codes of tolerance, temperature coefficient, voltage and dielectric say, printed by themselves.</summary>
internal static class LetterMeanings
{
    internal static IEnumerable<PrintMeaning> Read(string print)
    {
        if (print.Length == 1)
        {
            foreach (
                var (dimension, what, on) in new[]
                {
                    (Dimension.Capacitance, "tolerance letter of a capacitor", PrintedOn.Capacitor),
                    (Dimension.Resistance, "tolerance letter of a resistor", PrintedOn.Resistor),
                }
            )
            {
                foreach (var meaning in ToleranceLetters.Meanings(print[0], dimension))
                {
                    yield return new(what, meaning.Tolerance.ToString(), null, $"letter {print}", meaning.Source) { On = on };
                }
            }
        }

        if (TemperatureCoefficientLetter.Parse(print).Is(out var coefficient, out _))
        {
            yield return new(
                "temperature coefficient letter of a resistor",
                $"±{PrintWords.Millionths(coefficient.Value)}",
                null,
                $"letter {print}",
                Source.Published("IEC 60062")
            )
            {
                On = PrintedOn.Resistor,
            };
        }

        if (VoltageCode.Parse(print).Is(out var volts, out _))
        {
            yield return new(
                "voltage code",
                QuantityText.Format(volts),
                null,
                "the digit is a power of ten, the letter a factor",
                VoltageCode.Source
            )
            {
                On = PrintedOn.Capacitor,
            };
        }

        if (CeramicCode.Parse(print).Is(out var ceramic, out _))
        {
            yield return new(
                "temperature code of a ceramic capacitor",
                PrintWords.Describe(ceramic.Value),
                null,
                ceramic.Rule,
                ceramic.Source
            )
            {
                On = PrintedOn.Ceramic | PrintedOn.Suppression,
            };
        }

        if (FilmDielectric.Parse(print).Is(out var film, out _))
        {
            yield return new(
                "letters of a film or paper capacitor",
                $"{(film.IsMetallised ? "metallised " : string.Empty)}{film.Dielectric}{(film.IsMetallised ? string.Empty : " and foil")}",
                null,
                $"letters {film.Letters}",
                film.Source
            )
            {
                On = PrintedOn.Film | PrintedOn.Suppression,
            };
        }
    }
}
