using Ohmstead.Assessment.Families.Statistics;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Tests.Families.Statistics;

/// <summary>What looks at a part say about its age at failure.</summary>
public sealed class ObservedLifeTests
{
    private static readonly DateOnly Middle1980 = new(1980, 7, 1);

    // From the middle of 1980 to the spring of 2020 it is 39.7 years, to the spring of 2024 43.7: 40 and 44 in whole years.
    [Fact]
    public void Found_bad_at_the_first_look_it_failed_at_some_earlier_age() =>
        Assert.Equal(LifeObservation.FoundBadAt(40), Original(new(2020, 3, 14), null, new(2020, 3, 14)).Observation());

    [Fact]
    public void Good_at_the_last_look_it_fails_at_some_later_age() =>
        Assert.Equal(LifeObservation.GoodAt(44), Original(new(2020, 3, 14), new(2024, 3, 14), null).Observation());

    [Fact]
    public void Good_once_and_bad_later_it_failed_in_between() =>
        Assert.Equal(LifeObservation.Between(40, 44), Original(new(2020, 3, 14), new(2020, 3, 14), new(2024, 3, 14)).Observation());

    // Both looks are at 40 years.
    [Fact]
    public void Two_looks_at_an_original_of_one_age_leave_a_year_between_them() =>
        Assert.Equal(LifeObservation.Between(39, 40), Original(new(2020, 3, 14), new(2020, 3, 14), new(2020, 8, 1)).Observation());

    // 2026-03-14 to 2026-09-19 is 189 days: 189 / 365.25 of a year.
    [Fact]
    public void A_part_fitted_on_a_known_day_has_an_exact_age()
    {
        var fitted = new DateOnly(2026, 3, 14);
        Assert.Equal(LifeObservation.GoodAt(189 / 365.25), new ObservedLife(fitted, false, fitted, new(2026, 9, 19), null).Observation());
    }

    // Good on the tenth day, bad on the twelfth: it failed after 10 days and by 12, not "by 0.1 years".
    [Fact]
    public void Two_looks_two_days_apart_say_so()
    {
        var fitted = new DateOnly(2026, 3, 14);
        Assert.Equal(
            LifeObservation.Between(10 / 365.25, 12 / 365.25),
            new ObservedLife(fitted, false, fitted, new(2026, 3, 24), new(2026, 3, 26)).Observation()
        );
        Assert.Equal("after 10 days and by 12 days", FamilyWords.Range(new FailureMass(10 / 365.25, 12 / 365.25, 1)));
    }

    // Bad on the day on which it was fitted: by the end of that day.
    [Fact]
    public void A_part_that_fails_at_once_failed_within_a_day()
    {
        var fitted = new DateOnly(2026, 3, 14);
        Assert.Equal(LifeObservation.FoundBadAt(1 / 365.25), new ObservedLife(fitted, false, fitted, null, fitted).Observation());
    }

    [Fact]
    public void A_part_only_looked_at_while_new_says_nothing()
    {
        var fitted = new DateOnly(2026, 3, 14);
        Assert.Null(new ObservedLife(fitted, false, fitted, fitted, null).Observation());
    }

    [Fact]
    public void A_part_of_unknown_age_says_nothing() =>
        Assert.Null(new ObservedLife(null, true, new(2020, 3, 14), null, new(2020, 3, 14)).Observation());

    [Fact]
    public void A_part_looked_at_before_it_was_made_says_nothing() =>
        Assert.Null(Original(new(1979, 1, 1), null, new(1979, 1, 1)).Observation());

    private static ObservedLife Original(DateOnly first, DateOnly? good, DateOnly? failed) => new(Middle1980, true, first, good, failed);
}
