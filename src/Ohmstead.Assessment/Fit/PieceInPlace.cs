using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Limits;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>
/// Whether what was read of the very piece is what its place asks for, whatever its own mark allows: a part of ±80 % is inside that with a
/// quarter of its value.
/// </summary>
/// <remarks>No role of a capacitor stands less than 0.8 of the value of its place (common practice; see the rules of value), and where the
/// circuit's own limits are written they hold.</remarks>
internal static class PieceInPlace
{
    private const decimal LeastShare = 0.8m;

    /// <summary>Why the piece is not what the place asks for, or null.</summary>
    /// <param name="place">The place.</param>
    /// <param name="by">The reading that measured the piece.</param>
    internal static string? Off(PlaceHistory place, AssessedReading by)
    {
        var part = place.Part.Values;
        if (part.Kind.Value.MainQuantity is not { } main)
        {
            return null;
        }

        foreach (var value in by.Reading.Values)
        {
            if (value.Measured == main && value.Exact is { } read)
            {
                return Off(part, read, value.Value.Text);
            }
        }

        return null;
    }

    private static string? Off(PartValues part, Quantity read, string text)
    {
        if (part.Low is { } low && low.Value.Dimension == read.Dimension)
        {
            if (read.Value < low.Value.Value)
            {
                return $"the piece reads {text}, and the circuit needs {low.Text}";
            }
        }
        else if (
            part.Kind.Value.Family == PartFamily.Capacitor
            && part.Capacitance is { } mark
            && Least(part, mark.Value) is var least
            && read.Value < least.Value
        )
        {
            return $"the piece reads {text}, and its place has {mark.Text}, at least {QuantityText.Format(least, 4)}";
        }

        if (part.High is { } high && high.Value.Dimension == read.Dimension && read.Value > high.Value.Value)
        {
            return $"the piece reads {text}, and the circuit stands {high.Text}";
        }

        return
            PartKind.IsSuppressor(part)
            && part is { Capacitance: { } of, Tolerance: { } tolerance }
            && tolerance.Value.Apply(of.Value).Upper is { } most
            && read.Value > most.Value
            ? $"the piece reads {text}, and its place has {of.Text}, at most {QuantityText.Format(most, 4)}"
            : null;
    }

    // A place of a wide tolerance stands what its mark allows.
    private static Quantity Least(PartValues part, Quantity mark)
    {
        var share = mark with { Value = mark.Value * LeastShare };
        return EsrLimits.LeastCapacitance(part) is { } marked && marked.Value < share.Value ? marked : share;
    }
}
