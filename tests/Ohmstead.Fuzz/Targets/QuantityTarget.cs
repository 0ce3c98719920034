using System.Text;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Fuzz.Targets;

/// <summary>Quantities, tolerances and what a meter showed. What was read, written out and read again is the same.</summary>
internal static class QuantityTarget
{
    private static readonly Dimension[] Dimensions = Enum.GetValues<Dimension>();

    public static void Try(byte[] input)
    {
        var text = Encoding.UTF8.GetString(input);
        foreach (var dimension in Dimensions)
        {
            if (QuantityText.Parse(text, dimension).Is(out var quantity, out _))
            {
                var written = QuantityText.Format(quantity);
                FaultFoundException.Unless(
                    QuantityText.Parse(written, dimension).Is(out var again, out _) && again == quantity,
                    $"'{written}' is not read as '{text}'"
                );
            }

            _ = IndicationText.Parse(text, dimension);
            _ = Tolerance.Parse(text, dimension);
        }
    }
}
