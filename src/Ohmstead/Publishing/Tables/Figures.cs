using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Publishing.Tables;

/// <summary>Quantities as figures in the base unit of what was measured, for whoever computes with them: a point, no exponent, no
/// separators, written from the decimal that the program itself judged by.</summary>
internal static class Figures
{
    // A spreadsheet and whoever reads into 64 bits hold as many: 3.71428571428571 tells a limit that no decimal ends.
    private const int MostDigits = 15;

    // As on the pages: an uncertainty is an estimate, and three digits are one more than it bears (GUM, 7.2.6, from memory).
    private const int DigitsOfUncertainty = 3;

    /// <summary>The unit of the figures of a row.</summary>
    public static Key Unit { get; } = Key.Text("unit", "The unit of the figures of this row, without a prefix.", "F");

    /// <summary>The lower end of the limit.</summary>
    public static Key Low { get; } = Key.Number("low", "The least value inside, in that unit; absent where there is none.", "0.000376");

    /// <summary>The upper end of the limit.</summary>
    public static Key High { get; } =
        Key.Number("high", "The greatest value inside, in that unit; absent where there is none.", "0.000564");

    /// <summary>What is marked.</summary>
    public static Key Marked { get; } = Key.Number("value", "The marked value, in the unit of this row.", "0.00001");

    /// <summary>A value as it was written, to its last digit.</summary>
    public static string? Of(Quantity? quantity) => quantity is { } there ? DecimalText.Format(there.Value) : null;

    /// <summary>An end of a limit.</summary>
    public static string? Limit(Quantity? end) =>
        end is { } there ? DecimalText.Format(DecimalMath.RoundSignificant(there.Value, MostDigits)) : null;

    /// <summary>An expanded uncertainty.</summary>
    public static string? Uncertainty(Quantity? band) =>
        band is { } there ? DecimalText.Format(DecimalMath.RoundSignificant(there.Value, DigitsOfUncertainty)) : null;

    /// <summary>A probability, as it is told everywhere, without the zeros at its end.</summary>
    public static string Probability(double probability) =>
        VerdictWords.Probability(probability).TrimEnd('0').TrimEnd('.') is { Length: > 0 } trimmed ? trimmed : "0";

    /// <summary>The unit of what was measured.</summary>
    public static string? UnitOf(Dimension? dimension) => dimension is { } there ? QuantityText.BaseUnit(there) : null;
}
