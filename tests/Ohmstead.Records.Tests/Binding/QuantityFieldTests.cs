using Ohmstead.Records.Findings;

namespace Ohmstead.Records.Tests.Binding;

/// <summary>Quantities as they stand in a record: the value read, or the very character that stops the reading.</summary>
public sealed class QuantityFieldTests
{
    [Theory]
    [InlineData("4k7", "4700")]
    [InlineData("4R7", "4.7")]
    [InlineData("1M5", "1500000")]
    [InlineData("4.7 kΩ", "4700")]
    [InlineData("4.7 k\u2126", "4700")]
    [InlineData("4.7 kohm", "4700")]
    [InlineData("4.7K", "4700")]
    [InlineData("4700 R", "4700")]
    [InlineData("4700\u00A0Ω", "4700")]
    [InlineData("4700\u2009Ω", "4700")]
    [InlineData(".5 Ω", "0.5")]
    [InlineData("'4k7'", "4700")]
    [InlineData("\"4.7 k\\u03A9\"", "4700")]
    public void A_resistance_is_read_as_the_trade_writes_it(string text, string ohms)
    {
        var reading = Reads.Board(WithResistance(text));

        Assert.Empty(reading.Findings);
        Assert.Equal(
            decimal.Parse(ohms, System.Globalization.CultureInfo.InvariantCulture),
            reading.File?.Parts[0].Values.Resistance?.Value.Value
        );
    }

    // The text begins at column 15 of line 7.
    [Theory]
    [InlineData("4.7", RecordChecks.QuantityUnreadable, 15)]
    [InlineData("NaN", RecordChecks.QuantityUnreadable, 15)]
    [InlineData("inf", RecordChecks.QuantityUnreadable, 15)]
    [InlineData("OL", RecordChecks.QuantityUnreadable, 15)]
    [InlineData("open", RecordChecks.QuantityUnreadable, 15)]
    [InlineData("-5 Ω", RecordChecks.QuantityUnreadable, 15)]
    [InlineData("-0 Ω", RecordChecks.QuantityUnreadable, 15)]
    [InlineData("+5 Ω", RecordChecks.QuantityUnreadable, 15)]
    [InlineData("5. Ω", RecordChecks.QuantityUnreadable, 16)]
    [InlineData("4,7 kΩ", TextChecks.DecimalComma, 16)]
    [InlineData("1O0 Ω", RecordChecks.QuantityUnreadable, 16)]
    [InlineData("l00 Ω", RecordChecks.QuantityUnreadable, 15)]
    [InlineData("1e400 Ω", RecordChecks.QuantityUnreadable, 16)]
    [InlineData("0x10 Ω", RecordChecks.QuantityUnreadable, 15)]
    [InlineData("1_000 Ω", RecordChecks.QuantityUnreadable, 16)]
    [InlineData("4.7 kF", RecordChecks.QuantityUnreadable, 19)]
    [InlineData("'4.7 kF'", RecordChecks.QuantityUnreadable, 15)]
    public void What_cannot_be_read_is_reported_once_at_its_character(string text, string check, int column)
    {
        var finding = Assert.Single(Reads.Findings("board", WithResistance(text)));

        Assert.Equal((check, 7, column), (finding.Check, finding.Place.Line, finding.Place.Column));
    }

    [Fact]
    public void A_look_alike_is_named_at_its_own_column_though_signs_outside_the_basic_plane_stand_before_it()
    {
        var finding = Assert.Single(
            Reads.Findings(
                "board",
                "---\nboard: SP-0007\ntitle: x\nparts:\n  - { note: \U0001F50C, ref: R3, kind: metal film resistor, resistance: 4.7 "
                    + "\u039A\u03A9 }\n---\n"
            )
        );

        Assert.Equal((5, 68), (finding.Place.Line, finding.Place.Column));
    }

    [Fact]
    public void Thirty_digits_are_never_rounded_in_silence() =>
        Assert.Equal(
            RecordChecks.QuantityUnreadable,
            Assert.Single(Reads.Findings("board", WithResistance("1.23456789012345678901234567890 Ω"))).Check
        );

    [Fact]
    public void Sixty_thousand_digits_are_refused_with_a_short_message()
    {
        var finding = Assert.Single(Reads.Findings("board", WithResistance(new string('7', 60_000))));

        Assert.Equal(RecordChecks.QuantityUnreadable, finding.Check);
        Assert.InRange(finding.Message.Length, 10, 200);
    }

    [Theory]
    [InlineData("tolerance: -10/+50 %", -0.1, 0.5)]
    [InlineData("tolerance: 20%", -0.2, 0.2)]
    [InlineData("tolerance: J", -0.05, 0.05)]
    public void A_tolerance_is_read_with_its_sides(string entry, double lower, double upper)
    {
        var tolerance = Reads
            .Board($"---\nboard: SP-0007\ntitle: x\nparts:\n  - {{ ref: R3, kind: metal film resistor, resistance: 4k7, {entry} }}\n---\n")
            .File?.Parts[0]
            .Values.Tolerance?.Value;

        Assert.Equal(((decimal)lower, (decimal)upper), (tolerance?.Lower, tolerance?.Upper));
    }

    [Theory]
    [InlineData("-120/+20 %")]
    [InlineData("5")]
    [InlineData("about 5 %")]
    public void A_tolerance_that_cannot_be_read_is_reported_once(string text)
    {
        var finding = Assert.Single(
            Reads.Findings(
                "board",
                $"---\nboard: SP-0007\ntitle: x\nparts:\n  - {{ ref: R3, kind: metal film resistor, resistance: 4k7, tolerance: {text} "
                    + "}\n---\n"
            )
        );

        Assert.Equal((RecordChecks.ToleranceUnreadable, 5), (finding.Check, finding.Place.Line));
    }

    private static string WithResistance(string text) =>
        $"---\nboard: SP-0007\ntitle: x\nparts:\n- ref: R3\n  kind: metal film resistor\n  resistance: {text}\n---\n";

    [Fact]
    public void A_comma_that_cuts_a_number_in_two_is_told_once()
    {
        var findings = Reads.Findings(
            "board",
            "---\nboard: B1\ntitle: amplifier\nparts:\n  - { ref: C2, kind: tantalum, capacitance: 2,046 µF, rated_voltage: 25 V }\n---\n"
        );

        var finding = Assert.Single(findings);
        Assert.Equal((TextChecks.DecimalComma, 5, 46), (finding.Check, finding.Place.Line, finding.Place.Column));
    }
}
