using Ohmstead.Electronics.Parts;

namespace Ohmstead.Electronics.Tests.Parts;

/// <summary>Times of IEC 60127-2 as Schurter's data sheets quote them (FST for sheet 3, SPT and SMD-SPT for sheet 5), of UL 248-14 as
/// Littelfuse's Fuseology does.</summary>
public sealed class FuseFiguresTests
{
    [Theory(DisplayName = "SV31 a slow fuse of low and one of high breaking capacity open at other times")]
    [InlineData("1.6", FuseBreaking.L, "2.1", 120)]
    [InlineData("1.6", FuseBreaking.H, "2.1", 1800)]
    [InlineData("1", FuseBreaking.L, "10", 0.3)]
    [InlineData("1", FuseBreaking.H, "10", 0.15)]
    [InlineData("0.5", FuseBreaking.H, "2.1", 1800)]
    [InlineData("0.5", FuseBreaking.H, "2.75", 80)]
    [InlineData("16", FuseBreaking.H, "10", 0.15)]
    [InlineData("20", FuseBreaking.L, "10", 0.3)]
    public void A_slow_fuse_opens_by_its_sheet(string rated, FuseBreaking breaking, string times, double seconds) =>
        Assert.Equal((decimal)seconds, Row(rated, FuseSpeed.T, breaking, times).OpensWithinSeconds);

    // By current: the surge that a slow fuse must bear at 4 x and at 10 x its rating.
    [Theory]
    [InlineData("0.1", FuseBreaking.L, "4", 0.04)]
    [InlineData("0.125", FuseBreaking.L, "4", 0.15)]
    [InlineData("0.8", FuseBreaking.H, "4", 0.05)]
    [InlineData("1", FuseBreaking.H, "4", 0.095)]
    [InlineData("3.15", FuseBreaking.H, "10", 0.01)]
    [InlineData("4", FuseBreaking.H, "10", 0.02)]
    [InlineData("6.3", FuseBreaking.L, "1.5", 3600)]
    [InlineData("8", FuseBreaking.L, "1.5", 1800)]
    public void A_slow_fuse_bears_a_surge_by_its_current(string rated, FuseBreaking breaking, string times, double seconds) =>
        Assert.Equal((decimal)seconds, Row(rated, FuseSpeed.T, breaking, times).CarriesSeconds);

    [Theory(
        DisplayName = "SV32 a fuse rated by UL opens at 1.35 times its rating within an hour, at twice within two minutes, or four "
            + "above 30 A"
    )]
    [InlineData("1.6", "1.35", 3600)]
    [InlineData("1.6", "2", 120)]
    [InlineData("30", "2", 120)]
    [InlineData("35", "2", 240)]
    [InlineData("60", "2", 240)]
    public void An_american_fuse_opens_sooner(string rated, string times, double seconds) =>
        Assert.Equal(
            (decimal)seconds,
            Assert
                .Single(FuseFigures.For(Exact.Of(rated), FuseSystem.UL, null, null), row => row.TimesRated == Exact.Of(times))
                .OpensWithinSeconds
        );

    // IEC 60127-2, sheets 1 and 2, as quoted in a table of times (csdn.net 111836789): a quick one of either breaking capacity.
    [Theory]
    [InlineData("2.1", 1800)]
    [InlineData("2.75", 2)]
    [InlineData("4", 0.3)]
    [InlineData("10", 0.02)]
    public void A_quick_fuse_opens_within_twenty_milliseconds_at_ten_times(string times, double seconds) =>
        Assert.Equal((decimal)seconds, Row("0.5", FuseSpeed.F, FuseBreaking.L, times).OpensWithinSeconds);

    // L breaks 10 x its rating and at least 35 A (sheet 3), H 1500 A (sheet 5); UL at 250 V by steps.
    [Theory(DisplayName = "SV33 what a fuse can interrupt")]
    [InlineData(FuseSystem.IEC, FuseBreaking.L, "0.63", 35)]
    [InlineData(FuseSystem.IEC, FuseBreaking.L, "3.5", 35)]
    [InlineData(FuseSystem.IEC, FuseBreaking.L, "3.6", 36)]
    [InlineData(FuseSystem.IEC, FuseBreaking.L, "6.3", 63)]
    [InlineData(FuseSystem.IEC, FuseBreaking.L, "20", 200)]
    [InlineData(FuseSystem.IEC, FuseBreaking.H, "10", 1500)]
    [InlineData(FuseSystem.UL, null, "1", 35)]
    [InlineData(FuseSystem.UL, null, "3.15", 100)]
    [InlineData(FuseSystem.UL, null, "10", 200)]
    [InlineData(FuseSystem.UL, null, "10.1", 750)]
    public void What_it_can_interrupt_follows_from_class_and_rating(FuseSystem system, FuseBreaking? breaking, string rated, int amperes) =>
        Assert.Equal(amperes, FuseFigures.BreaksAmperes(system, breaking, Exact.Of(rated)).Value.Value);

    [Fact]
    public void What_no_figure_is_known_for_is_refused()
    {
        Assert.NotNull(FuseFigures.BreaksAmperes(FuseSystem.IEC, FuseBreaking.E, 1m).Refusal);
        Assert.NotNull(FuseFigures.BreaksAmperes(FuseSystem.IEC, FuseBreaking.H, 10.1m).Refusal);
        Assert.Empty(FuseFigures.For(1m, FuseSystem.IEC, FuseSpeed.TT, FuseBreaking.L));
    }

    // A letter of breaking capacity is one of IEC 60127: such a fuse is none of UL 248-14.
    [Fact]
    public void A_fuse_with_a_letter_of_breaking_capacity_is_rated_by_IEC() =>
        Assert.All(FuseFigures.For(1.6m, null, FuseSpeed.T, FuseBreaking.L), row => Assert.Equal(FuseSystem.IEC, row.System));

    private static FuseFigures Row(string rated, FuseSpeed speed, FuseBreaking breaking, string times) =>
        Assert.Single(FuseFigures.For(Exact.Of(rated), FuseSystem.IEC, speed, breaking), row => row.TimesRated == Exact.Of(times));
}
