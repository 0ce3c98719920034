using CsCheck;
using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Tests.Capacitors;

public sealed class OtherFrequencyTests
{
    // SV13. 470 µF 25 V, tan delta 0.14 at 120 Hz: L = 0.14 / (2 pi 120 Hz 470 µF) = 0.3951 ohm, worn twice that, 0.7901 ohm. At 1 kHz
    // 0.7901 x 120 / 1000 = 0.0948; at 50 Hz 0.7901 x 120 / 50 = 1.896 ohm: by hand from ESR(f) = D / (2 pi f C) + r.
    [Theory]
    [InlineData("1000", 0.0948, 0.7901)]
    [InlineData("120", 0.7901, 0.7901)]
    [InlineData("50", 0.7901, 1.896)]
    [InlineData("100000", 0.000948, 0.7901)]
    public void An_ESR_at_another_frequency_proves_what_either_share_of_its_two_parts_would_allow(
        string hertz,
        double insideTo,
        double outsideAbove
    )
    {
        decimal worn = 2m * LossFactor.EsrOhms(0.14m, 120m, 0.000470m).Value;
        ProvedLimits proved = OtherFrequency.Esr(worn, 120m, Exact.Of(hertz)).Value.Value;
        Assert.Equal(insideTo, (double)proved.InsideTo, insideTo * 1e-3);
        Assert.Equal(outsideAbove, (double)proved.OutsideAbove, 5e-4);
    }

    // SV13. A part exactly on L = 0.3951 ohm at 120 Hz with 0.06, 0.15 and 0.30 ohm of it constant reads so at 1 kHz and at 50 Hz, worked
    // in the same paper.
    [Theory]
    [InlineData("1000", "0.1002")]
    [InlineData("1000", "0.1794")]
    [InlineData("1000", "0.3114")]
    [InlineData("50", "0.8642")]
    [InlineData("50", "0.7382")]
    [InlineData("50", "0.5282")]
    public void A_part_exactly_on_its_limit_is_never_proved_inside_or_outside_at_another_frequency(string hertz, string reads)
    {
        decimal limit = LossFactor.EsrOhms(0.14m, 120m, 0.000470m).Value;
        ProvedLimits proved = OtherFrequency.Esr(limit, 120m, Exact.Of(hertz)).Value.Value;
        Assert.InRange(Exact.Of(reads), proved.InsideTo, proved.OutsideAbove);
    }

    // D = 2 pi f C ESR, so 0.32 at 120 Hz is at most 2.667 at 1 kHz and at least 0.1333 at 50 Hz: by hand.
    [Theory]
    [InlineData("1000", "0.32", 2.6667)]
    [InlineData("50", "0.1333", 0.32)]
    public void A_dissipation_factor_rises_with_frequency_and_at_most_as_frequency_does(string hertz, string insideTo, double outsideAbove)
    {
        ProvedLimits proved = OtherFrequency.LossFactor(0.32m, 120m, Exact.Of(hertz)).Value.Value;
        Assert.Equal((double)Exact.Of(insideTo), (double)proved.InsideTo, 1e-4);
        Assert.Equal(outsideAbove, (double)proved.OutsideAbove, 1e-4);
    }

    // ESR and loss are one thing told twice: 2 pi f C times the one is the other.
    [Fact]
    public void ESR_and_dissipation_factor_say_the_same() =>
        Gen.Select(Gen.Int[1, 500], Gen.Int[20, 200_000], Gen.Int[1, 10_000])
            .Sample(
                (thousandths, hertz, microfarads) =>
                {
                    (decimal loss, decimal farads) = (thousandths / 1000m, microfarads / 1_000_000m);
                    ProvedLimits esr = OtherFrequency.Esr(LossFactor.EsrOhms(loss, 120m, farads).Value, 120m, hertz).Value.Value;
                    ProvedLimits factor = OtherFrequency.LossFactor(loss, 120m, hertz).Value.Value;
                    return Near(factor.InsideTo, LossFactor.FromEsr(esr.InsideTo, hertz, farads).Value)
                        && Near(factor.OutsideAbove, LossFactor.FromEsr(esr.OutsideAbove, hertz, farads).Value);
                }
            );

    // Meters measure between 50 Hz and 100 kHz: 0.79 x 120 / 100 000 = 0.000948 and 0.79 x 120 / 50 = 1.896 ohm. A limit without a
    // frequency holds at 120 Hz or at 100 kHz.
    [Theory]
    [InlineData("120", null, 0.000948, 1.896)]
    [InlineData(null, "100000", 0.000948, 0.79)]
    [InlineData(null, "120", 0.79, 658.3)]
    [InlineData(null, "100", 0.79, 790)]
    public void Where_a_frequency_is_not_written_only_what_holds_at_each_of_them_is_proved(
        string? limitHertz,
        string? readHertz,
        double insideTo,
        double outsideAbove
    )
    {
        ProvedLimits proved = OtherFrequency
            .EsrAtUnknown(0.79m, limitHertz is null ? null : Exact.Of(limitHertz), readHertz is null ? null : Exact.Of(readHertz))
            .Value.Value;
        Assert.Equal(insideTo, (double)proved.InsideTo, insideTo * 1e-3);
        Assert.Equal(outsideAbove, (double)proved.OutsideAbove, outsideAbove * 1e-3);
    }

    [Fact]
    public void A_frequency_of_zero_is_refused() =>
        Assert.Equal("frequency of the reading is 0, expected above 0", OtherFrequency.Esr(1m, 120m, 0m).Refusal);

    private static bool Near(decimal one, decimal other) => Math.Abs(one - other) <= 1e-9m * Math.Max(1m, Math.Abs(one));
}
