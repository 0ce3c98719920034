using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>The cold resistance of a whole fuse.</summary>
public static class FuseLimits
{
    private static readonly LazyText Meaning = FuseFigures.Meaning;

    /// <summary>The limit, or null when the rated current is not written.</summary>
    public static Limit? Resistance(IMarkedPart part)
    {
        if (
            part.Current is not { } rated
            || !FuseResistance.Whole(rated.Value.Value).Is(out var whole, out _)
            || !FuseResistance.Blown(rated.Value.Value).Is(out var blown, out _)
        )
        {
            return null;
        }

        return new Limit(
            LimitKind.EndOfLife,
            new Interval(null, new Quantity(whole.Value, Dimension.Resistance)),
            "the type's usual limit (largest voltage drop at the rated current)",
            whole.Arithmetic,
            new(() => whole.Source.Text)
        )
        {
            Explained = (
                new Quantity(blown.Value, Dimension.Resistance),
                new(() => $"leads and contacts may add that much, up to {blown.Arithmetic}: measure it with four wires")
            ),
            Remarks = [Meaning],
        };
    }
}
