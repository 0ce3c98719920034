using System.Collections;
using System.Globalization;
using System.Runtime.CompilerServices;
using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;
using Ohmstead.Synthetic;
using Ohmstead.Synthetic.Parts;

namespace Ohmstead.Assessment.Tests.Limits;

/// <summary>What is kept in mind is what would be worked out anew, whoever asked before.</summary>
public sealed class LimitMemoTests
{
    private const string Reservoir = "kind: aluminium electrolytic, capacitance: 2200 µF, tolerance: 20 %, rated_voltage: 25 V";

    // Parts that differ in one thing only, and ways of reading that differ in one thing only.
    private static readonly string[] Marks =
    [
        Reservoir,
        Reservoir + ", low: 1700 µF",
        Reservoir + ", low: 1700 µF, high: 3000 µF",
        Reservoir + ", esr_limit: 0.2 Ω",
        Reservoir + ", esr_limit: 0.2 Ω, esr_low: 10 mΩ",
        Reservoir + ", loss_factor_limit: 0.16",
        Reservoir + ", leakage_limit: 20 µA",
        "kind: aluminium electrolytic, capacitance: 2200.0 µF, tolerance: 20 %, rated_voltage: 25 V",
        "kind: aluminium electrolytic, capacitance: 2200 µF, rated_voltage: 25 V",
        "kind: tantalum, capacitance: 22 µF, tolerance: 20 %, rated_voltage: 25 V",
        "kind: paper, capacitance: 100 nF, rated_voltage: 400 V",
        "kind: paper, capacitance: 100 nF, rated_voltage: 400 V, working_voltage: 160 V",
        "kind: paper, capacitance: 100 nF, rated_voltage: 400 V, leakage_limit: 1 µA",
        "kind: ceramic class 2, capacitance: 22 nF, tolerance: -20/+80 %, rated_voltage: 63 V",
        "kind: metal film resistor, resistance: 4.7 kΩ",
        "kind: metal film resistor, resistance: 4.7 kΩ, tolerance: 1 %",
        "kind: crystal, frequency: 4 MHz",
        "kind: zener diode, type: 1N4733A",
        "kind: zener diode, type: 1N4733",
        "kind: transistor, low: 50",
        "kind: germanium transistor, leakage_limit: 5 µA",
        "kind: cell, material: lithium, rated_voltage: 3 V",
        "kind: cell, material: lithium, cells: 2",
        Reservoir + ", esr_limit: 0.2 Ω, esr_frequency: 100 kHz",
        "kind: suppression capacitor, safety_class: X2, capacitance: 100 nF, rated_voltage: 250 V",
        "kind: suppression capacitor, safety_class: Y2, capacitance: 2.2 nF, rated_voltage: 250 V",
        "kind: suppression capacitor, safety_class: Y2, capacitance: 2.2 nF, rated_voltage: 250 V, form: disc",
        "kind: polyester film, capacitance: 100 nF, rated_voltage: 400 V",
        "kind: polyester film, capacitance: 100 nF, rated_voltage: 400 V, role: mains suppression",
        "kind: ceramic class 2, material: Z5U, capacitance: 22 nF",
        "kind: wet tantalum, capacitance: 100 µF, rated_voltage: 10 V",
        "kind: polymer electrolytic, capacitance: 100 µF, rated_voltage: 10 V",
        "kind: bridge rectifier, material: silicon",
        "kind: diode, material: silicon, current: 3 A",
        "kind: fuse, current: 1 A",
        "kind: transformer, resistance: 48 Ω",
    ];

