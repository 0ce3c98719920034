using System.Globalization;
using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Reckoning.Statistics;

/// <summary>A line through dated readings.</summary>
internal static class TrendRule
{
    private static readonly ReckonInput Readings = ReckonInput.List("readings", "time:value, all in one unit each");
    private static readonly ReckonInput At = ReckonInput
        .Create("at", Dimension.Number, "a time, to be told what a reading then will be")
        .Optional();
    private static readonly ReckonInput Limit = ReckonInput
        .Create("limit", Dimension.Number, "an upper limit, to be told when it may be reached")
        .Optional();

    internal static ReckonRule Rule { get; } =
        new(
            "trend",
            "the drift of readings over time, what is to come and when an upper limit may be reached",
            [Readings, At, Limit, SharedInputs.Confidence],
            "readings=0:0.20,1:0.21,2:0.23,3:0.24,4:0.27 at=6 limit=0.42",
            given =>
                Read(given.List(Readings)).Is(out var points, out var reason)
                    ? LinearTrend.Fit(points).Is(out var line, out reason)
                        ? Work(line, given)
                        : Outcome<Reckoned>.Refused(reason)
                    : Outcome<Reckoned>.Refused(reason)
        )
        {
            Formula = "least squares; y ± t s sqrt(1 + 1/n + (x - mean)² / Sxx)",
            Validity = "readings that compare: same instrument, frequency and temperature; three or more",
        };

    private static Outcome<Reckoned> Work(LinearTrend line, GivenInputs given)
    {
        var (source, confidence) = (LinearTrend.Source, given.Double(SharedInputs.Confidence));
        return Answers.All([
            Outcome<ReckonedLine>.From(
                Answers.Figure(
                    "slope",
                    (decimal)line.Slope,
                    ShownAs.Plain,
                    $"standard deviation {Text(line.SlopeDeviation)}, of {Text(line.Count)} readings",
                    source
                )
            ),
            line.SlopeInterval(confidence)
                .Then(found =>
                    Intervals.Line(
                        "slope between",
                        found,
                        ShownAs.Plain,
                        found.Low <= 0 && found.High >= 0 ? "holds 0: no drift can be told from the scatter" : "does not hold 0",
                        source
                    )
                ),
            Outcome<ReckonedLine>.From(
                Answers.Figure(
                    "value at time 0",
                    (decimal)line.Intercept,
                    ShownAs.Plain,
                    $"standard deviation {Text(line.InterceptDeviation)}, correlated with the slope by {Text(line.CoefficientCorrelation)}",
                    source
                )
            ),
            Outcome<ReckonedLine>.From(
                Answers.Figure(
                    "scatter about the line",
                    (decimal)line.ResidualDeviation,
                    ShownAs.Plain,
                    $"the line explains {ShownAs.Percent.Text((decimal)line.DeterminationShare)} of the spread",
                    source
                )
            ),
            .. given.Has(At)
                ?
                [
                    line.Line(given.Double(At), confidence)
                        .Then(found =>
                            Intervals.Line(
                                $"the line itself at {given.Text(At)}",
                                found,
                                ShownAs.Plain,
                                $"{Text(line.At(given.Double(At)))} ± t x {Text(line.LineDeviation(given.Double(At)))}",
                                source
                            )
                        ),
                    line.Prediction(given.Double(At), confidence)
                        .Then(found =>
                            Intervals.Line(
                                $"a reading at {given.Text(At)}",
                                found,
                                ShownAs.Plain,
                                $"about {Text(line.At(given.Double(At)))}",
                                source
                            )
                        ),
                ]
                : Array.Empty<Outcome<ReckonedLine>>(),
            .. given.Has(Limit)
                ?
                [
                    Answers.Line(
                        $"may reach {given.Text(Limit)} at",
                        line.UpperLimitCrossing(given.Double(Limit), confidence),
                        ShownAs.Plain
                    ),
                ]
                : Array.Empty<Outcome<ReckonedLine>>(),
        ]);
    }

    private static Outcome<IReadOnlyList<TrendPoint>> Read(IReadOnlyList<string> entries)
    {
        var points = new List<TrendPoint>(entries.Count);
        foreach (var entry in entries)
        {
            string[] parts = entry.Split(':');
            if (parts.Length != 2 || !Number(parts[0], out var x) || !Number(parts[1], out var y))
            {
                return Outcome<IReadOnlyList<TrendPoint>>.Refused($"'{entry}' is no reading with its time, expected such as 2:0.23");
            }

            points.Add(new TrendPoint(x, y));
        }

        return Outcome<IReadOnlyList<TrendPoint>>.From(points);
    }

    private static bool Number(string text, out double number) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out number)
        && Math.Abs(number) < 1e12;

    private static string Text(double value) => ShownAs.Plain.Text((decimal)value);
}
