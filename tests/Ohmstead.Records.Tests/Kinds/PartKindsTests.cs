using System.Reflection;
using Ohmstead.Records.Model;

namespace Ohmstead.Records.Tests.Kinds;

/// <summary>The table of kinds of part: what each row says, held against common knowledge of the trade.</summary>
public sealed class PartKindsTests
{
    private static readonly IReadOnlyList<PartKind> All = PartKinds.All.Values;

    // What a record may say for ever: a kind may join the list, none may leave it.
    [Fact]
    public void The_vocabulary_has_the_kinds_in_the_order_in_which_people_are_told_them() =>
        Assert.Equal(
            [
                "aluminium electrolytic",
                "bipolar electrolytic",
                "polymer electrolytic",
                "tantalum",
                "wet tantalum",
                "polyester film",
                "polypropylene film",
                "polystyrene film",
                "polycarbonate film",
                "paper",
                "metallised paper",
                "ceramic class 1",
                "ceramic class 2",
                "mica",
                "suppression capacitor",
                "trimmer capacitor",
                "carbon composition resistor",
                "carbon film resistor",
                "metal film resistor",
                "wire-wound resistor",
                "resistor network",
                "potentiometer",
                "thermistor",
                "inductor",
                "transformer",
                "diode",
                "zener diode",
                "bridge rectifier",
                "selenium rectifier",
                "germanium transistor",
                "transistor",
                "regulator",
                "integrated circuit",
                "memory",
                "valve",
                "crystal",
                "fuse",
                "relay",
                "switch",
                "lamp",
                "display",
                "cell",
                "motor",
                "connector",
                "other",
            ],
            Vocabulary.PartKinds
        );

    [Fact]
    public void Every_row_stands_in_the_list_once()
    {
        var rows = typeof(PartKinds)
            .GetProperties(BindingFlags.Public | BindingFlags.Static)
            .Where(property => property.PropertyType == typeof(PartKind))
            .Select(property => (PartKind)property.GetValue(null)!);
        Assert.Equal(rows.OrderBy(kind => kind.Name, StringComparer.Ordinal), All.OrderBy(kind => kind.Name, StringComparer.Ordinal));
    }

    [Fact]
    public void A_kind_is_known_by_its_name_and_says_it() =>
        Assert.All(All, kind => Assert.Equal((kind.Name, kind), (kind.ToString(), KindOf.Named(PartKinds.All.WordFor(kind)))));

    [Fact]
    public void Every_family_has_a_kind() => Assert.Equal(Enum.GetValues<PartFamily>(), All.Select(kind => kind.Family).Distinct().Order());

    // Nobody sends a fuse the current that it is marked with.
    [Fact]
    public void Every_kind_but_a_fuse_has_a_main_quantity_and_a_bench_measures_it() =>
        Assert.All(All.Where(kind => kind != PartKinds.Fuse), kind => Assert.Contains(kind.MainQuantity!.Value, kind.UsuallyMeasured));

    // The frequency of a crystal stands under the key that says at which frequency other parts were measured.
    [Fact]
    public void What_a_bench_measures_of_a_kind_its_readings_may_give() =>
        Assert.All(All.Where(kind => kind != PartKinds.Crystal), kind =>
            Assert.All(kind.UsuallyMeasured, measured => Assert.True(kind.MayGive(measured), $"{measured} of a {kind}"))
        );

    [Theory]
    [InlineData("carbon film resistor", Measured.Capacitance)]
    [InlineData("mica", Measured.Gain)]
    [InlineData("inductor", Measured.Leakage)]
    [InlineData("fuse", Measured.Esr)]
    public void A_quantity_that_a_kind_does_not_have_is_not_taken(string kind, Measured measured) =>
        Assert.False(KindOf.Named(kind).MayGive(measured));

