using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Tests.Capacitors;

public sealed class SafetyCapacitorTests
{
    // Up = Up0 / sqrt(C / 1 µF) above 1 µF: IEC 60384-14, quoted at techoverflow.net 2019-08-07.
    [Theory]
    [Trait("CheckValue", "CV25")]
    [InlineData(SafetyClass.X2, "0.0000022", 1.685)]
    [InlineData(SafetyClass.X1, "0.0000047", 1.845)]
    [InlineData(SafetyClass.X2, "0.000001", 2.5)]
    [InlineData(SafetyClass.Y1, "0.0000022", 8.0)]
    public void The_impulse_of_a_large_class_x_part_is_smaller(SafetyClass safetyClass, string farads, double kilovolts) =>
        Assert.Equal(kilovolts, SafetyCapacitor.ImpulseKilovolts(safetyClass, Exact.Of(farads)).Value.Value, 1e-3);

    // I = 2 pi f C V, by hand calculator.
    [Theory]
    [Trait("CheckValue", "CV26")]
    [InlineData("0.0000000047", "250", "50", 0.369)]
    [InlineData("0.0000000022", "230", "50", 0.159)]
    [InlineData("0.0000000047", "120", "60", 0.213)]
    public void A_class_y_part_sends_a_current_into_the_chassis(string farads, string volts, string hertz, double milliamperes) =>
        Assert.Equal(milliamperes,
            (double)SafetyCapacitor.TouchMilliamperes(Exact.Of(farads), Exact.Of(volts), Exact.Of(hertz)).Value.Value, 1e-3);

    // Order of classes: IEC 60384-14, from memory.
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
    public void A_class_is_kept_or_raised_and_an_x_never_stands_for_a_y(SafetyClass original, SafetyClass offered, bool may) =>
        Assert.Equal(may, SafetyCapacitor.MayReplace(original, offered).Value);

    [Fact]
    public void A_class_without_an_impulse_test_has_no_impulse() =>
        Assert.Equal("class X3 has no impulse test", SafetyCapacitor.ImpulseKilovolts(SafetyClass.X3, 0.0000001m).Refusal);
}
