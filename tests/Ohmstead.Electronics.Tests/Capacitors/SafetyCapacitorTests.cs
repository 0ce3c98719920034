using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Tests.Capacitors;

public sealed class SafetyCapacitorTests
{
    // X1 4, X2 2.5, Y2 5 kV: Johanson Dielectrics, Safety Certified Application Notes; Y1 8 kV: Vishay VY1 data sheet. Up0 / sqrt(C / 1 µF)
    // above 1 µF for the X classes: IEC 60384-14, as makers' classification tables quote it.
    [Theory]
    [Trait("CheckValue", "CV25")]
    [InlineData(SafetyClass.X2, "0.0000022", 1.685)]
    [InlineData(SafetyClass.X1, "0.0000047", 1.845)]
    [InlineData(SafetyClass.X2, "0.000001", 2.5)]
    [InlineData(SafetyClass.Y1, "0.000001", 8.0)]
    [InlineData(SafetyClass.Y2, "0.0000000022", 5.0)]
    public void The_impulse_of_a_large_class_x_part_is_smaller(SafetyClass safetyClass, string farads, double kilovolts) =>
        Assert.Equal(kilovolts, SafetyCapacitor.ImpulseKilovolts(safetyClass, Exact.Of(farads)).Value.Value, 1e-3);

    // I = 2 pi f C V, by hand calculator.
    [Theory]
    [Trait("CheckValue", "CV26")]
    [InlineData("0.0000000047", "250", "50", 0.369)]
    [InlineData("0.0000000022", "230", "50", 0.159)]
    [InlineData("0.0000000047", "120", "60", 0.213)]
    public void A_class_y_part_sends_a_current_into_the_chassis(string farads, string volts, string hertz, double milliamperes) =>
        Assert.Equal(
            milliamperes,
            (double)SafetyCapacitor.TouchMilliamperes(Exact.Of(farads), Exact.Of(volts), Exact.Of(hertz)).Value.Value,
            1e-3
        );

    // The figures of the Y classes hold to 1 µF, and 1 µF on the mains would send 79 mA into the chassis: none is made.
    [Fact]
    public void A_class_y_part_above_a_microfarad_has_no_figure() =>
        Assert.Equal(
            "capacitance is 2.2 µF, the figure of class Y1 holds to 1 µF and no such part is made above it",
            SafetyCapacitor.ImpulseKilovolts(SafetyClass.Y1, 0.0000022m).Refusal
        );

    [Fact]
    public void A_farad_suppresses_nothing() =>
        Assert.Equal(
            "capacitance is 1 F, no suppression capacitor is above 100 µF",
            SafetyCapacitor.ImpulseKilovolts(SafetyClass.X1, 1m).Refusal
        );

    // SV04: 2.2 nF at 230 V 50 Hz 0.1590 mA, 0.2098 mA with 20 % and 10 % more; 100 nF 7.226 mA, above every class. 2 pi f C V by hand
    // calculator.
    [Theory]
    [Trait("CheckValue", "SV04")]
    [InlineData("0.0000000022", 0.1590, 0.2098, 0)]
    [InlineData("0.0000001", 7.226, 9.538, 3)]
    public void A_touch_current_is_held_against_the_classes_at_its_worst(string farads, double milliamperes, double worst, int passed)
    {
        Assert.Equal(milliamperes, (double)SafetyCapacitor.TouchMilliamperes(Exact.Of(farads), 230m, 50m).Value.Value, 5e-4);
        decimal most = TouchCurrentLimit.WorstMilliamperes(Exact.Of(farads), 230m, 50m).Value.Value;
        Assert.Equal(worst, (double)most, 5e-4);
        Assert.Equal(passed, TouchCurrentLimit.PassedBy(most).Count);
    }

    // 0.25 mA is of equipment that is not joined to protective earth, hand-held has 0.75 mA: IEC 60950-1 table 5A, as quoted. At 253 V 50
    // Hz that is 3.15 nF,
    // 9.44 nF and 44.0 nF, by hand calculator.
    [Theory]
    [InlineData(0, "class II, not joined to protective earth", 3.15e-9)]
    [InlineData(1, "class I, hand-held", 9.44e-9)]
    [InlineData(2, "class I, other", 44.0e-9)]
    public void Each_class_has_its_largest_capacitance(int at, string equipment, double farads)
    {
        Assert.Equal(equipment, TouchCurrentLimit.All[at].Equipment);
        Assert.Equal(farads, (double)TouchCurrentLimit.All[at].LargestFarads(253m, 50m).Value.Value, farads * 2e-3);
    }

