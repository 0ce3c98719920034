using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Schemas;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Tests.Binding;

/// <summary>Readings as meters give them: what is no figure is read, and what the reader takes the schema takes.</summary>
public sealed class IndicationFieldTests
{
    [Theory]
    [InlineData("resistance: open", Measured.Resistance, IndicationKind.Open)]
    [InlineData("capacitance: short", Measured.Capacitance, IndicationKind.Short)]
    [InlineData("insulation: over range", Measured.Insulation, IndicationKind.OverRange)]
    [InlineData("esr: \"> 20 MΩ\"", Measured.Esr, IndicationKind.Above)]
    [InlineData("esr: '>= 20 MΩ'", Measured.Esr, IndicationKind.AtLeast)]
    [InlineData("esr: ≥ 20 MΩ", Measured.Esr, IndicationKind.AtLeast)]
    [InlineData("esr: < 0.1 Ω", Measured.Esr, IndicationKind.Below)]
    [InlineData("esr: <= 0.1 Ω", Measured.Esr, IndicationKind.AtMost)]
    [InlineData("esr: ≤ 0.1 Ω", Measured.Esr, IndicationKind.AtMost)]
    [InlineData("loss_factor: < 0.001", Measured.LossFactor, IndicationKind.Below)]
    [InlineData("gain: < 5", Measured.Gain, IndicationKind.Below)]
    [InlineData("gain: 140", Measured.Gain, IndicationKind.Exact)]
    [InlineData("ripple: < 2 mV", Measured.Ripple, IndicationKind.Below)]
    public void What_a_meter_shows_is_read_and_the_schema_takes_it(string value, Measured measured, IndicationKind kind)
    {
        var text = Reading(value);
        var reading = Reads.Board(text);
        Assert.Empty(reading.Findings);
        var read = Assert.Single(reading.File!.Bench[0].Readings[0].Values);
        Assert.Equal((measured, kind), (read.Measured, read.Value.Value.Kind));
        Assert.Equal(kind != IndicationKind.Exact, read.Exact is null);
        Assert.Empty(new SchemaCheck().Check(Reads.PathOf("board"), Reads.Nodes("board", text).Root!, FileShapes.Board));
    }

    [Theory]
    [InlineData("resistance: OL", "write resistance: over range")]
    [InlineData("resistance: ∞", "write resistance: over range")]
    [InlineData("resistance: shorted", "write resistance: short")]
    [InlineData("resistance: \"> 20\"", "write resistance: 20 mΩ, 20 Ω, 20 kΩ or 20 MΩ, each after >")]
    public void What_is_no_reading_is_told_with_what_to_write(string value, string next)
    {
        var finding = Assert.Single(Reads.Board(Reading(value)).Findings);
        Assert.Equal(RecordChecks.QuantityUnreadable, finding.Check);
        Assert.Equal(next, finding.NextStep);
    }

    [Fact]
    public void How_a_reading_was_taken_is_a_figure_alone() =>
        Assert.Equal(
            RecordChecks.QuantityUnreadable,
            Assert.Single(Reads.Board(Reading("esr: 1.4 Ω, frequency: \"> 100 Hz\"")).Findings).Check
        );

    private static string Reading(string value) =>
        $"---\nboard: SP-1\ntitle: Servo\nbench:\n  - date: 2026-03-14\n    readings:\n      - {{ part: C3, {value} }}\n---\n";
}
