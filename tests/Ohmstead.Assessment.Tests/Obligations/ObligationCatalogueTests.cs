using System.Reflection;
using System.Text.RegularExpressions;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

public sealed partial class ObligationCatalogueTests
{
    // Two are called as the bench says it; all others as their type.
    private static readonly Dictionary<string, string> OtherNames = new(StringComparer.Ordinal)
    {
        ["FittedWayRound"] = "way-round",
        ["FittedPartFits"] = "fits-its-place",
    };

    public static TheoryData<string> Rules { get; } = new(ObligationCatalogue.All.Select(rule => rule.GetType().Name));

    [Fact]
    public void The_catalogue_lists_every_rule_there_is()
    {
        var written = typeof(ObligationCatalogue)
            .Assembly.GetTypes()
            .Where(type => type is { IsClass: true, IsAbstract: false } && typeof(IObligationRule).IsAssignableFrom(type));
        Assert.Equal(
            written.Select(type => type.Name).Order(StringComparer.Ordinal),
            ObligationCatalogue.All.Select(rule => rule.GetType().Name).Order(StringComparer.Ordinal)
        );
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_kind_is_called_as_its_type_in_small_letters_with_hyphens(string type) =>
        Assert.Equal(OtherNames.GetValueOrDefault(type) ?? InnerCapital().Replace(type, "-$0").ToLowerInvariant(), Rule(type).Kind);

    [Fact]
    public void No_two_rules_have_one_name_or_ask_the_same()
    {
        Assert.Distinct(ObligationCatalogue.All.Select(rule => rule.Kind), StringComparer.Ordinal);
        Assert.Distinct(ObligationCatalogue.All.Select(rule => rule.Asks), StringComparer.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void What_a_rule_asks_is_one_line_that_starts_small_and_has_no_full_stop(string type) => MessageRules.Hold(Rule(type).Asks);

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_holds_no_state(string type) =>
        Assert.Empty(
            Rule(type).GetType().GetFields(BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.Public).Select(field => field.Name)
        );

    [Theory]
    [MemberData(nameof(Rules))]
    public void Every_rule_has_a_test_of_its_own(string type) =>
        Assert.NotNull(typeof(ObligationCatalogueTests).Assembly.GetType($"Ohmstead.Assessment.Tests.Obligations.{type}Tests"));

    // What can hurt comes first; the record itself, which is mended at a desk, comes last.
    [Fact]
    public void What_can_hurt_is_told_first_and_the_record_last()
    {
        Assert.Equal(["hazard-gone", "finding-answered"], ObligationCatalogue.All.Take(2).Select(rule => rule.Kind));
        Assert.Equal("record-sound", ObligationCatalogue.All[^1].Kind);
    }

    [Fact]
    public void The_obligations_of_a_board_come_in_the_order_of_the_catalogue()
    {
        var kinds = Worked
            .Board(
                "hazards:\n  - { hazard: mains, at: T1 }\nparts:\n  - { ref: C12, kind: mica, capacitance: 100 pF }\nbench:\n  - date: "
                    + "2026-03-14\n    work:\n      - { part: C12, did: removed }\n    proof:\n      - { point: lamp, result: pass }"
            )
            .Obligations.Select(one => one.Kind)
            .ToArray();
        Assert.Equal(kinds.OrderBy(kind => Array.FindIndex([.. ObligationCatalogue.All], rule => rule.Kind == kind)), kinds);
    }

    private static IObligationRule Rule(string type) => ObligationCatalogue.All.Single(rule => rule.GetType().Name == type);

    [GeneratedRegex("(?<!^)[A-Z]")]
    private static partial Regex InnerCapital();
}
