using Ohmstead.Electronics;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Families.Statistics;

/// <summary>A Weibull life that is known well enough to be told, with 95 % intervals.</summary>
/// <param name="Fit">The fit.</param>
/// <param name="Shape">The interval of the shape.</param>
/// <param name="Scale">The interval of the scale, in years.</param>
public sealed record WeibullLife(WeibullFit Fit, ConfidenceInterval Shape, ConfidenceInterval Scale)
{
    // An interval this wide says that the figures do not know. Common practice.
    private const double WidestFactor = 10;

    internal static Outcome<WeibullLife> From(IReadOnlyList<LikeItems> parts, int distinctFailures)
    {
        if (distinctFailures < AgesAtFailure.FewestFailures)
        {
            return Outcome<WeibullLife>.Refused(
                AgesAtFailure.TooFew(
                    distinctFailures,
                    distinctFailures == 1 ? "distinct age at failure" : "distinct ages at failure",
                    AgesAtFailure.FewestFailures
                )
            );
        }

        if (!WeibullFit.OfCounted(parts).Is(out var fit, out var refusal))
        {
            return Outcome<WeibullLife>.Refused($"cannot be told: these ages fit no such law ({refusal})");
        }

        return
            fit.ShapeInterval().Is(out var shape, out _) && fit.ScaleInterval().Is(out var scale, out _) && IsTold(shape) && IsTold(scale)
            ? Outcome<WeibullLife>.From(new(fit, shape, scale))
            : Outcome<WeibullLife>.Refused("too few to say: the ages fit lives that differ by more than a factor of ten");
    }

    private static bool IsTold(ConfidenceInterval interval) =>
        double.IsFinite(interval.High) && interval.Low > 0 && interval.High / interval.Low <= WidestFactor;
}
