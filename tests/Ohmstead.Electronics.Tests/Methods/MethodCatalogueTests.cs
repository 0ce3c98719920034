using Ohmstead.Electronics.Hazards;
using Ohmstead.Electronics.Methods;

namespace Ohmstead.Electronics.Tests.Methods;

/// <summary>Ways of working: each defers to those who are licensed, says where it comes from, and is found by the words of a record.</summary>
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
}
