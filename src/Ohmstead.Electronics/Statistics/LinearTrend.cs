using MathNet.Numerics.Distributions;

namespace Ohmstead.Electronics.Statistics;

/// <summary>A straight line through dated readings, y = intercept + slope x, by least squares, with what it can and cannot
/// foretell.</summary>
/// <remarks>Readings must be comparable: same instrument, frequency and temperature.</remarks>
public sealed record LinearTrend
{
    private readonly double meanX;
    private readonly double sumSquaresX;
    private readonly double lastX;
    private readonly double span;

    private LinearTrend(IReadOnlyList<TrendPoint> points)
    {
        Count = points.Count;
        meanX = points.Average(p => p.X);
        double meanY = points.Average(p => p.Y);
        sumSquaresX = points.Sum(p => (p.X - meanX) * (p.X - meanX));
        Slope = points.Sum(p => (p.X - meanX) * (p.Y - meanY)) / sumSquaresX;
        Intercept = meanY - (Slope * meanX);
        ResidualSumOfSquares = points.Sum(p => Squared(p.Y - meanY - (Slope * (p.X - meanX))));
        RegressionSumOfSquares = points.Sum(p => Squared(Slope * (p.X - meanX)));
        (lastX, span) = (points.Max(p => p.X), points.Max(p => p.X) - points.Min(p => p.X));
    }

    /// <summary>Where the formulas come from.</summary>
    public static Source Source { get; } =
        Source.FromMemory("JCGM 100:2008; NIST/SEMATECH e-Handbook of Statistical Methods", "H.3; 4.1.4");

    /// <summary>How many readings.</summary>
    public int Count { get; }

    /// <summary>The rise of y for one unit of x.</summary>
    public double Slope { get; }

    /// <summary>The value at x = 0.</summary>
    public double Intercept { get; }

    /// <summary>The sum of squares that the line leaves.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>The sum of squares that the line explains.</summary>
    public double RegressionSumOfSquares { get; }

    /// <summary>The standard deviation of the readings about the line, with n - 2.</summary>
    public double ResidualDeviation => Math.Sqrt(ResidualSumOfSquares / (Count - 2));

    /// <summary>The standard deviation of the slope.</summary>
    public double SlopeDeviation => ResidualDeviation / Math.Sqrt(sumSquaresX);

    /// <summary>The standard deviation of the intercept.</summary>
    public double InterceptDeviation => ResidualDeviation * Math.Sqrt((1.0 / Count) + (meanX * meanX / sumSquaresX));

    /// <summary>The correlation coefficient of intercept and slope.</summary>
    public double CoefficientCorrelation => -meanX / Math.Sqrt((sumSquaresX / Count) + (meanX * meanX));

    /// <summary>The share of the spread that the line explains; 1 when there is no spread at all.</summary>
    public double DeterminationShare =>
        RegressionSumOfSquares + ResidualSumOfSquares is > 0 and var total ? RegressionSumOfSquares / total : 1;

    /// <summary>The line, or a refusal for fewer than three readings or readings all at one x.</summary>
    public static Outcome<LinearTrend> Fit(IReadOnlyList<TrendPoint> points) =>
        Domain
            .Require(
                Domain.That(points.Count >= 3, $"{Figures.Text(points.Count)} readings, expected three or more for a trend"),
                points.Select(p => Domain.Finite("x", p.X) ?? Domain.Finite("y", p.Y)).FirstOrDefault(f => f is not null),
                Domain.That(points.Select(p => p.X).Distinct().Count() > 1, "all readings were taken at one and the same time")
            )
            .Compute(() => new LinearTrend(points));

    /// <summary>The value on the line.</summary>
    public double At(double x) => Intercept + (Slope * x);

    /// <summary>The standard uncertainty of the line itself at x.</summary>
    public double LineDeviation(double x) => ResidualDeviation * Math.Sqrt((1.0 / Count) + (Squared(x - meanX) / sumSquaresX));