    [Fact]
    public void Each_material_is_a_word_of_the_vocabulary_and_each_word_is_the_material_of_a_kind() =>
        Assert.Equal(
            Vocabulary.Materials.Order(StringComparer.Ordinal),
            All.SelectMany(kind => kind.Materials)
                .Select(material => material.Name)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal)
        );

    [Fact]
    public void Every_material_stands_in_the_list_once() =>
        Assert.Equal(
            typeof(PartMaterial)
                .GetProperties(BindingFlags.Public | BindingFlags.Static)
                .Where(property => property.PropertyType == typeof(PartMaterial))
                .Select(property => (PartMaterial)property.GetValue(null)!),
            PartMaterial.All.Values
        );

    // A kind that may be made of several is judged by the one that is written: a junction, a ceramic or a chemistry has its figures.
    [Theory]
    [InlineData(PartFamily.Capacitor)]
    [InlineData(PartFamily.Other)]
    [InlineData(PartFamily.Transistor)]
    public void A_material_has_the_figures_of_what_it_is(PartFamily family) =>
        Assert.All(All.Where(kind => kind.Family == family).SelectMany(kind => kind.Materials), material =>
            Assert.Single(new object?[] { material.Junction, material.Ageing, material.Cell }, figures => figures is not null)
        );

    // IEC 60617 and common practice: the symbol has a plus, or an arrow that points one way.
    [Fact]
    public void These_kinds_have_a_right_way_round() =>
        Assert.Equal(
            [
                "aluminium electrolytic",
                "polymer electrolytic",
                "tantalum",
                "wet tantalum",
                "diode",
                "zener diode",
                "bridge rectifier",
                "selenium rectifier",
                "cell",
            ],
            Names(kind => kind.HasRightWayRound)
        );

    [Fact]
    public void No_kind_has_a_right_way_round_and_is_made_for_both() =>
        Assert.Equal(["bipolar electrolytic"], Names(kind => kind.IsBipolar && !kind.HasRightWayRound));

    [Fact]
    public void Electrolytics_are_the_kinds_whose_dielectric_is_an_oxide() =>
        Assert.Equal(
            ["aluminium electrolytic", "bipolar electrolytic", "polymer electrolytic", "tantalum", "wet tantalum"],
            Names(kind => kind.IsElectrolytic)
        );

    // A polymer is dry, and a wet tantalum is sealed in glass or metal.
    [Fact]
    public void Aluminium_with_a_liquid_dries_out() =>
        Assert.Equal(["aluminium electrolytic", "bipolar electrolytic"], Names(kind => kind.DriesOut));

    // A 12 V relay, lamp, cell or regulator is no better for being a 24 V one.
    [Fact]
    public void The_voltage_of_these_kinds_is_what_they_give_or_work_at() =>
        Assert.Equal(["zener diode", "regulator", "relay", "lamp", "cell", "motor"], Names(kind => kind.Voltage == VoltageMeaning.Given));

    [Fact]
    public void A_kind_whose_type_tells_its_voltage_gives_it() =>
        Assert.Equal(["zener diode", "regulator"], Names(kind => kind.TypeTellsVoltage && kind.Voltage == VoltageMeaning.Given));

    [Fact]
    public void People_rely_on_suppression_capacitors_and_fuses() =>
        Assert.Equal(["suppression capacitor", "fuse"], Names(kind => kind.IsSafety));

    [Fact]
    public void The_rules_of_substitution_know_every_capacitor_but_one_that_is_set() =>
        Assert.Equal(["trimmer capacitor"], Names(kind => kind.Family == PartFamily.Capacitor && kind.Capacitor is null));

    [Fact]
    public void Only_a_capacitor_has_a_dielectric() =>
        Assert.All(All.Where(kind => kind.Dielectric is not null), kind => Assert.Equal(PartFamily.Capacitor, kind.Family));

    [Fact]
    public void A_capacitor_and_its_dielectric_are_of_one_stuff() =>
        Assert.All(All.Where(kind => kind.IsFilmOrPaper), kind =>
            Assert.Contains(kind.Name.Split(' ')[0], kind.Dielectric!.Dielectric, StringComparison.OrdinalIgnoreCase)
        );

    // ASME Y14.44 and IEC 81346-2, from memory.
    [Fact]
    public void Letters_that_decide_decide_for_one_kind() =>
        Assert.All(All.SelectMany(kind => kind.Letters).Where(letters => letters.IsCertain).GroupBy(letters => letters.Letters), letters =>
            Assert.Single(letters)
        );

    [Fact]
    public void Letters_that_decide_name_the_likeliest_of_the_kinds_they_may_mean() =>
        Assert.All(
            All.SelectMany(kind => kind.Letters).Where(letters => letters is { IsCertain: true, Letters: not "BR" and not "RN" }),
            letters => Assert.Equal(0, letters.Rank)
        );

    // A relay, a memory or a transistor says it by what the board does with it.
    [Fact]
    public void A_bench_measures_new_capacitors_resistors_windings_crystals_and_fuses_one_by_one() =>
        Assert.Equal(
            [PartFamily.Capacitor, PartFamily.Resistor, PartFamily.Inductor, PartFamily.Crystal, PartFamily.Fuse],
            All.Where(kind => kind.ProvedBy.Length > 0 && kind != PartKinds.ZenerDiode).Select(kind => kind.Family).Distinct().Order()
        );

    // It may act only when something else fails: that the board works says nothing of it.
    [Fact]
    public void A_diode_that_holds_a_voltage_is_measured_too() => Assert.Equal([Measured.Voltage], PartKinds.ZenerDiode.ProvedBy);

    [Fact]
    public void A_test_alone_never_proves_a_capacitor_or_a_resistor() =>
        Assert.DoesNotContain(All, kind => kind.IsTestedByUse && kind.Family is PartFamily.Capacitor or PartFamily.Resistor);

    // The copper and the inductance of a transformer stray like a choke's; its insulation is accepted like a mains transformer's.
    [Fact]
    public void A_transformer_strays_like_a_choke() =>
        Assert.Equal(("mains transformer", "inductor"), (PartKinds.Transformer.Accepted!.Part, PartKinds.Transformer.StraysLike!.Part));

    private static IEnumerable<string> Names(Func<PartKind, bool> which) => All.Where(which).Select(kind => kind.Name);
}
