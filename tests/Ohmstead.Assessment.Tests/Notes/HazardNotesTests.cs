using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Tests.Notes;

/// <summary>Information only; defer to local codes and licensed practice.</summary>
public sealed class HazardNotesTests
{
    // 100 µF without a mark of its tolerance may be 150 µF (common practice): 150 µF at 450 V hold 15.2 J. Through 220 kohm to 60 V: 33 s x
    // ln 7.5 = 66.49 s, 450² / 220 000 = 0.92 W. By hand calculator. SV14: 15 % of 450 V, 67.5 V, may come back.
    [Fact]
    public void A_reservoir_tells_its_energy_its_time_and_the_power_of_its_bleeder()
    {
        var notes = Figures("voltage: 450 V, capacitance: 100 µF, bleed: 220 kΩ");
        Assert.Contains(
            "100 µF (which may be 150 µF) at 450 V holds 15.2 J, and may get back 67.5 V by itself in the days after",
            notes[0].Says,
            StringComparison.Ordinal
        );
        Assert.Contains("it needs 67 s to fall to 60 V", notes[1].Says, StringComparison.Ordinal);
        Assert.Contains("takes 920 mW at the first moment", notes[1].Says, StringComparison.Ordinal);
        // The 60 V are those of a text that was read, not of memory.
        Assert.Contains("60 V d.c.: IEC 60065", notes[1].Source, StringComparison.Ordinal);
        Assert.DoesNotContain("from memory", notes[1].Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_bleeder_no_time_is_told() => Assert.Single(Figures("voltage: 450 V, capacitance: 100 µF"));

    [Fact]
    public void A_hazard_without_figures_has_none() => Assert.Empty(Figures("note: unknown"));

    // 60 V d.c., IEC 60065 as quoted; 42.4 V d.c., IEC 60335-1 8.1.4 as quoted; 10 J at 100 V, Lawrence Berkeley National Laboratory. 470
    // µF at 400 V holds 37.6 J, and at 24 V 0.14 J; 1 F at 24 V holds 288 J, and 100 J under 100 V burn.
    [Fact]
    public void A_figure_above_a_limit_names_standard_and_clause_and_one_below_says_nothing()
    {
        var above = HazardNotes.Above(One("voltage: 400 V, capacitance: 470 µF"));
        Assert.Contains(
            "60 V d.c., hazardous live above (IEC 60065, as quoted in the owner's manual of the Toshiba 32W1333, hazardous live)",
            above
        );
        Assert.Contains(above, limit => limit.StartsWith("42.4 V d.c., live above", StringComparison.Ordinal));
        Assert.Contains(above, limit => limit.StartsWith("10 J, capacitors at 100 V or more", StringComparison.Ordinal));
        Assert.DoesNotContain(above, limit => limit.Contains("from memory", StringComparison.Ordinal));
        Assert.Empty(HazardNotes.Above(One("voltage: 24 V, capacitance: 470 µF")));
        Assert.StartsWith(
            "100 J, capacitors under 100 V",
            Assert.Single(HazardNotes.Above(One("voltage: 24 V, capacitance: 1 F"))),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Every_hazard_that_a_record_can_name_has_its_cautions() =>
        Assert.All(Enum.GetValues<HazardKind>(), kind => Assert.NotEmpty(HazardNotes.Cautions(kind)));

    // 470 µF -10/+50 % may be 705 µF: at 400 V 56.4 J, through 10 kohm to 60 V 7.05 s x ln (400 / 60) = 13.37 s. By hand calculator.
    [Theory]
    [InlineData("voltage: 400 V, capacitance: 470 µF, bleed: 10 kΩ", "470 µF (which may be 705 µF) at 400 V holds 56.4 J")]
    [InlineData("voltage: 400 V, bleed: 10 kΩ", "470 µF (which may be 705 µF) at 400 V holds 56.4 J")]
    [InlineData("bleed: 10 kΩ", "470 µF (which may be 705 µF) at the 400 V of its place holds 56.4 J")]
    public void The_energy_is_that_of_the_highest_capacitance_that_the_marking_allows(string hazard, string says)
    {
        var notes = HazardNotes.Figures(
            At(
                "kind: aluminium electrolytic, capacitance: 470 µF, tolerance: -10/+50 %, rated_voltage: 450 V, working_voltage: 400 V",
                hazard
            )
        );
        Assert.StartsWith(says, notes[0].Says, StringComparison.Ordinal);
        Assert.Contains("it needs 14 s to fall to 60 V", notes[1].Says, StringComparison.Ordinal);
    }

    // A lot of 680 µF ±20 % was put in the place of 470 µF -10/+50 %: 816 µF are more than 705 µF. At 400 V 65.3 J, by hand calculator.
    [Fact]
    public void What_was_fitted_counts_where_it_holds_more()
    {
        var board = Worked.Board(
            "parts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: -10/+50 %, rated_voltage: 450 V, "
                + "working_voltage: 400 V }\nhazards:\n  - { hazard: charged capacitor, at: C1, voltage: 400 V }\n"
                + "bench:\n  - date: 2026-03-14\n    by: RK\n    work:\n      - { part: C1, did: replaced, lot: L-001, polarity: "
                + "schematic }",
            stock: "lots:\n  - { lot: L-001, kind: aluminium electrolytic, capacitance: 680 µF, tolerance: ±20 %, rated_voltage: 450 V, "
                + "quantity: 5 }"
        );
        Assert.StartsWith(
            "680 µF (which may be 816 µF) at 400 V holds 65.3 J",
            HazardNotes.Figures(Assert.Single(board.Hazards))[0].Says,
            StringComparison.Ordinal
        );
    }

    // The same of a design's page: nobody has fitted anything there.
    [Fact]
    public void A_design_tells_its_hazards_with_the_parts_of_its_own_list()
    {
        var board = Worked.Board(
            "design: tide-logger",
            design: "parts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: -10/+50 %, rated_voltage: 450 "
                + "V, working_voltage: 400 V }\nhazards:\n  - { hazard: charged capacitor, at: C1 }"
        );
        var own = Assert.Single(AssessedHazard.OfDesign(Assert.IsType<Records.Model.DesignFile>(board.Design)));
        Assert.StartsWith(
            "470 µF (which may be 705 µF) at the 400 V of its place holds 56.4 J",
            HazardNotes.Figures(own)[0].Says,
            StringComparison.Ordinal
        );
    }

    // Without a working voltage the rated one is what it may be charged to; a film part without a tolerance may have a fifth more: common
    // practice.
    [Fact]
    public void A_part_that_says_no_more_is_taken_as_charged_to_its_rating() =>
        Assert.StartsWith(
            "10 µF (which may be 12 µF) at the 630 V of its place holds 2.38 J",
            HazardNotes.Figures(At("kind: polyester film, capacitance: 10 µF, rated_voltage: 630 V", "note: film"))[0].Says,
            StringComparison.Ordinal
        );

    // Glass has no tolerance printed on it. 25 kV on 1 nF: 0.3125 J (SV35).
    [Fact]
    public void A_picture_tube_tells_that_its_charge_comes_back_within_minutes()
    {
        var note = HazardNotes.Figures(
            Assert.Single(Worked.Board("hazards:\n  - { hazard: picture tube, voltage: 25 kV, capacitance: 1 nF }").Hazards)
        )[0];
        Assert.StartsWith("1 nF at 25 kV holds 313 mJ; the charge comes back within minutes", note.Says, StringComparison.Ordinal);
    }

    // IEC 60335-1, 8.1.4, as quoted: 42.4 V d.c. is stricter than the 60 V of the others.
    [Fact]
    public void A_household_limit_is_told_where_the_others_are_silent()
    {
        var above = HazardNotes.Above(One("voltage: 48 V, capacitance: 10 nF"));
        Assert.Contains(above, limit => limit.StartsWith("42.4 V d.c., live above", StringComparison.Ordinal));
        Assert.DoesNotContain(above, limit => limit.StartsWith("60 V", StringComparison.Ordinal));
    }

    private static AssessedHazard At(string part, string hazard) =>
        Assert.Single(
            Worked.Board($"parts:\n  - {{ ref: C1, {part} }}\nhazards:\n  - {{ hazard: charged capacitor, at: C1, {hazard} }}").Hazards
        );

    private static IReadOnlyList<WorkedNote> Figures(string hazard) => HazardNotes.Figures(One(hazard));

    private static AssessedHazard One(string hazard) =>
        Assert.Single(Worked.Board($"hazards:\n  - {{ hazard: charged capacitor, {hazard} }}").Hazards);
}
