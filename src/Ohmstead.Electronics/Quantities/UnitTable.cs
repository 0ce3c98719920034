namespace Ohmstead.Electronics.Quantities;

/// <summary>The units of each dimension. Sources: the SI Brochure for units and prefixes; IEC 60062 for letters alone; the rest is trade
/// print (common practice).</summary>
internal static class UnitTable
{
    private static readonly Unit[][] Tables = new Unit[(int)Dimension.Ratio + 1][];
    private static readonly string[][] UsualUnits = new string[(int)Dimension.Ratio + 1][];

    static UnitTable()
    {
        Set(Dimension.Number, [], []);
        Set(
            Dimension.Capacitance,
            ["pF", "nF", "µF", "F"],
            [
                new("F", 0, UnitForm.Prefixed),
                new("p", -12),
                new("n", -9),
                new("u", -6),
                new("\u00B5", -6),
                new("\u03BC", -6),
                new("m", -3),
                new("pF", -12, UnitForm.AnyCase),
                new("nF", -9, UnitForm.AnyCase),
                new("uF", -6, UnitForm.AnyCase),
                new("\u00B5f", -6),
                new("\u03BCf", -6),
                new("mfd", -6, UnitForm.AnyCase),
                new("ufd", -6, UnitForm.AnyCase),
                new("\u00B5fd", -6),
                new("\u03BCfd", -6),
                new("mmf", -12, UnitForm.AnyCase),
                new("mmfd", -12, UnitForm.AnyCase),
                new("uuf", -12, UnitForm.AnyCase),
                new("uufd", -12, UnitForm.AnyCase),
                new("\u00B5\u00B5F", -12),
                new("\u03BC\u03BCF", -12),
                new("\u00B5\u00B5f", -12),
                new("\u03BC\u03BCf", -12),
                new("farad", 0, UnitForm.AnyCase),
                new("farads", 0, UnitForm.AnyCase),
                new("microfarad", -6, UnitForm.AnyCase),
                new("microfarads", -6, UnitForm.AnyCase),
                new("picofarad", -12, UnitForm.AnyCase),
                new("picofarads", -12, UnitForm.AnyCase),
            ]
        );
        Set(
            Dimension.Resistance,
            ["mΩ", "Ω", "kΩ", "MΩ"],
            [
                new("\u03A9", 0, UnitForm.Prefixed),
                new("\u2126", 0, UnitForm.Prefixed),
                new("ohm", 0, UnitForm.PrefixedAnyCase),
                new("ohms", 0, UnitForm.PrefixedAnyCase),
                new("R"),
                new("k", 3),
                new("K", 3),
                new("M", 6),
                new("G", 9),
                new("T", 12),
                new("meg", 6, UnitForm.AnyCase),
                new("megohm", 6, UnitForm.AnyCase),
                new("megohms", 6, UnitForm.AnyCase),
            ]
        );
        Set(Dimension.Inductance, ["µH", "mH", "H"], [new("H", 0, UnitForm.Prefixed), new("hy", 0, UnitForm.PrefixedAnyCase)]);
        Set(
            Dimension.Voltage,
            ["mV", "V", "kV"],
            [new("V", 0, UnitForm.Prefixed), new("volt", 0, UnitForm.AnyCase), new("volts", 0, UnitForm.AnyCase)]
        );
        Set(Dimension.Current, ["µA", "mA", "A"], [new("A", 0, UnitForm.Prefixed)]);
        Set(
            Dimension.Power,
            ["mW", "W"],
            [new("W", 0, UnitForm.Prefixed), new("watt", 0, UnitForm.AnyCase), new("watts", 0, UnitForm.AnyCase)]
        );
        Set(Dimension.Energy, ["mJ", "J"], [new("J", 0, UnitForm.Prefixed), new("Wh", 0, UnitForm.Prefixed, 3600)]);
        Set(Dimension.Charge, ["µC", "C", "mAh"], [new("C", 0, UnitForm.Prefixed), new("Ah", 0, UnitForm.Prefixed, 3600)]);
        Set(
            Dimension.Frequency,
            ["Hz", "kHz", "MHz"],
            [new("Hz", 0, UnitForm.Prefixed), new("c/s", 0, UnitForm.Prefixed), new("cps"), new("kc", 3), new("Kc", 3), new("Mc", 6)]
        );
        Set(
            Dimension.Duration,
            ["s", "min", "h", "d", "weeks", "months", "years"],
            [
                new("s", 0, UnitForm.Prefixed),
                new("sec"),
                new("secs"),
                new("second"),
                new("seconds"),
                Time("min", 60),
                Time("mins", 60),
                Time("minute", 60),
                Time("minutes", 60),
                Time("h", 3600),
                Time("hr", 3600),
                Time("hrs", 3600),
                Time("hour", 3600),
                Time("hours", 3600),
                Time("d", 86400),
                Time("day", 86400),
                Time("days", 86400),
                Time("week", 604800),
                Time("weeks", 604800),
                Time("month", 2629800),
                Time("months", 2629800),
                Time("yr", 31557600),
                Time("yrs", 31557600),
                Time("year", 31557600),
                Time("years", 31557600),
            ]
        );
        Set(Dimension.Temperature, ["°C"], [new("°C"), new("\u2103"), new("degC"), new("deg C"), new("C")]);
        Set(
            Dimension.Length,
            ["mm", "cm", "m"],
            [
                new("m", 0, UnitForm.Prefixed),
                new("cm", -2),
                Inch("in"),
                Inch("inch"),
                Inch("inches"),
                new("mil", -7, UnitForm.Exact, 254),
                new("mils", -7, UnitForm.Exact, 254),
            ]
        );
        Set(Dimension.Ratio, ["%"], [new("%", -2), new("percent", -2), new("\u2030", -3), new("ppm", -6)]);
    }

    /// <summary>Every spelling of the dimension's units.</summary>
    internal static ReadOnlySpan<Unit> UnitsFor(Dimension dimension) => Tables[(int)dimension];

    /// <summary>The units a person would expect, for messages.</summary>
    internal static IReadOnlyList<string> Usual(Dimension dimension) => UsualUnits[(int)dimension];

    private static Unit Time(string spelling, int seconds) => new(spelling, 0, UnitForm.Exact, seconds);

    // 1 inch = 25.4 mm exactly.
    private static Unit Inch(string spelling) => new(spelling, -4, UnitForm.Exact, 254);

    private static void Set(Dimension dimension, string[] usual, Unit[] units)
    {
        Tables[(int)dimension] = units;
        UsualUnits[(int)dimension] = usual;
    }
}
