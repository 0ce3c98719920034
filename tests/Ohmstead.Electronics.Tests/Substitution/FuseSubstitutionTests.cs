using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Electronics.Tests.Substitution;

/// <summary>
/// A fuse is replaced by one of the same rating, speed and size, not less of breaking capacity and voltage: trade practice.
/// </summary>
public sealed class FuseSubstitutionTests
{
    private static readonly Fuse Place =
        new() { RatedAmperes = 1m, Speed = FuseSpeed.T, Breaking = FuseBreaking.H, RatedVolts = 250m, Size = FuseSize.FiveByTwenty };

    [Fact]
    public void The_same_fuse_fits() =>
        Assert.All(FuseSubstitution.Judge(Place, Place), reason => Assert.Equal(ReasonWeight.For, reason.Weight));

    [Fact]
    public void Any_other_figure_is_against()
    {
        Assert.Equal(("safety", "1.25 A for 1 A, expected the same"), Against(Place with { RatedAmperes = 1.25m }));
        Assert.Equal(("safety", "0.8 A for 1 A, expected the same"), Against(Place with { RatedAmperes = 0.8m }));
        Assert.Equal(("speed", "F, quick, for T, slow"), Against(Place with { Speed = FuseSpeed.F }));
        Assert.Equal(("breaking capacity", "L, of low breaking capacity, where H stood: it may burst"),
            Against(Place with { Breaking = FuseBreaking.L }));
        Assert.Equal(("breaking capacity", "E, of enhanced breaking capacity, where H stood: it may burst"),
            Against(Place with { Breaking = FuseBreaking.E }));
        Assert.Equal(("voltage", "125 V is under 250 V"), Against(Place with { RatedVolts = 125m }));
        Assert.Equal(("size", "6.3 x 32 mm where 5 x 20 mm goes in"), Against(Place with { Size = FuseSize.SixByThirtyTwo }));
        Assert.Equal(("safety", "its current is not written, 1 A are asked for"), Against(Place with { RatedAmperes = null }));
    }

    [Fact]
    public void What_is_not_known_is_a_doubt()
    {
        foreach (
            var offer in new[] { Place with { Speed = null }, Place with { Breaking = null }, Place with { RatedVolts = null },
                Place with { Size = null } })
        {
            Assert.True(Assert.Single(FuseSubstitution.Judge(Place, offer), reason => reason.Weight != ReasonWeight.For).IsMissing);
        }

        Assert.Equal(["speed", "voltage", "size"], FuseSubstitution.Judge(new Fuse { RatedAmperes = 1m }, Place)
            .Where(reason => reason.IsMissing).Select(reason => reason.Aspect));
    }

    [Fact]
    public void A_place_of_unknown_current_takes_nothing() =>
        Assert.Contains(FuseSubstitution.Judge(Place with { RatedAmperes = null }, Place), reason => reason.Weight == ReasonWeight.Against);

    // Sheet 5 against sheet 3: 30 min instead of 2 min at 2.1 x the rating.
    [Fact]
    public void A_slow_ceramic_fuse_for_a_slow_glass_one_breaks_more_and_opens_later()
    {
        var doubt = Assert.Single(
            FuseSubstitution.Judge(Place with { Breaking = FuseBreaking.L }, Place), reason => reason.Weight != ReasonWeight.For);
        Assert.Equal(("speed", ReasonWeight.Doubt, false), (doubt.Aspect, doubt.Weight, doubt.IsMissing));
    }

    private static (string Aspect, string Words) Against(Fuse offer)
    {
        var reason = Assert.Single(FuseSubstitution.Judge(Place, offer), reason => reason.Weight == ReasonWeight.Against);
        return (reason.Aspect, reason.Words.Text);
    }
}
