using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Schemas;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Tests.Schemas;

public sealed class SchemaCheckTests
{
    private static readonly SchemaCheck Check = new();

    public static TheoryData<string> Names => [.. FileShapes.All.Select(file => file.SchemaName)];

    /// <summary>What stands in a good file, and what is put in its place.</summary>
    public static TheoryData<string, string, string> Slips =>
        new()
        {
            { "board", "board: SP-0007", "bord: SP-0007" },
            { "board", "board: SP-0007\n", "" },
            { "board", "title: Barograph servo amplifier\n", "" },
            { "board", "title: Barograph", "titel: Barograph" },
            { "board", "board: SP-0007", "board: SP 0007" },
            { "board", "board: SP-0007", "board: ../SP-0007" },
            { "board", "board: SP-0007", "board: ~" },
            { "board", "board: SP-0007", "board: \"\"" },
            { "board", "title: Barograph servo amplifier", "title:" },
            { "board", "title: Barograph servo amplifier", "title: [Barograph]" },
            { "board", "title: Barograph servo amplifier", "title: { text: Barograph }" },
            { "board", "design: barograph-servo", "design: [barograph-servo]" },
            { "board", "serial: 0412", "serial: null" },
            { "board", "serial: 0412", "serail: 0412" },
            { "board", "revision: C", "colour: C" },
            { "board", "made: 1978", "made: about 1978" },
            { "board", "made: 1978", "made: 12/05/1978" },
            { "board", "made: 1978", "made: 1978-5" },
            { "board", "format: 1", "format: one" },
            { "board", "format: 1", "format: 1.5" },
            { "board", "date: 2026-02,", "date: February," },
            { "board", "from: lookout hut store", "form: lookout hut store" },
            { "board", "arrived: { date: 2026-02, from: lookout hut store, complaint: pen drifts after an hour }", "arrived: by van" },
            { "board", "arrived: { date: 2026-02, from: lookout hut store, complaint: pen drifts after an hour }", "arrived: [van]" },
            { "board", "hours_per_year: 900", "hours_per_year: many" },
            { "board", "temperature: 38 °C", "temperature: 38" },
            { "board", "temperature: 38 °C", "temperature: 38 V" },
            { "board", "temperature: 38 °C", "temperatur: 38 °C" },
            { "board", "ref: C12", "ref: C 12" },
            { "board", "{ ref: R3, kind", "{ kind" },
            { "board", "kind: carbon film resistor, ", "" },
            { "board", "kind: aluminium electrolytic", "kind: aluminum electrolytic" },
            { "board", "kind: aluminium electrolytic", "kind: [aluminium electrolytic]" },
            { "board", "capacitance: 470 µF", "capacitance: 470 mV" },
            { "board", "capacitance: 470 µF", "capacitance: 470" },
            { "board", "capacitance: 470 µF", "capacitance: much" },
            { "board", "tolerance: -10/+50 %", "tolerance: wide" },
            { "board", "tolerance: 5 %, power", "tolerance: 5, power" },
            { "board", "rated_voltage: 25 V", "rated_voltage: 25 VV" },
            { "board", "rated_voltage: 25 V", "rated_voltage: 25.V" },
            { "board", "loss_factor_limit: 0.14", "loss_factor_limit: 0.14 V" },
            { "board", "loss_factor_limit: 0.14", "loss_factor_limit: low" },
            { "board", "resistance: 4k7", "resistance: 4k7 V" },
            { "board", "power: 0.5 W", "power: half a watt" },
            { "board", "low: 380 µF", "low: ok" },
            { "board", "required: yes", "required: perhaps" },
            { "board", "measures: hours", "measures: minutes" },
            { "board", "hazard: charged capacitor", "hazard: charged capacitors" },
            { "board", "bleed: 220 kΩ", "bleed: 220 kF" },
            { "board", "date: 2026-03-14", "date: 2026-3-14" },
            { "board", "date: 2026-03-14", "date: 2026-03" },
            { "board", "date: 2026-03-14", "date: 2026" },
            { "board", "  - date: 2026-03-14\n    by: RK", "  - by: RK" },
            { "board", "instrument: bridge-2", "instrument: bridge/2" },
            { "board", "severity: minor", "severity: slight" },
            { "board", "at: J3, what", "what" },
            { "board", "state: as found", "state: found" },
            { "board", "circuit: out", "circuit: Out" },
            { "board", "frequency: 120 Hz", "frequency: 120 s" },
            { "board", "esr: 1.4 Ω", "esr: { value: 1.4 Ω }" },
            { "board", "verdict: out", "verdict: bad" },
            { "board", "gain: 140", "gain: 140 V" },
            { "board", "- { part: Q1, gain: 140 }", "- Q1 140" },
            { "board", "polarity: [schematic, print]", "polarity: [schematic, guess]" },
            { "board", "polarity: [schematic, print]", "polarity: guess" },
            { "board", "polarity: [schematic, print]", "polarity: { by: guess }" },
            { "board", "did: cleaned", "did: clean" },
            { "board", "dry: 24 h", "dry: 24 fortnights" },
            { "board", "irreversible: no", "irreversible: never" },
            { "board", ", because: this family fails shorted", "" },
            { "board", "decision: replace", "decision: bin" },
            { "board", "result: pass", "result: passed" },
            {
                "board",
                "    proof:\n      - { point: +15V, voltage: 15.06 V, ripple: 4 mV }\n      - { point: soak, hours: 4, result: pass }",
                "    proof: { point: +15V, voltage: 15.06 V }"
            },
            { "board", "shows: the board from the front", "show: the board from the front" },
            { "board", "for: new pen motor belt, ", "" },
            { "board", "order: PO-12", "order: PO 12" },
            { "design", "design: barograph-servo\n", "" },
            { "design", "made: 1974-05", "made: 1974-13" },
            { "design", "nominal: 1 kHz", "nominal: high" },
            { "design", "what: dries out beside the regulator", "advice: measure" },
            { "design", "note: sheet 3 is missing", "note: [sheet 3]" },
            { "collection", "collection: Saltmarsh Point weather collection\n", "" },
            { "collection", "decision: guarded", "decision: strict" },
            { "collection", "look_every: 24 months", "look_every: 24" },
            { "collection", "invented: yes", "invented: YES!" },
            { "instruments", "id: bridge-2", "ID: bridge-2" },
            { "instruments", "valid: 12 months", "valid: a year" },
            { "instruments", "digits: 5", "digits: few" },
            { "instruments", "measures: capacitance", "measures: charge" },
            { "instruments", "note: none", "note: {}" },
            { "stock", "lot: L-031, kind", "kind" },
            { "stock", "rated_voltage: 35 V", "working_voltage: 35 V" },
            { "stock", "quantity: 10", "quantity: ten" },
            { "stock", "placed: 2026-03-16", "placed: last week" },
            { "stock", "line: 1, quantity: 2", "quantity: 2" },
            { "stock", "quantity: 9, kind", "kind" },
            { "stock", "kind: fuse, current: 250 mA", "kind: fuze, current: 250 mA" },
            { "stock", "date: 2026-03-30, line: 1", "date: 2026-03, line: 1" },
            { "stock", "date: 2026-03-30, line: 1", "date: 2026-03-30" },
            { "stock", "at_voltage: 35 V", "at_voltage: 35 W" },
            { "stock", "    came:\n      - { date: 2026-03-30, line: 1, quantity: 1, lot: L-031 }", "    came: none" },
        };

