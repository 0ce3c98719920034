using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Electronics.Tests.Substitution;

/// <summary>
/// A fuse is replaced by one of the same rating, speed and size, not less of breaking capacity and voltage: trade practice.
/// </summary>
public sealed class FuseSubstitutionTests
{
    private static readonly Fuse Place = new()
    {
        RatedAmperes = 1m,
        Speed = FuseSpeed.T,
        Breaking = FuseBreaking.H,
        RatedVolts = 250m,
        Size = FuseSize.FiveByTwenty,
    };

    [Fact]
    public void The_same_fuse_fits() =>
        Assert.All(FuseSubstitution.Judge(Place, Place), reason => Assert.Equal(ReasonWeight.For, reason.Weight));

    [Fact]
    public void Any_other_figure_is_against()
    {
        Assert.Equal(("safety", "1.25 A for 1 A, expected the same"), Against(Place with { RatedAmperes = 1.25m }));
        Assert.Equal(("safety", "0.8 A for 1 A, expected the same"), Against(Place with { RatedAmperes = 0.8m }));
        Assert.Equal(("speed", "F, quick, for T, slow"), Against(Place with { Speed = FuseSpeed.F }));
        Assert.Equal(
            ("breaking capacity", "L, of low breaking capacity, where H stood: it may burst"),
            Against(Place with { Breaking = FuseBreaking.L })
        );
        Assert.Equal(
            ("breaking capacity", "E, of enhanced breaking capacity, where H stood: it may burst"),
            Against(Place with { Breaking = FuseBreaking.E })
        );
        Assert.Equal(("voltage", "125 V is under 250 V"), Against(Place with { RatedVolts = 125m }));
        Assert.Equal(("size", "6.3 x 32 mm where 5 x 20 mm goes in"), Against(Place with { Size = FuseSize.SixByThirtyTwo }));
        Assert.Equal(("safety", "its current is not written, 1 A are asked for"), Against(Place with { RatedAmperes = null }));
    }

    [Fact]
    public void What_is_not_known_is_a_doubt()
    {
        foreach (
            var offer in new[]
            {
                Place with
                {
                    Speed = null,
                },
                Place with
                {
                    Breaking = null,
                },
                Place with
                {
                    RatedVolts = null,
                },
                Place with
                {
                    Size = null,
                },
            }
        )
        {
            Assert.True(Assert.Single(FuseSubstitution.Judge(Place, offer), reason => reason.Weight != ReasonWeight.For).IsMissing);
        }

        Assert.Equal(
            ["speed", "voltage", "size"],
            FuseSubstitution.Judge(new Fuse { RatedAmperes = 1m }, Place).Where(reason => reason.IsMissing).Select(reason => reason.Aspect)
        );
    }

    [Fact]
    public void A_place_of_unknown_current_takes_nothing() =>
        Assert.Contains(FuseSubstitution.Judge(Place with { RatedAmperes = null }, Place), reason => reason.Weight == ReasonWeight.Against);

    // Sheet 5 against sheet 3: 30 min instead of 2 min at 2.1 x the rating.
    [Fact]
    public void A_slow_ceramic_fuse_for_a_slow_glass_one_breaks_more_and_opens_later()
    {
        var doubt = Assert.Single(FuseSubstitution.Judge(Place with { Breaking = FuseBreaking.L }, Place), reason =>
            reason.Weight != ReasonWeight.For
        );
        Assert.Equal(("speed", ReasonWeight.Doubt, false), (doubt.Aspect, doubt.Weight, doubt.IsMissing));
    }