    // Order of classes: IEC 60384-14 as makers quote it, by the impulse that each is tested with.
    [Theory]
    [InlineData(SafetyClass.X2, SafetyClass.Y2, true)]
    [InlineData(SafetyClass.X1, SafetyClass.Y2, true)]
    [InlineData(SafetyClass.X2, SafetyClass.X1, true)]
    [InlineData(SafetyClass.Y2, SafetyClass.Y1, true)]
    [InlineData(SafetyClass.X2, SafetyClass.X2, true)]
    [InlineData(SafetyClass.None, SafetyClass.X2, true)]
    [InlineData(SafetyClass.Y2, SafetyClass.X1, false)]
    [InlineData(SafetyClass.Y1, SafetyClass.Y2, false)]
    [InlineData(SafetyClass.X1, SafetyClass.X2, false)]
    [InlineData(SafetyClass.X2, SafetyClass.None, false)]
    [InlineData(SafetyClass.X2, SafetyClass.Y3, false)]
    [InlineData(SafetyClass.X2, SafetyClass.Y4, false)]
    [InlineData(SafetyClass.X3, SafetyClass.Y4, false)]
    [InlineData(SafetyClass.Y3, SafetyClass.Y4, false)]
    [InlineData(SafetyClass.Y4, SafetyClass.Y4, true)]
    [InlineData(SafetyClass.Y4, SafetyClass.Y3, false)]
    [InlineData(SafetyClass.X3, SafetyClass.Y3, true)]
    public void A_class_is_kept_or_raised_and_an_x_never_stands_for_a_y(SafetyClass original, SafetyClass offered, bool may) =>
        Assert.Equal(may, SafetyCapacitor.MayReplace(original, offered).Value);

    // Y1 to 500 V, Y2 150 to 300 V, Y3 150 to 250 V, Y4 under 150 V: IEC 60384-14 as makers quote it. On the end and one last place beyond
    // it.
    [Theory]
    [InlineData(SafetyClass.Y1, SafetyClass.Y1, "500", true)]
    [InlineData(SafetyClass.Y1, SafetyClass.Y1, "500.1", false)]
    [InlineData(SafetyClass.X2, SafetyClass.Y2, "300", true)]
    [InlineData(SafetyClass.X2, SafetyClass.Y2, "300.1", false)]
    [InlineData(SafetyClass.X3, SafetyClass.Y3, "250", true)]
    [InlineData(SafetyClass.X3, SafetyClass.Y3, "250.1", false)]
    [InlineData(SafetyClass.X2, SafetyClass.Y4, "149.9", true)]
    [InlineData(SafetyClass.X2, SafetyClass.Y4, "150", false)]
    [InlineData(SafetyClass.X1, SafetyClass.Y4, "120", false)]
    [InlineData(SafetyClass.X2, SafetyClass.X1, "440", true)]
    public void A_class_is_not_taken_above_the_voltages_that_it_is_for(SafetyClass original, SafetyClass offered, string volts, bool may) =>
        Assert.Equal(may, SafetyCapacitor.MayReplace(original, offered, Exact.Of(volts)).Value);

    // In a place of a class whose voltage nobody wrote, only what bears the highest that the class allows is safe: a Y2 place ends at 300
    // V, an X place nowhere.
    [Theory]
    [InlineData(SafetyClass.Y2, SafetyClass.Y1, "300", true)]
    [InlineData(SafetyClass.Y2, SafetyClass.Y2, "300", true)]
    [InlineData(SafetyClass.Y2, SafetyClass.Y2, "250", false)]
    [InlineData(SafetyClass.Y3, SafetyClass.Y2, "250", true)]
    [InlineData(SafetyClass.X2, SafetyClass.X2, "310", false)]
    [InlineData(SafetyClass.X2, SafetyClass.Y2, "300", false)]
    public void A_place_of_a_class_and_no_voltage_takes_only_what_bears_any(
        SafetyClass original,
        SafetyClass offered,
        string volts,
        bool may
    ) => Assert.Equal(may, SafetyCapacitor.MayReplaceUnseen(original, offered, Exact.Of(volts)).Value);

    [Fact]
    public void A_place_of_a_class_waits_for_its_mains_voltage() =>
        Assert.Equal(
            "not for this place until its mains voltage is written",
            SafetyCapacitor.MayReplaceUnseen(SafetyClass.X2, SafetyClass.X2, 310m).Arithmetic.Text
        );

    // Y2 ends at 300 V whatever is printed: 400 V on such a part is its rating across the line.
    [Fact]
    public void A_part_bears_no_more_than_its_class_is_for() => Assert.Equal(300m, SafetyCapacitor.Bears(SafetyClass.Y2, 400m));

    [Fact]
    public void A_class_without_an_impulse_test_has_no_impulse() =>
        Assert.Equal("class X3 has no impulse test", SafetyCapacitor.ImpulseKilovolts(SafetyClass.X3, 0.0000001m).Refusal);

