using Ohmstead.Running;

namespace Ohmstead.Tests.Slips;

/// <summary>Types each slip into the collection of the slips, reads what is told, and types what that leads to.</summary>
public sealed class TypedSlipTests
{
    public static TheoryData<string> Names { get; } = new(TypedSlip.All.Select(slip => slip.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void One_slip_is_told_in_one_message_and_nothing_is_written(string name)
    {
        var slip = Find(name);

        var run = TypedRun.Of(slip, slip.Typed);

        Assert.Equal(slip.Told, run.Told);
        Assert.Empty(run.Written);
        Assert.Single(slip.Messages);
        Assert.True(slip.Bench is not null || run.Exit is ExitCode.Usage or ExitCode.Findings, $"it ended with {run.Exit}");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_line_that_the_message_leads_to_writes_what_was_meant(string name)
    {
        var slip = Find(name);

        var run = TypedRun.Of(slip, slip.Mended);

        Assert.Equal(slip.Written, run.Written);
        Assert.Equal(ExitCode.Clean, run.Exit);
        Assert.True(slip.Bench is not null || run.Told.Count == 0, string.Join('\n', run.Told));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_word_that_the_mended_line_has_more_stands_in_the_message(string name)
    {
        var slip = Find(name);
        if (slip.IsInOwnWords || !slip.Judged.Mended)
        {
            return;
        }

        var told = Letters(string.Join('\n', slip.Told));
        var typed = slip.Words(slip.Typed);
        Assert.All(slip.Words(slip.Mended).Where(word => !typed.Contains(word)), word =>
            Assert.Contains(Letters(word), told, StringComparison.Ordinal)
        );
    }

    // A shell takes quotes away, and 4 mV is written 4mV.
    private static string Letters(string text) => string.Concat(text.Where(letter => letter is not ('"' or ' ')));

    [Fact]
    public void There_are_sixty_of_the_command_line_and_forty_of_the_prompt_and_nearly_all_are_told_well()
    {
        Assert.Distinct(TypedSlip.All.Select(slip => slip.Name));
        Assert.InRange(TypedSlip.All.Count(slip => slip.Bench is null), 60, int.MaxValue);
        Assert.InRange(TypedSlip.All.Count(slip => slip.Bench is not null), 40, int.MaxValue);
        var hundredths = TypedSlip.All.Count * 97 / 100;
        Assert.InRange(TypedSlip.All.Count(slip => slip.Judged.Word), hundredths, TypedSlip.All.Count);
        Assert.InRange(TypedSlip.All.Count(slip => slip.Judged.Cause), hundredths, TypedSlip.All.Count);
        Assert.InRange(TypedSlip.All.Count(slip => slip.Judged.Mended), hundredths, TypedSlip.All.Count);
        Assert.InRange(TypedSlip.All.Count(slip => slip.IsInOwnWords), 0, TypedSlip.All.Count / 3);
    }

    private static TypedSlip Find(string name) => TypedSlip.All.Single(slip => slip.Name == name);
}