    // A fuse by UL 248-14 opens at 1.35 x its rating within an hour (Littelfuse, Fuseology, p. 12; Eaton GMA data sheet), one by IEC
    // 60127-2 carries 1.5 x for an hour (Schurter FST data sheet, sheet 3): the same figure is not the same fuse.
    [Theory]
    [InlineData(FuseSystem.IEC, FuseSystem.UL, "rated by UL 248-14 for IEC 60127")]
    [InlineData(FuseSystem.UL, FuseSystem.IEC, "rated by IEC 60127 for UL 248-14")]
    public void The_same_figure_by_the_other_standard_is_another_fuse(FuseSystem was, FuseSystem now, string words)
    {
        var place = Place with { Breaking = was == FuseSystem.IEC ? FuseBreaking.L : null, System = was };
        var offer = Place with { Breaking = now == FuseSystem.IEC ? FuseBreaking.L : null, System = now };
        var doubt = Assert.Single(FuseSubstitution.Judge(place, offer), reason => reason.Aspect == "standard");
        Assert.Equal((ReasonWeight.Doubt, false), (doubt.Weight, doubt.IsMissing));
        Assert.StartsWith(words, doubt.Words.Text, StringComparison.Ordinal);
        Assert.Contains("1.35 x", doubt.Words.Text, StringComparison.Ordinal);
        Assert.Contains("1.5 x", doubt.Words.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_standard_that_is_asked_for_and_not_told_is_missing()
    {
        Assert.True(Standard(new Fuse { System = FuseSystem.UL }, new Fuse())!.IsUnwritten);
        Assert.True(Standard(new Fuse(), new Fuse { System = FuseSystem.UL })!.IsMissing);
        Assert.Equal(ReasonWeight.For, Standard(new Fuse { System = FuseSystem.UL }, new Fuse { System = FuseSystem.UL })!.Weight);
        Assert.Null(Standard(new Fuse(), new Fuse()));
    }

    // A letter of breaking capacity is of IEC 60127 alone.
    [Fact]
    public void A_letter_of_breaking_capacity_tells_the_standard()
    {
        Assert.Equal(ReasonWeight.Doubt, Standard(new Fuse { System = FuseSystem.UL }, new Fuse { Breaking = FuseBreaking.L })!.Weight);
        Assert.Equal(ReasonWeight.For, Standard(new Fuse { System = FuseSystem.IEC }, new Fuse { Breaking = FuseBreaking.L })!.Weight);
    }

    // No source at hand has times for these: they are doubted, not remembered.
    [Theory]
    [InlineData(FuseSpeed.FF, "no source at hand has times for FF, very quick")]
    [InlineData(FuseSpeed.M, "no source at hand has times for M, medium")]
    [InlineData(FuseSpeed.TT, "no source at hand has times for TT, very slow")]
    public void A_speed_without_times_is_doubted_though_the_letter_is_the_same(FuseSpeed speed, string words)
    {
        var doubt = Assert.Single(FuseSubstitution.Judge(Place with { Speed = speed }, Place with { Speed = speed }), reason =>
            reason.Weight != ReasonWeight.For
        );
        Assert.Equal(("speed", ReasonWeight.Doubt), (doubt.Aspect, doubt.Weight));
        Assert.StartsWith(words, doubt.Words.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(FuseBreaking.L, FuseBreaking.E)]
    [InlineData(FuseBreaking.E, FuseBreaking.H)]
    public void One_of_enhanced_breaking_capacity_breaks_more_and_opens_nobody_knows_when(FuseBreaking was, FuseBreaking now)
    {
        var doubt = Assert.Single(FuseSubstitution.Judge(Place with { Breaking = was }, Place with { Breaking = now }), reason =>
            reason.Weight != ReasonWeight.For
        );
        Assert.Equal(("speed", ReasonWeight.Doubt), (doubt.Aspect, doubt.Weight));
        Assert.StartsWith("no source at hand has times and breaking capacity for E", doubt.Words.Text, StringComparison.Ordinal);
    }

    private static FitReason? Standard(Fuse place, Fuse offer) =>
        FuseSubstitution.Judge(place, offer).SingleOrDefault(reason => reason.Aspect == "standard");

    private static (string Aspect, string Words) Against(Fuse offer)
    {
        var reason = Assert.Single(FuseSubstitution.Judge(Place, offer), reason => reason.Weight == ReasonWeight.Against);
        return (reason.Aspect, reason.Words.Text);
    }
}
