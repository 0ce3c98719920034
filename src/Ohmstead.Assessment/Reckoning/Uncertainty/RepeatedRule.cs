using System.Globalization;
using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;

namespace Ohmstead.Assessment.Reckoning.Uncertainty;

/// <summary>Readings taken several times.</summary>
internal static class RepeatedRule
{
    private static readonly ReckonInput Readings = ReckonInput.List("readings", "the readings, as plain numbers");
    private static readonly ReckonInput Second = ReckonInput.List("second", "another quantity read at the same times").Optional();
    private static readonly ReckonInput Times = ReckonInput
        .Create("times", Dimension.Number, "how much the result moves for one unit of the first")
        .Usually("1");
    private static readonly ReckonInput SecondTimes = ReckonInput
        .Create("second-times", Dimension.Number, "how much it moves for one unit of the second")
        .Usually("1");

    internal static ReckonRule Rule { get; } =
        new(
            "repeated",
            "the mean of repeated readings and its standard uncertainty; with a second quantity, how both move together",
            [Readings, Second, Times, SecondTimes],
            "readings=5.007,4.994,5.005,4.990,4.999",
            given =>
                Numbers(given.List(Readings)).Is(out var first, out var reason)
                    ? given.Has(Second)
                        ? Numbers(given.List(Second)).Is(out var second, out reason)
                            ? Both(given, first, second)
                            : Outcome<Reckoned>.Refused(reason)
                        : One(first)
                    : Outcome<Reckoned>.Refused(reason)
        )
        {
            Formula = "s = sqrt(sum (x - mean)² / (n - 1)); u = s / sqrt n; r = cov / (u1 u2)",
            Validity = "two readings or more, taken anew each time",
        };

    private static Source Guide => new("JCGM 100:2008", "4.2.2, 4.2.3, 5.2.3", SourceBasis.Memory);

    private static Outcome<Reckoned> One(IReadOnlyList<double> readings) =>
        StandardUncertainty.Deviation(readings).Is(out var deviation, out var reason)
            ? Answers.All(
                Answers.Line("mean", Outcome<double>.From(readings.Average()), ShownAs.Plain, $"sum / {Text(readings.Count)}", Guide),
                Answers.Line(
                    "standard deviation of one reading",
                    Outcome<double>.From(deviation),
                    ShownAs.Plain,
                    $"sqrt(sum of squares / {Text(readings.Count - 1)})",
                    Guide
                ),
                Answers.Line(
                    "standard uncertainty of the mean",
                    StandardUncertainty.OfMean(readings),
                    ShownAs.Plain,
                    $"{Text(deviation)} / sqrt({Text(readings.Count)})",
                    Guide
                )
            )
            : Outcome<Reckoned>.Refused(reason);

    private static Outcome<Reckoned> Both(GivenInputs given, IReadOnlyList<double> first, IReadOnlyList<double> second)
    {
        if (!RepeatedReadings.Evaluate([first, second]).Is(out var both, out var reason))
        {
            return Outcome<Reckoned>.Refused(reason);
        }

        double[] by = [given.Double(Times), given.Double(SecondTimes)];
        return Answers.All(
            Mean("mean of the first", both, 0),
            Mean("mean of the second", both, 1),
            Answers.Line(
                "correlation",
                Outcome<double>.From(both.CorrelationOf(0, 1)),
                ShownAs.Plain,
                $"{Text(both.CovarianceOfMeans(0, 1))} / (u1 u2)",
                Guide
            ),
            Answers.Line(
                "standard uncertainty of the sum",
                Outcome<double>.From(Math.Sqrt(Math.Max(0, both.Covariance(by, by)))),
                ShownAs.Plain,
                $"of {Text(by[0])} x first + {Text(by[1])} x second, correlation counted",
                Guide
            )
        );
    }

    private static Outcome<ReckonedLine> Mean(string what, RepeatedReadings both, int quantity) =>
        Outcome<ReckonedLine>.From(
            Answers.Figure(
                what,
                (decimal)both.Mean(quantity),
                ShownAs.Plain,
                $"its standard uncertainty {Text(both.UncertaintyOfMean(quantity))}",
                Guide
            )
        );

    private static Outcome<IReadOnlyList<double>> Numbers(IReadOnlyList<string> entries)
    {
        var numbers = new List<double>(entries.Count);
        foreach (var entry in entries)
        {
            if (
                !double.TryParse(
                    entry,
                    NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
                    CultureInfo.InvariantCulture,
                    out var number
                )
                || Math.Abs(number) > 1e12
            )
            {
                return Outcome<IReadOnlyList<double>>.Refused($"'{entry}' is no number, expected such as 4.994");
            }

            numbers.Add(number);
        }

        return Outcome<IReadOnlyList<double>>.From(numbers);
    }

    private static string Text(double value) => ShownAs.Plain.Text((decimal)value);
}