    /// <summary>Where a new reading at x is expected, y ± t(n-2) s sqrt(1 + 1/n + (x - mean)²/Sxx).</summary>
    public Outcome<ConfidenceInterval> Prediction(double x, double confidence = 0.95) =>
        Checked(x, confidence)
            .Compute(() =>
            {
                double half = Student(confidence) * PredictionDeviation(x);
                return new ConfidenceInterval(At(x) - half, At(x) + half, confidence);
            });

    /// <summary>Where the line itself is expected at x.</summary>
    public Outcome<ConfidenceInterval> Line(double x, double confidence = 0.95) =>
        Checked(x, confidence)
            .Compute(() =>
            {
                double half = Student(confidence) * LineDeviation(x);
                return new ConfidenceInterval(At(x) - half, At(x) + half, confidence);
            });

    /// <summary>
    /// When a rising quantity may reach an upper limit: the first x, from the last reading on, where the upper prediction limit is on it.
    /// That is the one to report; the line itself gets there later.
    /// </summary>
    public Outcome<Worked<double>> UpperLimitCrossing(double limit, double confidence = 0.95) =>
        Domain
            .Require(Domain.Finite("limit", limit), Domain.Within("confidence", confidence, 0.5, 0.9999))
            .Flatten(() =>
            {
                double t = Student(confidence);
                double Upper(double x) => At(x) + (t * PredictionDeviation(x));
                if (Upper(lastX) >= limit)
                {
                    return Outcome<Worked<double>>.From(Crossed(lastX, limit, "reached already at the last reading"));
                }

                const double MostSpans = 20;
                double far = lastX + (MostSpans * span);
                if (Upper(far) < limit)
                {
                    return Outcome<Worked<double>>.Refused(
                        $"the trend does not reach {Figures.Text(limit)} within {Figures.Text(MostSpans)} times the time observed"
                    );
                }

                double crossing = MathNet.Numerics.RootFinding.Brent.FindRoot(x => Upper(x) - limit, lastX, far, 1e-10 * span, 200);
                return Outcome<Worked<double>>.From(
                    Crossed(crossing, limit, $"the upper prediction limit reaches {Figures.Text(limit)} at {Figures.Text(crossing, 4)}")
                );
            });

    /// <summary>The interval of the slope, slope ± t(n-2) times its standard deviation. When it holds 0, no drift can be told from the
    /// scatter.</summary>
    public Outcome<ConfidenceInterval> SlopeInterval(double confidence = 0.95) =>
        Domain
            .Require(Domain.Within("confidence", confidence, 0.5, 0.9999))
            .Compute(() =>
            {
                double half = Student(confidence) * SlopeDeviation;
                return new ConfidenceInterval(Slope - half, Slope + half, confidence);
            });

    /// <summary>When the line itself reaches a value, or null when it does not move.</summary>
    public double? LineReaches(double value) => Slope == 0 ? null : (value - Intercept) / Slope;

    private Worked<double> Crossed(double x, double limit, string words) =>
        new(x, words, Source)
        {
            Remarks =
            [
                .. LineReaches(limit) is { } line && Slope > 0
                    ? [$"the line itself reaches it at {Figures.Text(line, 4)}"]
                    : Array.Empty<string>(),
                .. x > lastX + span ? ["beyond one more of the time observed: a guess"] : Array.Empty<string>(),
            ],
        };

    private double PredictionDeviation(double x) => ResidualDeviation * Math.Sqrt(1 + (1.0 / Count) + (Squared(x - meanX) / sumSquaresX));

    private double Student(double confidence) => StudentT.InvCDF(0, 1, Count - 2, (1 + confidence) / 2);

    private static Domain Checked(double x, double confidence) =>
        Domain.Require(Domain.Finite("x", x), Domain.Within("confidence", confidence, 0.5, 0.9999));

    private static double Squared(double x) => x * x;
}

/// <summary>A reading at a time.</summary>
/// <param name="X">When, such as years since the first.</param>
/// <param name="Y">The reading.</param>
public sealed record TrendPoint(double X, double Y);
