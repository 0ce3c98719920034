namespace Ohmstead.Electronics.Life;

/// <summary>When the life of a part may be used up: two dates with the truth, perhaps, between them.</summary>
/// <param name="Earliest">With the hottest and longest use expected.</param>
/// <param name="Latest">With the coolest and shortest use expected.</param>
/// <param name="Arithmetic">The working.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record RemainingLife(DateOnly Earliest, DateOnly Latest, LazyText Arithmetic, Source Source)
{
    /// <summary>The words that go with every such date.</summary>
    public const string NoPromise = "an estimate, not a promise";

    /// <summary>What such a date means.</summary>
    public const string Meaning = "After these dates a part may have drifted past its end-of-life limits: measure it, no date is a verdict";

    private const double DaysPerYear = 365.25;
    private const int CapYears = 15;
    private const string CapRemark = "counted for 15 years at most: seals age whether the part works or not";

    /// <summary>Where the rule behind the latest date comes from, when it is another one; else null.</summary>
    public Source? OtherSource { get; init; }

    /// <summary>The limits of the rule that were passed, one line each.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>The interval in words: "between 2031-04-01 and 2038-01-15, an estimate, not a promise".</summary>
    public string Text => $"between {IsoDate.Text(Earliest)} and {IsoDate.Text(Latest)}, {NoPromise}";

    /// <summary>
    /// The remaining life of a part: what its data sheet promises at the temperature of use, capped at 15 years, less the hours already
    /// spent, counted at that temperature.
    /// </summary>
    /// <param name="ratedHours">The data sheet's life, or null when it is not known; then there is no date, only the measured
    /// state.</param>
    /// <param name="ratedCelsius">The temperature it holds at.</param>
    /// <param name="used">The hours spent so far.</param>
    /// <param name="expected">The use to come.</param>
    /// <param name="asOf">The day the question is asked.</param>
    public static Outcome<RemainingLife> Estimate(
        double? ratedHours,
        double ratedCelsius,
        IReadOnlyList<DutyPhase> used,
        ExpectedUse expected,
        DateOnly asOf
    )
    {
        if (ratedHours is not { } rated)
        {
            return Outcome<RemainingLife>.Refused("no data-sheet life; measured state only");
        }

        return expected
            .Check()
            .Flatten(() =>
            {
                if (
                    !Years(rated, ratedCelsius, used, expected.CelsiusHigh, expected.HoursPerYearHigh)
                        .Is(out Span? early, out string? reason)
                    || !Years(rated, ratedCelsius, used, expected.CelsiusLow, expected.HoursPerYearLow).Is(out Span? late, out reason)
                )
                {
                    return Outcome<RemainingLife>.Refused(reason);
                }

                return Outcome<RemainingLife>.From(
                    new RemainingLife(
                        After(asOf, early.Years),
                        After(asOf, late.Years),
                        new(() => $"{early.Working}; {late.Working}"),
                        TenKelvinRule.Source
                    )
                    {
                        Remarks = [.. early.Remarks.Concat(late.Remarks).Distinct(StringComparer.Ordinal)],
                    }
                );
            });
    }

    /// <summary>
    /// The dates that two estimates of the whole life give for a part of which only the first day is known, when it runs so many hours a
    /// year; never more than 15 years after that day.
    /// </summary>
    /// <param name="shortest">The shorter estimate; it is counted from the first day that can be meant.</param>
    /// <param name="longest">The longer estimate; it is counted from the last day that can be meant.</param>
    /// <param name="hoursPerYear">Hours of running a year.</param>
    /// <param name="firstDay">The first day on which the part can have begun.</param>
    /// <param name="lastDay">The last day on which it can have begun; the same when the day is known.</param>
    public static Outcome<RemainingLife> Between(
        LifeEstimate shortest,
        LifeEstimate longest,
        double hoursPerYear,
        DateOnly firstDay,
        DateOnly lastDay
    ) =>
        Domain
            .Require(
                Domain.Within("hours a year", hoursPerYear, 0.1, 8784),
                Domain.That(firstDay <= lastDay, "the first day is after the last one"),
                Domain.That(shortest.ComputedHours <= longest.ComputedHours, "the shorter estimate is the longer one")
            )
            .Compute(() =>
            {
                (double early, double late) = (YearsOf(shortest, hoursPerYear), YearsOf(longest, hoursPerYear));
                return new RemainingLife(
                    After(firstDay, early),
                    After(lastDay, late),
                    new(() => $"{Line(shortest, hoursPerYear, firstDay, early)}; {Line(longest, hoursPerYear, lastDay, late)}"),
                    shortest.Source
                )
                {
                    OtherSource = longest.Source == shortest.Source ? null : longest.Source,
                    Remarks = RemarksOn(shortest, longest, isCapped: early >= CapYears || late >= CapYears),
                };
            });

    private static double YearsOf(LifeEstimate life, double hoursPerYear) => Math.Min(life.Hours / hoursPerYear, CapYears);

    private static string Line(LifeEstimate life, double hoursPerYear, DateOnly from, double years) =>
        $"{life.Model}: {life.Arithmetic}, at {Figures.Text(hoursPerYear)} h a year {Figures.Text(years, 3)} "
        + $"years{(years < CapYears ? "" : " at most")} from {IsoDate.Text(from)}";

    private static Outcome<Span> Years(
        double rated,
        double ratedCelsius,
        IReadOnlyList<DutyPhase> used,
        double celsius,
        double hoursPerYear
    )
    {
        if (
            !TenKelvinRule.Hours(rated, ratedCelsius, celsius).Is(out LifeEstimate? life, out string? reason)
            || !TenKelvinRule.EquivalentHours(used, celsius).Is(out double spent, out reason)
        )
        {
            return Outcome<Span>.Refused(reason);
        }

        double hours = Math.Max(0, life.Hours - spent);
        double years = Math.Min(hours / hoursPerYear, CapYears);
        string working =
            $"at {Figures.Text(celsius)} degrees {Figures.Text(life.Hours)} h less {Figures.Text(spent)} h used, "
            + $"{Figures.Text(hoursPerYear)} h a year: {Figures.Text(years, 3)} years";
        IEnumerable<string> capped = life.IsCapped || hours / hoursPerYear > CapYears ? [CapRemark] : [];
        return Outcome<Span>.From(new Span(years, working, [.. life.Remarks, .. capped]));
    }

    // Most estimates have none.
    private static IReadOnlyList<string> RemarksOn(LifeEstimate shortest, LifeEstimate longest, bool isCapped)
    {
        if (shortest.Remarks.Count == 0 && longest.Remarks.Count == 0)
        {
            return isCapped ? [CapRemark] : [];
        }

        IEnumerable<string> capped = isCapped ? [CapRemark] : [];
        return [.. shortest.Remarks.Concat(longest.Remarks).Concat(capped).Distinct(StringComparer.Ordinal)];
    }

    private static DateOnly After(DateOnly asOf, double years)
    {
        int days = (int)Math.Floor(years * DaysPerYear);
        return DateOnly.MaxValue.DayNumber - asOf.DayNumber < days ? DateOnly.MaxValue : asOf.AddDays(days);
    }

    private sealed record Span(double Years, string Working, IReadOnlyList<string> Remarks);
}

/// <summary>The use that is expected of a part, as ranges: nobody knows it to a figure.</summary>
/// <param name="HoursPerYearLow">The least hours a year.</param>
/// <param name="HoursPerYearHigh">The most hours a year.</param>
/// <param name="CelsiusLow">The coolest the part will usually be.</param>
/// <param name="CelsiusHigh">The hottest the part will usually be.</param>
public sealed record ExpectedUse(double HoursPerYearLow, double HoursPerYearHigh, double CelsiusLow, double CelsiusHigh)
{
    internal Domain Check() =>
        Domain.Require(
            Domain.Within("least hours a year", HoursPerYearLow, 0.1, 8784),
            Domain.Within("most hours a year", HoursPerYearHigh, 0.1, 8784),
            Domain.That(HoursPerYearLow <= HoursPerYearHigh, "the least hours a year are more than the most"),
            Domain.That(CelsiusLow <= CelsiusHigh, "the coolest temperature is above the hottest")
        );
}