    private static readonly ReadingConditions[] Ways =
    [
        new(false, null, null, null),
        new(true, null, null, null),
        new(false, Hertz(120m), null, null),
        new(false, Hertz(100_000m), null, null),
        new(false, Hertz(120m), Seconds(60m), Volts(25m)),
        new(false, Hertz(120m), Seconds(60m), Volts(25.00000000m)),
        new(false, Hertz(120m), Seconds(300m), Volts(16m)),
        new(false, Hertz(120m), null, null) { AwayFrom20 = Celsius(6m) },
        new(false, Hertz(120m), null, null) { AwayFrom20 = Celsius(31m) },
        new(false, Hertz(120m), null, null) { Bias = Volts(12m) },
        new(false, null, null, null) { TestCurrent = new(0.005m, Dimension.Current) },
    ];

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(100_000)]
    public void What_is_kept_in_mind_is_what_would_be_worked_out_anew(int most)
    {
        var memo = new LimitMemo(most);
        var found = 0;
        foreach (var (part, place, measured, how) in Questions().Concat(Questions()))
        {
            var expected = PartLimits.For(part, place, measured, how);
            found += expected.Length;
            Assert.Equal(Told(expected), Told(memo.For(part, place, measured, how)));
        }

        Assert.True(found > 1_000, $"only {found} limits were looked at");
    }

    [Fact]
    public void A_mark_that_comes_again_on_another_line_has_the_very_same_limits()
    {
        var memo = new LimitMemo();
        var parts = Parts([
            Reservoir,
            "kind: crystal, frequency: 4 MHz",
            Reservoir + ", maker: Ostrel, date_code: \"7549\", working_voltage: 17 V",
        ]);
        Assert.Equal(3, parts.Count);
        var how = new ReadingConditions(false, Hertz(120m), null, null);
        var first = memo.For(parts[0], "the design", Measured.Capacitance, how);
        Assert.True(first == memo.For(parts[2], "the design", Measured.Capacitance, how with { }));
        Assert.False(first == memo.For(parts[1], "the design", Measured.Frequency, how));
        Assert.True(first == memo.For(parts[0], "the design", Measured.Capacitance, how));
    }

    [Fact]
    public void A_full_memory_starts_anew()
    {
        var memo = new LimitMemo(most: 2);
        var part = Parts([Reservoir])[0];
        var how = new ReadingConditions(false, Hertz(120m), null, null);
        var first = memo.For(part, null, Measured.Capacitance, how);
        var second = memo.For(part, null, Measured.Esr, how);
        Assert.True(first == memo.For(part, null, Measured.Capacitance, how));
        Assert.True(second == memo.For(part, null, Measured.Esr, how));
        memo.For(part, null, Measured.Leakage, how);
        Assert.False(first == memo.For(part, null, Measured.Capacitance, how));
    }

    // Limits of electrolytics hold at 20 °C within 5 K: IEC 60384-4, from memory.
    [Theory]
    [InlineData("14.9", false)]
    [InlineData("15", true)]
    [InlineData("20", true)]
    [InlineData("25", true)]
    [InlineData("25.1", false)]
    public void Within_5_K_of_20_degrees_it_does_not_matter_how_warm_it_was(string celsius, bool isNear)
    {
        var read = Celsius(decimal.Parse(celsius, CultureInfo.InvariantCulture));
        Assert.Equal(isNear ? null : read, new ReadingConditions(false, null, null, null) { AwayFrom20 = read }.AwayFrom20);
    }

    private static IEnumerable<(PartValues Part, string? Place, Measured Measured, ReadingConditions How)> Questions() =>
        from part in Parts([
            .. Marks,
            .. Marks,
            .. PartsList.Invent(SeededRandom.For(1, 0, 5)).Select(part => part.Line.ToString()!.Split(", ", 2)[1].TrimEnd('}', ' ')),
        ])
        from measured in Enum.GetValues<Measured>()
        from how in Ways
        from place in new[] { null, "this board's record", "the design" }
        select (part, place, measured, how);

    // Read as the program reads them: each stands on a line of its own.
    private static List<PartValues> Parts(IReadOnlyList<string> marks)
    {
        var lines = marks.Select((mark, at) => string.Create(CultureInfo.InvariantCulture, $"  - {{ ref: X{at}, {mark} }}\n"));
        var board = Worked.Board($"parts:\n{string.Concat(lines)}");
        return [.. board.Places.Select(place => place.Part.Values)];
    }

    // All that a limit says, by whatever property, with all places after the point.
    private static string Told(IReadOnlyList<Limit> limits) =>
        string.Join(
            '\n',
            limits.Select(limit =>
                string.Join("; ", typeof(Limit).GetProperties().Select(property => $"{property.Name}: {Shown(property.GetValue(limit))}"))
            )
        );

    private static string Shown(object? value) =>
        value switch
        {
            null => "none",
            LazyText text => text.Text,
            Quantity quantity => $"{quantity.Value.ToString(CultureInfo.InvariantCulture)} {quantity.Dimension}",
            Interval interval => $"{Shown(interval.Lower)} to {Shown(interval.Upper)}",
            ITuple tuple => string.Join(", ", Enumerable.Range(0, tuple.Length).Select(at => Shown(tuple[at]))),
            IEnumerable list => string.Join(", ", list.Cast<object>().Select(Shown)),
            LimitKind kind => kind.ToString(),
            Limit limit => Told([limit]),
            _ => throw new InvalidOperationException($"{value.GetType()} is new among what a limit says: say here how it is shown."),
        };

    private static Quantity Hertz(decimal value) => new(value, Dimension.Frequency);

    private static Quantity Seconds(decimal value) => new(value, Dimension.Duration);

    private static Quantity Volts(decimal value) => new(value, Dimension.Voltage);

    private static Quantity Celsius(decimal value) => new(value, Dimension.Temperature);
}
