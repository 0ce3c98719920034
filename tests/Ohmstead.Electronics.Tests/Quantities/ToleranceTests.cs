using System.Globalization;
using CsCheck;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Quantities;

public class ToleranceTests
{
    [Theory]
    [InlineData("20 %", "-0.2", "0.2", "±20 %")]
    [InlineData("20%", "-0.2", "0.2", "±20 %")]
    [InlineData("±20 %", "-0.2", "0.2", "±20 %")]
    [InlineData("± 20 %", "-0.2", "0.2", "±20 %")]
    [InlineData("+-20 %", "-0.2", "0.2", "±20 %")]
    [InlineData("+/-20 %", "-0.2", "0.2", "±20 %")]
    [InlineData("-10/+50 %", "-0.1", "0.5", "-10/+50 %")]
    [InlineData("-20/+80 %", "-0.2", "0.8", "-20/+80 %")]
    [InlineData("+80/-20 %", "-0.2", "0.8", "-20/+80 %")]
    [InlineData("-10 % / +50 %", "-0.1", "0.5", "-10/+50 %")]
    [InlineData("0/+100 %", "0", "1", "0/+100 %")]
    [InlineData("-0/+100 %", "0", "1", "0/+100 %")]
    [InlineData("0.5 %", "-0.005", "0.005", "±0.5 %")]
    public void A_relative_tolerance_keeps_its_two_sides(string text, string lower, string upper, string canonical)
    {
        var tolerance = Tolerance.Parse(text, Dimension.Capacitance).Value;
        Assert.Equal((Decimal(lower), Decimal(upper), true), (tolerance.Lower, tolerance.Upper, tolerance.IsRelative));
        Assert.Equal(canonical, tolerance.ToString());
    }

    [Theory]
    [InlineData("±0.5 pF")]
    [InlineData("±0.5pF")]
    [InlineData("0.5 pF")]
    public void An_absolute_tolerance_has_the_unit_of_its_value(string text)
    {
        var tolerance = Tolerance.Parse(text, Dimension.Capacitance).Value;
        Assert.Equal(Tolerance.Absolute(-0.5e-12m, 0.5e-12m, Dimension.Capacitance), tolerance);
        Assert.Equal("±500 mV", Tolerance.Parse("0.5 V", Dimension.Voltage).Value.ToString());
    }

    [Theory]
    [InlineData("-120/+20 %", ParseFaultKind.OutOfRange)]
    [InlineData("150 %", ParseFaultKind.OutOfRange)]
    [InlineData("20", ParseFaultKind.UnitMissing)]
    [InlineData("-20 %", ParseFaultKind.NotUnderstood)]
    [InlineData("+10/+20 %", ParseFaultKind.NotUnderstood)]
    [InlineData("10/20 %", ParseFaultKind.NotUnderstood)]
    [InlineData("±2 Ω", ParseFaultKind.WrongDimension)]
    [InlineData("2,5 %", ParseFaultKind.Comma)]
    [InlineData("±", ParseFaultKind.NotUnderstood)]
    [InlineData("-/+ %", ParseFaultKind.NotUnderstood)]
    [InlineData("-10/", ParseFaultKind.NotUnderstood)]
    [InlineData("", ParseFaultKind.Empty)]
    public void A_tolerance_that_cannot_be_is_a_fault(string text, ParseFaultKind kind) =>
        Assert.Equal(kind, Tolerance.Parse(text, Dimension.Capacitance).Fault?.Kind);

    [Theory]
    [InlineData("+20 %", "has one side only", null)]
    [InlineData("-20 %", "has one side only", null)]
    [InlineData("+50%-10%", "has no / between its two sides", "+50%/-10%")]
    [InlineData("+50-10", "has no / between its two sides", null)]
    public void A_side_that_stands_alone_is_told_from_two_without_a_stroke(string text, string message, string? next)
    {
        var fault = Tolerance.Parse(text, Dimension.Capacitance).Fault!;
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
        Assert.Equal(next, fault.NextStep);
    }

    [Fact]
    public void A_look_alike_minus_is_named_and_the_whole_text_offered() =>
        Assert.Equal(
            (ParseFaultKind.LookAlike, "-10/+50 %"),
            (
                Tolerance.Parse("\u221210/+50 %", Dimension.Capacitance).Fault!.Kind,
                Tolerance.Parse("\u221210/+50 %", Dimension.Capacitance).Fault!.NextStep
            )
        );

