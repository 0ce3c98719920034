using System.Globalization;
using Ohmstead.Assessment.Drifts;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Statistics;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>The drifts of the parts that sit on a board now.</summary>
public static class BoardDrifts
{
    private const int FewestDays = 3;

    // A line says little beyond one more of the time observed, and nothing beyond two. Common practice.
    private const int SpansAhead = 2;

    // Capacitance and ESR of an electrolytic move little within this. Common practice.
    private const decimal MostKelvin = 5m;

    /// <summary>The drifts, in order of the parts list and of the quantities. Readings in circuit are left out: other parts drift with
    /// them.</summary>
    public static IEnumerable<Drift> Find(BoardHistory board) =>
        board
            .Places.Where(place =>
                place is { IsEmpty: false, Readings.Length: >= FewestDays } && place.Readings.Count(IsComparable) >= FewestDays
            )
            .SelectMany(place => Find(board, place));

    /// <summary>Like readings of what sits in each place now, where they were taken on two days or more: the same quantity, read in the
    /// same way. In order of the parts list and of the quantities.</summary>
    public static IEnumerable<ReadingSeries> SeriesOf(BoardHistory board) =>
        board
            .Places.Where(place => place is { IsEmpty: false, Readings.Length: > 1 } && SpansDays(place))
            .SelectMany(place =>
            {
                var left = WithoutFigure(board, place);
                return ReadAlike(board, place)
                    .Select(alike => new ReadingSeries(
                        place.Part.Ref.Value,
                        alike.Key.Measured,
                        [.. alike.Select(pair => new ReadOnDay(pair.Reading.Visit.Date.Value, pair.Verdict))]
                    )
                    {
                        WithoutFigure = left.GetValueOrDefault(alike.Key),
                    });
            })
            .Where(series => series.Readings[0].Day < series.Readings[^1].Day);

    private static IEnumerable<Drift> Find(BoardHistory board, PlaceHistory place)
    {
        var left = WithoutFigure(board, place);
        return ReadAlike(board, place).Select(alike => Find(place, [.. alike], left.GetValueOrDefault(alike.Key))).OfType<Drift>();
    }

    // A bound is no point of a line: it is left out, and that is said.
    private static Dictionary<DriftConditions, int> WithoutFigure(BoardHistory board, PlaceHistory place)
    {
        var since = place.FittedOn is { } fitted ? OrderOf(board, fitted) : -1;
        var left = new Dictionary<DriftConditions, int>();
        foreach (var reading in place.Readings.Where(reading => IsOfWhatSitsThere(reading, since) && IsComparable(reading)))
        {
            foreach (
                var measured in reading.Verdicts.Where(verdict => verdict.Exact is null).Select(verdict => verdict.Measured).Distinct()
            )
            {
                var alike = DriftConditions.From(reading, measured);
                left[alike] = left.GetValueOrDefault(alike) + 1;
            }
        }

        return left;
    }

    private static IEnumerable<IGrouping<DriftConditions, (AssessedReading Reading, Verdict Verdict)>> ReadAlike(
        BoardHistory board,
        PlaceHistory place
    )
    {
        var since = place.FittedOn is { } fitted ? OrderOf(board, fitted) : -1;
        return place
            .Readings.Where(reading => IsOfWhatSitsThere(reading, since) && IsComparable(reading))
            .SelectMany(reading =>
                reading.Verdicts.Where(verdict => verdict.Exact is not null).Select(verdict => (Reading: reading, Verdict: verdict))
            )
            .GroupBy(pair => DriftConditions.From(pair.Reading, pair.Verdict.Measured))
            .OrderBy(alike => alike.Key.Measured);
    }

