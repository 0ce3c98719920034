using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>What had another name once is taken still, and told nowhere.</summary>
public sealed class OldNamesTests
{
    [Theory]
    [InlineData("reckon esr", "calculate esr")]
    [InlineData("reckon --form json", "calculate --form json")]
    [InlineData("reckon --json", "calculate --form json")]
    [InlineData("families records --form csv", "failures records --form csv")]
    public void The_old_name_of_a_command_does_what_the_new_one_does(string old, string now)
    {
        var (before, after) = (Run.Of(old.Split(' ')), Run.Of(now.Split(' ')));
        Assert.Equal((after.Exit, after.Out, after.Error), (before.Exit, before.Out, before.Error));
    }

    [Fact]
    public void The_old_word_for_an_order_that_came_in_part_is_taken()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Run.Of("order", "PO-08", "part-received", "--in", copy.Root, "--as-of", "2026-11-25").Exit);
        Assert.Contains("X2, six\", part_received: 2026-11-25 }\n", copy.Read("stock.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_that_is_offered_or_told_names_them()
    {
        Assert.DoesNotContain("reckon", Run.Of("--help").Out, StringComparison.Ordinal);
        Assert.DoesNotContain("\n  families", Run.Of("--help").Out, StringComparison.Ordinal);
        Assert.DoesNotContain("part-received", Run.Of("order", "--help").Out, StringComparison.Ordinal);
    }
}
