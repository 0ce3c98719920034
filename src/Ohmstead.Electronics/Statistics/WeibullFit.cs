using MathNet.Numerics.Distributions;

namespace Ohmstead.Electronics.Statistics;

/// <summary>A Weibull life fitted by maximum likelihood to exact, right-, left- and interval-censored ages.</summary>
/// <param name="Life">The fitted life.</param>
/// <param name="LogLikelihood">The natural logarithm of the likelihood at the fit, densities in the unit of the ages.</param>
/// <param name="LogScaleError">Standard error of ln eta, from the observed Fisher information.</param>
/// <param name="LogShapeError">Standard error of ln beta.</param>
/// <param name="Failures">How many items had failed.</param>
/// <param name="Items">How many items there were.</param>
public sealed record WeibullFit(Weibull Life, double LogLikelihood, double LogScaleError, double LogShapeError, int Failures, int Items)
{
    private const int LeastFailures = 3;
    private const double LargestShape = 10;
    private const double SmallestShape = 0.05;

    /// <summary>Where the method comes from.</summary>
    public static Source Source { get; } = Source.FromMemory("NIST/SEMATECH e-Handbook of Statistical Methods", "8.4.1.2");

    /// <summary>An interval for the shape, exp(ln beta ± z se).</summary>
    public Outcome<ConfidenceInterval> ShapeInterval(double confidence = 0.95) => Interval(Life.Shape, LogShapeError, confidence);

    /// <summary>An interval for the scale, exp(ln eta ± z se).</summary>
    public Outcome<ConfidenceInterval> ScaleInterval(double confidence = 0.95) => Interval(Life.Scale, LogScaleError, confidence);

    /// <summary>
    /// The fit. Refused for fewer than three failures, for a single distinct failure age, for a shape above 10 (the data do not say how
    /// fast they wear, only when) or under 0.05, and when the search does not end.
    /// </summary>
    public static Outcome<WeibullFit> Compute(IReadOnlyList<LifeObservation> observations) => OfCounted(LikeItems.Group(observations));

    /// <summary>The fit to items that are counted already, refused for the same reasons.</summary>
    public static Outcome<WeibullFit> OfCounted(IReadOnlyList<LikeItems> items)
    {
        int failures = items.Where(i => i.Known.By is not null).Sum(i => i.Count);
        return Domain
            .Require(
                Domain.That(failures > 0, "no failure was seen: use the upper limit for no failures instead"),
                Domain.That(failures >= LeastFailures, $"{Figures.Text(failures)} failures, expected three or more"),
                Domain.That(
                    items.Where(i => i.Known.By is not null).Select(i => i.Known).Distinct().Count() > 1,
                    "all failures have one and the same age"
                ),
                items.Select(i => i.Known.Fault).FirstOrDefault(f => f is not null)
            )
            .Flatten(() =>
                WeibullLikelihood.Maximise(items) is { } found
                    ? Accept(found, failures, items.Sum(i => i.Count))
                    : Outcome<WeibullFit>.Refused("the likelihood has no maximum that can be found")
            );
    }

    private static Outcome<WeibullFit> Accept(WeibullLikelihood.Maximum found, int failures, int items) =>
        found.Shape switch
        {
            > LargestShape => Outcome<WeibullFit>.Refused(
                $"the shape comes to {Figures.Text(found.Shape, 3)}, expected at most 10: the failures lie too close together for a "
                    + "Weibull life"
            ),
            < SmallestShape => Outcome<WeibullFit>.Refused($"the shape comes to {Figures.Text(found.Shape, 3)}, expected at least 0.05"),
            _ => Outcome<WeibullFit>.From(
                new WeibullFit(
                    new Weibull(found.Shape, found.Scale),
                    found.LogLikelihood,
                    found.LogScaleError,
                    found.LogShapeError,
                    failures,
                    items
                )
            ),
        };

    private static Outcome<ConfidenceInterval> Interval(double value, double error, double confidence) =>
        Domain
            .Require(Domain.Within("confidence", confidence, 0.5, 0.9999))
            .Compute(() =>
            {
                double factor = Math.Exp(Normal.InvCDF(0, 1, (1 + confidence) / 2) * error);
                return new ConfidenceInterval(value / factor, value * factor, confidence);
            });
}
