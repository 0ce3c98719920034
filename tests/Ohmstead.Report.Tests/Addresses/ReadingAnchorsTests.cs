using AngleSharp.Dom;
using Ohmstead.Report.Tests.Pages;

namespace Ohmstead.Report.Tests.Addresses;

public class ReadingAnchorsTests
{
    private const string Head = """
        ---
        board: X-1
        title: Tide logger
        parts:
          - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }
          - { ref: C2, kind: polyester film, capacitance: 100 nF, tolerance: 10 % }
        bench:

        """;

    private const string Second = """
          - date: 2026-03-20
            readings:
              - { part: C1, circuit: out, frequency: 120 Hz, capacitance: 391 µF, esr: 0.3 Ω }
              - { part: C1, circuit: out, frequency: 120 Hz, capacitance: 392 µF }
              - { part: C2, capacitance: 101 nF, state: as left }
        ---

        """;

    private const string First = """
          - date: 2026-03-05
            readings:
              - { part: C1, circuit: in, frequency: 100 kHz, esr: 0.2 Ω }
              - { part: C2, capacitance: 99 nF }

        """;

    [Fact]
    public void A_reading_is_found_by_part_day_quantity_and_way() =>
        Assert.Equal(
            ["r-C1-260320-c-o", "r-C1-260320-c-o-2", "r-C1-260320-esr-o", "r-C2-260320-c-l"],
            Anchors(OneBoard.Page(Head + Second))
        );

    [Fact]
    public void Readings_entered_before_others_change_no_address_of_theirs()
    {
        var before = Anchors(OneBoard.Page(Head + Second));
        var after = Anchors(OneBoard.Page(Head + First + Second));
        Assert.Equal(before.Length + 2, after.Length);
        Assert.Superset(before.ToHashSet(StringComparer.Ordinal), after.ToHashSet(StringComparer.Ordinal));
    }

    [Fact]
    public void A_part_is_found_by_its_reference() => Assert.NotNull(OneBoard.Page(Head + Second).QuerySelector("tr#p-C2"));

    private static string[] Anchors(IDocument page) =>
        [.. page.QuerySelectorAll("[id^=r-]").Select(element => element.Id!).Order(StringComparer.Ordinal)];
}
