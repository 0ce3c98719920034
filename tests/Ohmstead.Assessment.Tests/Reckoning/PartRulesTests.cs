namespace Ohmstead.Assessment.Tests.Reckoning;

/// <summary>Rules of other parts, preferred values and substitution as worked at the bench.</summary>
public sealed class PartRulesTests
{
    [Theory]
    // 1 MΩ / 1.47 MΩ; the source has 29.4 V, of which 10 MΩ shows 10 / 10.47.
    [InlineData("meter-loading", "ohms-per-volt=20k range=50V source=470k", "share", 0.680272, 1e-6)]
    [InlineData("meter-loading", "meter=1M source=470k shown=20V other-meter=10M", "a meter of 10 MΩ", 28.0802, 1e-4)]
    // 2 000 000 / 13 / 16 = 9615.38.
    [InlineData("baud-error", "clock=2MHz divisor=13 baud=9600", "error", 0.0016026, 1e-7)]
    // A colour subcarrier of 3.579 545 45 MHz against 3.579 600 MHz, by hand calculator.
    [InlineData("ppm", "measured=3.5796MHz nominal=3.57954545MHz", "deviation", 15.24, 0.01)]
    [InlineData("ppm", "measured=3.5796MHz nominal=3.57954545MHz", "a clock gains", 1.3167, 1e-4)]
    // 100 000 x 200e-6 x 40.
    [InlineData("temperature-change", "resistance=100k coefficient=200ppm rise=40K", "change", 800, 0)]
    // 100 x 47 / 147.
    [InlineData("parallel", "resistance=100k beside=47k", "together", 31972.8, 0.1)]
    [InlineData("parallel", "resistance=100k read=50k", "what lies", 100_000, 1e-6)]
    // 0.2 x 254.5 - 2, winding temperature by resistance, from memory of IEC 60335-1.
    [InlineData("winding-rise", "cold=10.0ohm hot=12.0ohm start=20C room=22C", "rise", 48.9, 1e-9)]
    // IEC 60127-2, sheets 3 and 5 by makers' data sheets, quick from memory: 2.1 times the rating. UL 248-14 by Littelfuse, Fuseology.
    [InlineData("fuse", "rated=500mA speed=T breaking=L", "at 1.05 A", 120, 0)]
    [InlineData("fuse", "rated=500mA speed=T breaking=H", "at 1.05 A", 1800, 0)]
    [InlineData("fuse", "rated=500mA speed=T", "H: at 1.05 A", 1800, 0)]
    [InlineData("fuse", "rated=1.6A speed=T system=UL", "at 3.2 A", 120, 0)]
    [InlineData("fuse", "rated=6.3A speed=T breaking=L", "it interrupts", 63, 0)]
    [InlineData("fuse", "rated=500mA speed=F", "at 1.05 A", 1800, 0)]
    // The lowest rating that is made and not below the mark, common practice.
    [InlineData("rated-voltage", "rated-voltage=64V", "rating", 80, 0)]
    [InlineData("preferred-value", "capacitance=8uF", "made today", 10e-6, 0)]
    // 1 / (2 pi x 1 MΩ x 0.1 µF).
    [InlineData("corner", "resistance=1M capacitance=0.1uF", "corner", 1.592, 1e-3)]
    public void A_part_rule_gives_the_worked_figure(string rule, string inputs, string what, double expected, double within) =>
        Bench.Expect(rule, inputs, what, expected, within);

    [Theory]
    // Two 100 µF 350 V in series.
    [InlineData("two-for-one", "capacitance=100uF rated-voltage=350V", "in series", "50 µF 700 V")]
    // The printed E24 has 4.3 and 4.7.
    [InlineData("preferred-value", "resistance=4k6", "E24", "4.3 kΩ or 4.7 kΩ, nearest 4.7 kΩ")]
    // Week 34 of 1978 beside a type number; industry practice.
    [InlineData("package-date", "print=SN7404N,7834 type=SN7404N", "date", "1978-W34")]
    // Holes of 5.08 mm take 5 mm spacing.
    [InlineData("pitch", "pitch=5.08mm", "film parts", "5 mm spacing")]
    public void A_part_rule_gives_the_worked_words(string rule, string inputs, string what, string expected) =>
        Assert.Equal(expected, Bench.Line(rule, inputs, what).Value);
}
