namespace Ohmstead.History.Tests.Comparing;

/// <summary>What must be bought for the whole collection is told where it differs, with what asks for it or takes it away.</summary>
public sealed class BuyingChangesTests
{
    private const string Seven = "SP-0007";
    private const string Electrolytic = "aluminium electrolytic 47 µF ±20 % 160 V 85 °C";

    [Fact]
    public void A_part_that_was_taken_out_is_asked_for_because_of_the_work()
    {
        using var states = new TwoStates();
        Remove(states);
        Told(states.Text(), $"{Electrolytic}: new: 0 to buy of 1 needed, 1 in the drawer", "work: boards/SP-0007.md");
        Told(states.Back(), $"{Electrolytic}: no longer: 0 to buy of 1 needed, 1 in the drawer", "work: work C4");
    }

    [Fact]
    public void An_order_that_is_cancelled_brings_nothing_because_of_the_stock()
    {
        using var states = new TwoStates();
        Cancel(states);
        Told(
            states.Text(),
            "suppression capacitor 100 nF ±20 % 250 V 85 °C class X2: was 0 to buy of 1 needed, 1 on order, now 1 to buy",
            "stock: stock.yaml"
        );
    }

    [Fact]
    public void A_lot_that_lies_too_long_serves_nobody_because_of_the_day()
    {
        // L-018 was made in week 47 of 2025 and keeps for 36 months.
        using var states = new TwoStates();
        Remove(states);
        states.Keep();
        Told(
            states.Text("--was-on", "2028-11-22", "--as-of", "2028-11-24"),
            $"{Electrolytic}: was 0 to buy of 1 needed, 1 in the drawer, now 1 to buy",
            "day"
        );
    }

    [Fact]
    public void What_the_design_asks_for_is_asked_for_because_of_the_design()
    {
        using var states = new TwoStates();
        Remove(states);
        states.Keep();
        var part = states
            .Now.Read("designs/teleprinter-line.md")
            .Split('\n')
            .Single(line => line.Contains("ref: C4", StringComparison.Ordinal));
        Assert.Contains("capacitance: 47 µF", part, StringComparison.Ordinal);
        states.Edit("designs/teleprinter-line.md", part, part.Replace("47 µF", "33 µF", StringComparison.Ordinal));
        Told(states.Text(), $"{Electrolytic}: no longer: 0 to buy of 1 needed, 1 in the drawer", "design: designs/teleprinter-line.md");
    }

    [Fact]
    public void What_neither_gives_alone_is_told_of_both()
    {
        // One more place asks, and the lot that would serve it is one piece short by then.
        using var states = new TwoStates();
        Remove(states);
        states.Edit(
            "stock.yaml",
            "quantity: 4, order: PO-02, shelf_life: 36 months }\n  - { lot: L-019",
            "quantity: 2 }\n  - { lot: L-019"
        );
        Told(states.Text(), $"{Electrolytic}: new: 1 to buy", "work and the stock together");
    }

    [Fact]
    public void Of_a_large_collection_it_is_compared_where_somebody_asks()
    {
        using var states = new TwoStates();
        for (var number = 1; number <= 500; number++)
        {
            foreach (var copy in new[] { states.Was, states.Now })
            {
                copy.Write($"boards/ZZ-{number:0000}.md", $"---\nboard: ZZ-{number:0000}\ntitle: an empty board\n---\n");
            }
        }

        Cancel(states);
        var silent = states.Text();
        Assert.DoesNotContain("  to buy  ", silent, StringComparison.Ordinal);
        Assert.Contains("  the buying list was not compared, for which all boards must be judged\n", silent, StringComparison.Ordinal);
        Assert.False(states.Json().GetProperty("buying_compared").GetBoolean());
        Assert.Contains("now 1 to buy\n", states.Text("--buying"), StringComparison.Ordinal);
    }

    private static void Remove(TwoStates states) => states.Do("work", Seven, "removed", "C4", "--by", "RK", "--note", "for another board");

    private static void Cancel(TwoStates states) =>
        states.Edit("stock.yaml", "100 nF X2, six\" }", "100 nF X2, six\", cancelled: 2026-11-24 }");

    // The line, and behind the lines of its cause what that is.
    private static void Told(string text, string line, string because)
    {
        Assert.Contains($"  to buy  {line}\n", text, StringComparison.Ordinal);
        var rest = text[text.IndexOf($"  to buy  {line}\n", StringComparison.Ordinal)..].Split('\n');
        Assert.StartsWith(
            $"  because of the {because}",
            rest.First(one => one.StartsWith("  because", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
    }
}
