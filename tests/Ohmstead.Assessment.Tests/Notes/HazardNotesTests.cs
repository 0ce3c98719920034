using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Tests.Notes;

/// <summary>Information only; defer to local codes and licensed practice.</summary>
public sealed class HazardNotesTests
{
    // 100 µF at 450 V: 10.1 J. Through 220 kohm to 60 V: 22 s x ln 7.5 = 44.33 s, 450² / 220 000 = 0.92 W. By hand calculator.
    [Fact]
    public void A_reservoir_tells_its_energy_its_time_and_the_power_of_its_bleeder()
    {
        var notes = Figures("voltage: 450 V, capacitance: 100 µF, bleed: 220 kΩ");
        Assert.Contains("holds 10.1 J", notes[0].Says, StringComparison.Ordinal);
        Assert.Contains("it needs 45 s to fall to 60 V", notes[1].Says, StringComparison.Ordinal);
        Assert.Contains("takes 920 mW at the first moment", notes[1].Says, StringComparison.Ordinal);
        Assert.Contains("IEC 62368-1:2018", notes[1].Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_bleeder_no_time_is_told() => Assert.Single(Figures("voltage: 450 V, capacitance: 100 µF"));

    [Fact]
    public void A_hazard_without_figures_has_none() => Assert.Empty(Figures("note: unknown"));

    // 60 V d.c. and 120 V d.c., IEC 62368-1:2018 table 4; 20 J, IEC 60950-1; all from memory. 470 µF at 400 V holds 37.6 J.
    [Fact]
    public void A_figure_above_a_limit_names_standard_and_clause_and_one_below_says_nothing()
    {
        var above = HazardNotes.Above(One("voltage: 400 V, capacitance: 470 µF"));
        Assert.Contains("120 V d.c., ES2 (IEC 62368-1:2018, table 4 (from memory))", above);
        Assert.Contains(above, limit => limit.StartsWith("20 J, hazardous energy", StringComparison.Ordinal));
        Assert.Empty(HazardNotes.Above(One("voltage: 24 V, capacitance: 470 µF")));
    }

    [Fact]
    public void Every_hazard_that_a_record_can_name_has_its_cautions() => Assert.All(Enum.GetValues<HazardKind>(), kind => Assert.NotEmpty(HazardNotes.Cautions(kind)));

    private static IReadOnlyList<WorkedNote> Figures(string hazard) => HazardNotes.Figures(One(hazard));

    private static Records.Model.Hazard One(string hazard) => Assert.Single(Worked.Board($"hazards:\n  - {{ hazard: charged capacitor, {hazard} }}").Hazards).Hazard;
}