    [Theory]
    [MemberData(nameof(Names))]
    public void A_good_file_passes_the_reader_the_schema_and_another_validator(string name)
    {
        var root = Root(name, GoodRecords.Of(name));

        Assert.Empty(Reads.Findings(name, GoodRecords.Of(name)));
        Assert.Empty(Check.Check(Reads.PathOf(name), root, ShapeOf(name)));
        Assert.True(SecondOpinion.Accepts(name, root));
    }

    [Theory]
    [MemberData(nameof(Slips))]
    public void One_slip_gives_one_finding_on_the_same_line_from_reader_and_schema(string name, string written, string instead)
    {
        var good = GoodRecords.Of(name);
        Assert.Contains(written, good, StringComparison.Ordinal);
        var at = good.IndexOf(written, StringComparison.Ordinal);
        var text = string.Concat(good.AsSpan(0, at), instead, good.AsSpan(at + written.Length));
        var root = Root(name, text);

        var read = Assert.Single(Reads.Findings(name, text));
        var refused = Assert.Single(Check.Check(Reads.PathOf(name), root, ShapeOf(name)));

        Assert.Equal(read.Place.Line, refused.Place.Line);
        Assert.Equal(RecordChecks.SchemaRefused, refused.Check);
        Assert.False(SecondOpinion.Accepts(name, root));
    }

    [Fact]
    public void A_refused_value_is_named_at_its_line_and_column_with_what_belongs_there()
    {
        var text =
            "---\nboard: SP-0007\ntitle: Barograph servo amplifier\nbench:\n  - date: 2026-03-14\n    readings:\n      - { part: C12, "
            + "esr: 1.4 V }\n---\n";

        var finding = Assert.Single(Check.Check("boards/SP-0007.md", Root("board", text), FileShapes.Board));

        Assert.Equal("boards/SP-0007.md:7:27", finding.Place.ToString());
        Assert.Equal("the schema refuses this: the text after 'esr' has another form than expected", finding.Message);
        Assert.Equal("write what belongs here: Equivalent series resistance read", finding.NextStep);
    }

    [Fact]
    public void A_shape_that_is_no_file_has_no_schema() =>
        Assert.Throws<ArgumentException>(() => Check.Check("x", Root("collection", "collection: Saltmarsh Point\n"), PartShape.Shape));

    [Fact]
    public void A_schema_of_an_unknown_name_is_not_carried() => Assert.Throws<ArgumentException>(() => SchemaFiles.Read("parts"));

    private static Shape ShapeOf(string name) => FileShapes.All.Single(file => file.SchemaName == name).Shape;

    private static MappingNode Root(string name, string text) => Assert.IsType<MappingNode>(Reads.Nodes(name, text).Root);
}