    // Visits are in order of time, and most parts were read on one day only.
    private static bool SpansDays(PlaceHistory place)
    {
        DateOnly? first = null;
        foreach (var reading in place.Readings)
        {
            if (IsComparable(reading))
            {
                first ??= reading.Visit.Date.Value;
                if (reading.Visit.Date.Value != first)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static bool IsComparable(AssessedReading reading) => !reading.IsNew && reading.Reading.Circuit is not { Value: Circuit.In };

    private static bool IsOfWhatSitsThere(AssessedReading reading, int since) =>
        !reading.IsNew
        && reading.EmptiedOn is null
        && (reading.VisitOrder > since || (reading.VisitOrder == since && reading.Reading.State is { Value: ReadingState.AsLeft }));

    private static int OrderOf(BoardHistory board, BenchVisit visit)
    {
        for (var order = 0; order < board.Visits.Length; order++)
        {
            if (ReferenceEquals(board.Visits[order], visit))
            {
                return order;
            }
        }

        return -1;
    }

    private static Drift? Find(PlaceHistory place, (AssessedReading Reading, Verdict Verdict)[] all, int withoutFigure)
    {
        var (lastReading, lastVerdict) = all[^1];
        var warmth = DriftConditions.TemperatureOf(lastReading);
        var alike = all.Where(pair =>
                warmth is not { } last || DriftConditions.TemperatureOf(pair.Reading) is not { } own || Math.Abs(own - last) <= MostKelvin
            )
            .ToArray();
        if (alike.Select(pair => pair.Reading.Visit.Date.Value).Distinct().Count() < FewestDays)
        {
            return null;
        }

        var first = alike[0].Reading.Visit.Date.Value;
        TrendPoint[] points =
        [
            .. alike.Select(pair => new TrendPoint(
                Drift.YearsBetween(first, pair.Reading.Visit.Date.Value),
                (double)pair.Verdict.Exact!.Value.Value
            )),
        ];
        if (!LinearTrend.Fit(points).Is(out var trend, out _))
        {
            return null;
        }

        var limits = lastVerdict.Limit?.Interval;
        var limit =
            trend.Slope > 0 ? limits?.Upper
            : trend.Slope < 0 ? limits?.Lower
            : null;
        var drift = new Drift(
            place.Part.Ref.Value,
            lastVerdict.Measured,
            points.Length,
            first,
            lastReading.Visit.Date.Value,
            lastReading.Reading.Spot,
            trend,
            lastVerdict.Reading.Value.Dimension
        )
        {
            Limit = limit,
            IsOutside = lastVerdict.Outcome == VerdictOutcome.Outside,
            Remarks = [.. Remarks(all, alike), .. withoutFigure == 0 ? [] : new[] { LeftOut(withoutFigure) }],
        };
        return drift with { MeetsLimit = Meets(drift, points) };
    }

    /// <summary>What is said of readings that gave no figure.</summary>
    public static string LeftOut(int readings) =>
        readings == 1
            ? "one more reading gave no figure and is left out"
            : string.Create(CultureInfo.InvariantCulture, $"{readings} more readings gave no figure and are left out");

    private static IEnumerable<string> Remarks(
        (AssessedReading Reading, Verdict Verdict)[] all,
        (AssessedReading Reading, Verdict Verdict)[] alike
    )
    {
        if (alike.Length < all.Length)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"readings more than {MostKelvin} K warmer or colder than the last one are left out"
            );
        }

        if (alike.Any(pair => DriftConditions.TemperatureOf(pair.Reading) is null))
        {
            yield return "the temperature is not written for all readings";
        }

        if (alike.Any(pair => (pair.Reading.Reading.Instrument ?? pair.Reading.Visit.Instrument) is null))
        {
            yield return "the instrument is not written: that it was the same one is not known";
        }
    }

    private static Outcome<DateOnly> Meets(Drift drift, TrendPoint[] points)
    {
        if (!drift.IsTold)
        {
            return Outcome<DateOnly>.Refused("no drift can be told from the scatter of the readings");
        }

        if (drift.Limit is not { } limit)
        {
            return Outcome<DateOnly>.Refused("no limit is known on that side");
        }

        // The rule is for a rising quantity and an upper limit; a falling one is its mirror image.
        var crossing = drift.IsRising
            ? drift.Trend.UpperLimitCrossing((double)limit.Value, Drift.Confidence)
            : LinearTrend
                .Fit([.. points.Select(point => point with { Y = -point.Y })])
                .Value.UpperLimitCrossing(-(double)limit.Value, Drift.Confidence);
        var far = drift.DayAt((1 + SpansAhead) * drift.YearsTo(drift.Last)) ?? DateOnly.MaxValue;
        return crossing.Is(out var years, out _) && drift.DayAt(years.Value) is { } day && day <= far
            ? Outcome<DateOnly>.From(day)
            : Outcome<DateOnly>.Refused(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"does not meet {VerdictWords.Short(limit)} before {far:yyyy-MM-dd}; further ahead these readings say nothing"
                )
            );
    }
}
