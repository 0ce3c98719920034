namespace Ohmstead.History.Tests.Story;

/// <summary>A year of a small collection, from old tables to the next spring, by commands alone at a terminal: each step leaves its own
/// facts in the records and no other line, and the records are sound after each.</summary>
public sealed partial class YearTests
{
    [Fact]
    public async Task From_old_tables_to_the_next_spring_each_step_leaves_its_own_facts_and_nothing_else()
    {
        using var year = new YearStory();
        await MoveInAsync(year);
        await SpringAsync(year);
        await SummerAsync(year);
        await AutumnAsync(year);
        await WinterAsync(year);
        await NextSpringAsync(year);
    }
}
