using CsCheck;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Electronics.Tests.Statistics;

public sealed class WeibullFitTests
{
    // NIST/SEMATECH e-Handbook 8.4.1 (data and fit from memory); likelihood, errors and quantiles by R survival 3.5 (survreg).
    [Fact]
    [Trait("CheckValue", "CV56")]
    public void Twenty_units_on_test_give_the_published_fit()
    {
        WeibullFit fit = WeibullFit.Compute(Samples.TwentyUnits).Value;
        Assert.Equal(1.7208, fit.Life.Shape, 5e-4);
        Assert.Equal(606.528, fit.Life.Scale, 5e-3);
        Assert.Equal(-75.1346, fit.LogLikelihood, 5e-5);
        Assert.Equal(0.2918, fit.LogShapeError, 5e-5);
        Assert.Equal(0.2059, fit.LogScaleError, 5e-5);
        Assert.Equal(164.02, fit.Life.AgeAt(0.10).Value, 5e-3);
        Assert.Equal(0.4881, fit.Life.Survival(500), 5e-5);
        Assert.Equal(540.74, fit.Life.Mean, 5e-3);
    }

    // Lieblein and Zelen 1956 and Lawless (bearings); Kececioglu's six units; Cox and Oakes 1984 (remission); all from memory.
    [Fact]
    [Trait("CheckValue", "CV57")]
    public void Bearings_and_six_units_give_the_published_fits()
    {
        Weibull bearings = WeibullFit.Compute(Samples.Bearings).Value.Life;
        Assert.Equal(2.1018, bearings.Shape, 5e-4);
        Assert.Equal(81.875, bearings.Scale, 1e-3);
        Assert.Equal(28.07, bearings.AgeAt(0.10).Value, 5e-3);

        Weibull six = WeibullFit.Compute(Samples.Observed(16, 34, 53, 75, 93, 120)).Value.Life;
        Assert.Equal(1.9327, six.Shape, 5e-4);
        Assert.Equal(73.526, six.Scale, 1e-3);

        Weibull remission = WeibullFit.Compute(Samples.Observed(Samples.Mercaptopurine)).Value.Life;
        Assert.Equal(1.3537, remission.Shape, 5e-4);
        Assert.Equal(33.765, remission.Scale, 1e-3);
    }

    // beta 3, eta 45 years, from 30 to 40 years: 0.3337, by hand calculator.
    [Fact]
    public void A_part_good_at_thirty_may_fail_before_forty() => Assert.Equal(0.3337, new Weibull(3, 45).FailsBetween(30, 40).Value, 5e-5);

    // An interval as narrow as the clock's tick says the same as an exact age.
    [Fact]
    public void Narrow_intervals_give_the_fit_of_exact_ages()
    {
        LifeObservation[] narrow =
        [
            .. Samples.TwentyUnits.Select(o => o.By is { } by ? LifeObservation.Between(by - 0.005, by + 0.005) : o),
        ];
        Weibull fit = WeibullFit.Compute(narrow).Value.Life;
        Assert.Equal(1.7208, fit.Shape, 5e-4);
        Assert.Equal(606.528, fit.Scale, 5e-2);
    }

    // The twenty units of NIST 8.4.1.2 again, those that ran on told as one line.
    [Fact]
    public void Items_that_are_counted_already_give_the_same_fit()
    {
        WeibullFit fit = WeibullFit
            .OfCounted([
                .. Samples.TwentyUnits.Where(o => o.By is not null).Select(o => new LikeItems(o, 1)),
                new(LifeObservation.GoodAt(500), 10),
            ])
            .Value;
        Assert.Equal((10, 20), (fit.Failures, fit.Items));
        Assert.Equal(1.7208, fit.Life.Shape, 5e-4);
        Assert.Equal(606.528, fit.Life.Scale, 5e-2);
    }

    // Inspections once at 20, 30, 40 and 50 years of 1000 items each that follow shape 3, scale 45, rounded to whole items.
    [Fact]
    public void Single_inspections_of_many_items_give_back_the_life_they_follow()
    {
        Weibull life = new(3, 45);
        LifeObservation[] observations =
        [
            .. new[] { 20, 30, 40, 50 }.SelectMany(age =>
            {
                int bad = (int)Math.Round(1000 * (1 - life.Survival(age)));
                return Enumerable
                    .Repeat(LifeObservation.FoundBadAt(age), bad)
                    .Concat(Enumerable.Repeat(LifeObservation.GoodAt(age), 1000 - bad));
            }),
        ];
        WeibullFit fit = WeibullFit.Compute(observations).Value;
        Assert.Equal(3, fit.Life.Shape, 0.01);
        Assert.Equal(45, fit.Life.Scale, 0.1);
    }

    [Fact]
    public void An_interval_holds_its_estimate_and_widens_with_confidence()
    {
        WeibullFit fit = WeibullFit.Compute(Samples.TwentyUnits).Value;
        ConfidenceInterval usual = fit.ShapeInterval().Value,
            wide = fit.ShapeInterval(0.99).Value;
        Assert.InRange(fit.Life.Shape, usual.Low, usual.High);
        Assert.True(wide.Low < usual.Low && wide.High > usual.High);
    }

    [Fact]
    public void Ages_in_other_units_change_the_scale_and_nothing_else() =>
        Gen.Select(Gen.Double[0.001, 1000], Gen.Int[1, 400].Array[4, 20])
            .Sample(
                (unit, ages) =>
                {
                    LifeObservation[] plain = [.. ages.Select(a => LifeObservation.FailedAt(a))];
                    if (!WeibullFit.Compute(plain).Is(out WeibullFit? fit, out _))
                    {
                        return true;
                    }

                    // A shape on the very edge of what is accepted may fall to either side.
                    return WeibullFit.Compute([.. ages.Select(a => LifeObservation.FailedAt(a * unit))]).Is(out WeibullFit? scaled, out _)
                        ? Math.Abs((scaled.Life.Shape / fit.Life.Shape) - 1) < 1e-5
                            && Math.Abs((scaled.Life.Scale / unit / fit.Life.Scale) - 1) < 1e-5
                        : fit.Life.Shape > 9.999;
                },
                iter: 100
            );

    [Theory]
    [InlineData("no failure was seen: use the upper limit for no failures instead", new double[] { -5, -9 })]
    [InlineData("2 failures, expected three or more", new double[] { 5, 7, -9 })]
    [InlineData("all failures have one and the same age", new double[] { 5, 5, 5, -9 })]
    public void Too_little_to_fit_is_refused(string reason, double[] ages) =>
        Assert.Equal(reason, WeibullFit.Compute(Samples.Observed(ages)).Refusal);

    [Fact]
    public void Failures_too_close_together_are_refused() =>
        Assert.StartsWith(
            "the shape comes to ",
            WeibullFit.Compute(Samples.Observed(100, 101, 102, 103)).Refusal,
            StringComparison.Ordinal
        );
}
