namespace Ohmstead.Assessment.Tests.Reckoning;

/// <summary>Rules of life as worked at the bench.</summary>
public sealed class LifeRulesTests
{
    [Theory]
    // Twice for every ten kelvin: 2000 h x 2^4.
    [InlineData("life", "rated-life=2000h rated-temperature=105C temperature=65C", "life, ten-kelvin rule", 32_000, 0)]
    // A maker's ripple form, half the ripple: by hand calculator.
    [InlineData("life", "rated-life=2000h rated-temperature=105C temperature=65C ripple=0.5", "life, ripple form", 43_483.5, 0.5)]
    // A maker's three-factor form at 0.8 of ripple and voltage: by hand calculator.
    [InlineData(
        "life",
        "rated-life=5000h rated-temperature=105C temperature=65C ripple=0.8 voltage=0.8",
        "life, three-factor form",
        158_325,
        1
    )]
    // 2000 h / 0.8 x 16; (1 / 0.8)²; 2000 h x 2^5 for a case of 65 degrees.
    [InlineData("life", "rated-life=2000h rated-temperature=105C temperature=65C voltage=0.8", "life, linear voltage form", 40_000, 1e-6)]
    [InlineData("life", "rated-life=2000h rated-temperature=105C temperature=65C voltage=0.8 exponent=2", "voltage factor", 1.5625, 1e-9)]
    [InlineData("life", "rated-life=2000h rated-temperature=105C temperature=60C case=65C", "life, case form", 64_000, 1e-6)]
    // 4.3 - 3.3 x 0.8 = 1.66; x 2000 h x 2^4.
    [InlineData(
        "life",
        "rated-life=2000h rated-temperature=105C temperature=60C core=70C rated-core=110C voltage=0.8",
        "life, core form",
        53_120,
        1e-6
    )]
    // A maker prints 57.2 degrees for eight hours each at 45, 55 and 65.
    [InlineData(
        "mixed-duty",
        "rated-life=1000h rated-temperature=105C phases=8h@45C,8h@55C,8h@65C",
        "temperature that equals",
        57.22,
        0.05
    )]
    // 0.7448 eV double between 75 and 85 degrees, by hand calculator; at that energy the acceleration is 2.
    [InlineData("arrhenius", "cooler=75C hotter=85C", "energy", 0.7448, 1e-4)]
    [InlineData("arrhenius", "cooler=75C hotter=85C energy=0.74478", "acceleration", 2, 1e-4)]
    // A maker's table: 1.2 times the rise of the case at 18 mm.
    [InlineData("core-temperature", "ambient=40C case=50C diameter=18mm", "core", 52, 1e-9)]
    // (450 V)² / 100 kΩ.
    [InlineData("reform", "rated-voltage=450V", "power", 2.025, 1e-9)]
    // 2 pi x 100 x 0.001 x 2 / 3.4641.
    [InlineData("ripple-from-voltage", "ripple=2V frequency=100Hz capacitance=1000uF", "ripple current", 0.36276, 1e-5)]
    // 0.1 W over 2 mW/(cm² K) and 11.045 cm².
    [InlineData("ripple-heating", "current=1A esr=0.1ohm diameter=12.5mm length=25mm", "rise", 4.527, 1e-3)]
    // 5 K x 0.5².
    [InlineData("rise-from-rating", "current=0.5A rated-current=1A", "rise", 1.25, 0)]
    public void A_life_rule_gives_the_worked_figure(string rule, string inputs, string what, double expected, double within) =>
        Bench.Expect(rule, inputs, what, expected, within);

    // A form whose figures are not all there would stand for a part that nobody described.
    [Theory]
    [InlineData("", "ten-kelvin rule")]
    [InlineData("ripple=0.5", "ten-kelvin rule, ripple form")]
    [InlineData("voltage=0.8", "ten-kelvin rule, linear voltage form")]
    [InlineData("ripple=0.5 voltage=0.8", "ten-kelvin rule, ripple form, three-factor form, linear voltage form")]
    [InlineData("case=65C", "ten-kelvin rule, case form")]
    [InlineData("core=70C rated-core=110C", "ten-kelvin rule")]
    [InlineData("core=70C voltage=0.8", "ten-kelvin rule, linear voltage form")]
    [InlineData("core=70C rated-core=110C voltage=0.8", "ten-kelvin rule, linear voltage form, core form")]
    public void A_form_of_life_is_told_where_all_its_figures_are_given(string more, string forms) =>
        Assert.Equal(
            forms,
            string.Join(
                ", ",
                Bench
                    .Lines("life", $"rated-life=2000h rated-temperature=105C temperature=60C {more}".TrimEnd())
                    .Where(line => line.What.StartsWith("life, ", StringComparison.Ordinal))
                    .Select(line => line.What["life, ".Length..])
            )
        );

    [Theory]
    // 32 000 h less 10 000 h at 4000 h a year: 5.5 years of 365.25 days, 2008 whole days. The cooler case ends at the cap of 15 years, 5478
    // days.
    [InlineData(
        "remaining-life",
        "rated-life=2000h rated-temperature=105C used=10000h used-at=65C least-a-year=1000h most-a-year=4000h coolest=45C hottest=65C "
            + "on=2026-01-01",
        "used up",
        "between 2031-07-02 and 2040-12-31, an estimate, not a promise"
    )]
    // Solid tantalum and polymer do not form again, paper has no oxide.
    [InlineData(
        "reform",
        "rated-voltage=450V",
        "for",
        "only for aluminium electrolytics with liquid electrolyte and a right way round; never for tantalum, polymer, paper or film; "
            + "this procedure is for parts that lay for long, and all whose age is not known"
    )]
    // A maker's words of 1993 for ten years and more, read in a private copy.
    [InlineData("shelf-age", "made=2015-06-01 on=2026-06-01", "advice", "end of useful shelf life")]
    public void A_life_rule_gives_the_worked_words(string rule, string inputs, string what, string expected) =>
        Assert.Equal(expected, Bench.Line(rule, inputs, what).Value);
}