    [Fact]
    public void A_percentage_of_nothing_is_a_fault() =>
        Assert.Equal(
            ParseFaultKind.OutOfRange,
            Tolerance.Parse("5 %", Dimension.Resistance, new Quantity(0m, Dimension.Resistance)).Fault?.Kind
        );

    [Fact]
    public void A_reading_exactly_on_its_limit_is_inside()
    {
        var limits = Tolerance.Relative(0.1m).Apply(Microfarads(100m));
        Assert.True(limits.Contains(Microfarads(110m)));
        Assert.True(limits.Contains(Microfarads(90m)));
        Assert.False(limits.Contains(Microfarads(110.0000001m)));
        Assert.False(limits.Contains(Microfarads(89.9999999m)));
        Assert.False(limits.Contains(new Quantity(0.0001m, Dimension.Resistance)));
    }

    [Fact]
    public void A_capacitor_has_no_lower_limit_below_nothing()
    {
        var limits = Tolerance.Absolute(-1e-12m, 1e-12m, Dimension.Capacitance).Apply(new Quantity(0.5e-12m, Dimension.Capacitance));
        Assert.Equal(new Interval(null, new Quantity(1.5e-12m, Dimension.Capacitance)), limits);
        Assert.Equal("up to 1.5 pF", limits.ToString());
    }

    [Fact]
    public void A_negative_rail_has_its_limits_in_order()
    {
        var limits = Tolerance.Relative(0.05m).Apply(new Quantity(-12m, Dimension.Voltage));
        Assert.Equal("-12.6 V … -11.4 V", limits.ToString());
    }

    [Fact]
    public void A_wider_tolerance_never_excludes_what_a_narrower_one_contains() =>
        Gen.Select(Gen.Int[1, 100_000], Gen.Int[0, 1000], Gen.Int[0, 1000], Gen.Int[1, 200_000])
            .Sample(
                (nominal, narrow, more, reading) =>
                {
                    var inNarrow = Tolerance.Relative(narrow / 1000m).Apply(Microfarads(nominal)).Contains(Microfarads(reading));
                    var inWide = Tolerance.Relative((narrow + more) / 1000m).Apply(Microfarads(nominal)).Contains(Microfarads(reading));
                    return !inNarrow || inWide;
                }
            );

    [Fact]
    public void The_unit_a_reading_is_written_in_does_not_change_its_verdict() =>
        Gen.Select(Gen.Int[1, 10_000], Gen.Int[0, 999], Gen.Int[1, 20_000])
            .Sample(
                (nominal, permille, reading) =>
                {
                    var limits = Tolerance.Relative(permille / 1000m).Apply(Microfarads(nominal));
                    var number = reading.ToString(CultureInfo.InvariantCulture);
                    var micro = QuantityText.Parse($"{number} µF", Dimension.Capacitance).Value;
                    var nano = QuantityText.Parse($"{number}000 nF", Dimension.Capacitance).Value;
                    var milli = QuantityText
                        .Parse(
                            $"{(reading / 1000m).ToString(CultureInfo.InvariantCulture)} mF",
                            Dimension.Capacitance,
                            UnitPrint.International
                        )
                        .Value;
                    return limits.Contains(micro) == limits.Contains(nano) && limits.Contains(micro) == limits.Contains(milli);
                }
            );

    [Fact]
    public void What_a_tolerance_prints_is_read_back_as_the_same_tolerance() =>
        Gen.Select(Gen.Int[0, 1000], Gen.Int[0, 3000])
            .Sample(
                (below, above) =>
                {
                    var relative = Tolerance.Relative(-below / 1000m, above / 1000m);
                    var absolute = Tolerance.Absolute(-below * 1e-13m, above * 1e-13m, Dimension.Capacitance);
                    return Tolerance.Parse(relative.ToString(), Dimension.Capacitance).Value == relative
                        && Tolerance.Parse(absolute.ToString(), Dimension.Capacitance).Value == absolute;
                }
            );

    [Fact]
    public void Any_text_gives_a_tolerance_or_a_fault_inside_it() =>
        Gen.Select(Gen.OneOf(Gen.String, Gen.String["0123456789.-+/±% pFJKM,"]), Gen.Enum<Dimension>())
            .Sample(
                (text, dimension) =>
                    Tolerance.Parse(text, dimension).Is(out _, out var fault)
                    || (fault.Offset >= 0 && fault.Length >= Math.Min(1, text.Length) && fault.Offset + fault.Length <= text.Length)
            );

    private static Quantity Microfarads(decimal value) => new(value * 0.000001m, Dimension.Capacitance);

    private static decimal Decimal(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
