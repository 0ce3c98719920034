using System.Globalization;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Meters;

/// <summary>A figure as a meter sends it: NR1, NR2 or NR3 of IEEE 488.2, with the figures that SCPI-99 gives to what is none.</summary>
internal static class MeterFigure
{
    // SCPI-99, volume 1, 7.2.1: infinity is sent as 9.9E37 and not-a-number as 9.91E37.
    private const double Infinite = 9.9e37;

    /// <summary>Whether a text is beyond the range, or no number.</summary>
    public static bool IsOverload(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var figure)
        && (!double.IsFinite(figure) || Math.Abs(figure) >= Infinite);

    /// <summary>The figure; null where the text is none, or one of more digits or of a larger power than any meter has.</summary>
    public static decimal? Parse(string text) =>
        text.Length is > 0 and <= 40
        && text.All(one => char.IsAsciiDigit(one) || one is '+' or '-' or '.' or 'e' or 'E')
        && !IsOverload(text)
        && decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var figure)
        && !IsRounded(text, figure)
            ? figure
            : null;

    /// <summary>The figure with a unit as a record has it, or null where the unit is none of that dimension.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="dimension">What it is to be.</param>
    public static Quantity? With(decimal figure, string unit, Dimension dimension)
    {
        if (unit.Length == 0)
        {
            return dimension is Dimension.Ratio or Dimension.Number ? new Quantity(figure, dimension) : null;
        }

        // One of the unit is what the figure is a multiple of.
        return QuantityText.Parse($"1 {unit}", dimension).Is(out var one, out _) ? Multiple(one, figure) : null;
    }

    private static Quantity? Multiple(Quantity one, decimal figure)
    {
        try
        {
            return new Quantity(one.Value * figure, one.Dimension);
        }
        catch (OverflowException)
        {
            return null;
        }
    }

    // What is smaller than a decimal can hold becomes zero without a word.
    private static bool IsRounded(string text, decimal figure) =>
        figure == 0m && text.TakeWhile(one => one is not ('e' or 'E')).Any(one => one is >= '1' and <= '9');
}
