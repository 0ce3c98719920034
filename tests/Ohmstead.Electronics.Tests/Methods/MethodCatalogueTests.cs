using Ohmstead.Electronics.Hazards;
using Ohmstead.Electronics.Methods;

namespace Ohmstead.Electronics.Tests.Methods;

/// <summary>Ways of working: each defers to those who are licensed, says where it comes from, and is found by the words of a
/// record.</summary>
public sealed class MethodCatalogueTests
{
    public static TheoryData<string> Names => [.. MethodCatalogue.All.Select(method => method.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_method_has_values_cautions_and_a_source_and_defers(string name)
    {
        var method = MethodCatalogue.All.Single(known => known.Name == name);
        Assert.NotEmpty(method.Values);
        Assert.InRange(method.Cautions.Count, 2, 6);
        Assert.Equal(SafetyNotice.Defer, method.Cautions[^1]);
        Assert.NotEqual(string.Empty, method.Source.Text);
    }

    [Theory]
    [InlineData("isopropanol, a soft brush", "isopropanol")]
    [InlineData("IPA", "isopropanol")]
    [InlineData("vinegar, then rinsed", "weak acid")]
    [InlineData("Sn63 and braid", "tin-lead solder")]
    [InlineData("warm oven", "drying")]
    [InlineData("a piano wire", null)]
    [InlineData("waterproof paint", null)]
    public void The_words_of_a_record_lead_to_their_method(string text, string? name) => Assert.Equal(name, MethodCatalogue.In(text)?.Name);

    // One figure for one material: 320 °C and 3 s, common practice; a forum of the trade has 304 to 343 °C and 2 s for old paper stock.
    [Fact]
    public void Phenolic_paper_has_one_temperature_whatever_the_tool()
    {
        var values = MethodCatalogue
            .All.SelectMany(method => method.Values)
            .Where(value => value.Of == "on phenolic paper")
            .Select(value => value.Value)
            .ToArray();
        Assert.Equal(3, values.Length);
        Assert.All(values, value => Assert.StartsWith("at most 320 °C and 3 s", value, StringComparison.Ordinal));
        Assert.DoesNotContain(MethodCatalogue.All.SelectMany(method => method.Cautions), caution =>
            caution.Contains("350 °C", StringComparison.Ordinal)
        );
    }

    // Carbonate crust about pH 11.5; hydroxide 12 to 14, from memory. HSE SIM 03/2002/26: 0.05 mg/m³ over 8 h and 0.15 mg/m³ over 15 min.
    [Theory]
    [InlineData("weak acid", "pH 11.5")]
    [InlineData("tin-lead solder", "0.15 mg/m³ over 15 min")]
    [InlineData("isopropanol", "acetone or butanone instead: they dissolve")]
    [InlineData("isopropanol", "halides pass the rubber seal")]
    [InlineData("drying", "J-STD-033")]
    public void A_caution_of_a_method_says_what_its_source_says(string name, string words) =>
        Assert.Contains(
            words,
            string.Join("; ", MethodCatalogue.All.Single(known => known.Name == name).Cautions),
            StringComparison.Ordinal
        );
}