    // One disc is marked X1 400 V~ and Y2 250 V~ at once: KEMET safety disc capacitors, tutorial, slide 12, as quoted. What each class may
    // stand for is the row of that class.
    [Theory]
    [InlineData(SafetyClass.X1, SafetyClass.X1Y2, true)]
    [InlineData(SafetyClass.X2, SafetyClass.X1Y2, true)]
    [InlineData(SafetyClass.X3, SafetyClass.X1Y2, true)]
    [InlineData(SafetyClass.Y2, SafetyClass.X1Y2, true)]
    [InlineData(SafetyClass.Y1, SafetyClass.X1Y2, false)]
    [InlineData(SafetyClass.Y1, SafetyClass.X1Y1, true)]
    [InlineData(SafetyClass.Y2, SafetyClass.X1Y4, false)]
    [InlineData(SafetyClass.Y3, SafetyClass.X1Y4, false)]
    [InlineData(SafetyClass.X2, SafetyClass.X1Y4, true)]
    [InlineData(SafetyClass.X1, SafetyClass.X2Y3, false)]
    [InlineData(SafetyClass.Y2, SafetyClass.X2Y3, false)]
    [InlineData(SafetyClass.None, SafetyClass.X1Y2, true)]
    [InlineData(SafetyClass.X1Y2, SafetyClass.X1, false)]
    [InlineData(SafetyClass.X1Y2, SafetyClass.X2, false)]
    [InlineData(SafetyClass.X1Y2, SafetyClass.Y2, true)]
    [InlineData(SafetyClass.X1Y2, SafetyClass.Y1, true)]
    [InlineData(SafetyClass.X1Y2, SafetyClass.Y3, false)]
    [InlineData(SafetyClass.X1Y2, SafetyClass.X1Y2, true)]
    [InlineData(SafetyClass.X1Y2, SafetyClass.X1Y1, true)]
    [InlineData(SafetyClass.X1Y2, SafetyClass.X2Y2, true)]
    [InlineData(SafetyClass.X1Y2, SafetyClass.X1Y4, false)]
    [InlineData(SafetyClass.X1Y2, SafetyClass.None, false)]
    public void A_part_with_two_classes_stands_where_either_may_and_a_place_of_two_asks_for_both(
        SafetyClass original,
        SafetyClass offered,
        bool may
    ) => Assert.Equal(may, SafetyCapacitor.MayReplace(original, offered).Value);

    // A Y serves an X place within the voltages that its class is for; across the line the X of a part with two is the one that stands
    // there.
    [Theory]
    [InlineData(SafetyClass.X2, SafetyClass.Y2, "275", true)]
    [InlineData(SafetyClass.X2, SafetyClass.Y2, "310", false)]
    [InlineData(SafetyClass.X2, SafetyClass.X1Y2, "310", true)]
    [InlineData(SafetyClass.Y2, SafetyClass.X1Y2, "310", false)]
    [InlineData(SafetyClass.X1Y2, SafetyClass.X1Y2, "310", false)]
    public void Each_of_two_classes_has_its_own_voltages(SafetyClass original, SafetyClass offered, string volts, bool may) =>
        Assert.Equal(may, SafetyCapacitor.MayReplace(original, offered, Exact.Of(volts)).Value);

    [Theory]
    [InlineData("X1/Y2", SafetyClass.X1Y2)]
    [InlineData("X1Y2", SafetyClass.X1Y2)]
    [InlineData("Y2/X1", SafetyClass.X1Y2)]
    [InlineData("Y2X1", SafetyClass.X1Y2)]
    [InlineData("X1-Y1", SafetyClass.X1Y1)]
    [InlineData("Y2", SafetyClass.Y2)]
    [InlineData("X1X2", null)]
    [InlineData("Y1Y2", null)]
    [InlineData("X1/Y", null)]
    [InlineData("", null)]
    public void Two_classes_are_read_both_ways_round(string print, SafetyClass? known) => Assert.Equal(known, SafetyClasses.Read(print));

    [Fact]
    public void Every_class_is_one_across_the_line_or_one_to_earth_or_both() =>
        Assert.All(SafetyClasses.Words.Values, safety =>
            Assert.Equal(
                safety.Name(),
                string.Join(
                    '/',
                    new[] { safety.AcrossTheLine(), safety.ToEarth() }.Where(one => one != SafetyClass.None).Select(one => one.ToString())
                )
            )
        );

    [Fact]
    public void Two_classes_have_two_impulses() =>
        Assert.Equal(
            "X1/Y2 are two classes, each with an impulse of its own: ask for one",
            SafetyCapacitor.ImpulseKilovolts(SafetyClass.X1Y2, 0.0000000022m).Refusal
        );
}
