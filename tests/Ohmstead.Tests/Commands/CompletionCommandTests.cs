using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>What a shell is offered while somebody types.</summary>
public sealed class CompletionCommandTests
{
    [Theory]
    [InlineData("ohmstead wa", "wait")]
    [InlineData(
        "ohmstead why SP-00",
        "SP-0001,SP-0002,SP-0003,SP-0004,SP-0005,SP-0006,SP-0007,SP-0008,SP-0009,SP-0010,SP-0011,"
            + "SP-0012,SP-0013,SP-0014,SP-0015,SP-0016,SP-0017,SP-0018,SP-0019,SP-0020"
    )]
    [InlineData("ohmstead enter SP-0007 C", "C1,C2,C3,C4,C5")]
    [InlineData("ohmstead enter SP-0007 +", "+80V")]
    [InlineData("ohmstead found SP-0007 C1 crazed sa", "safety")]
    [InlineData("ohmstead found SP-0007 C1 ", "")]
    [InlineData("ohmstead boards --state 'fit ", "fit to run")]
    [InlineData("ohmstead boards --state fit\\ ", "fit to run")]
    [InlineData("ohmstead why L-00", "L-001,L-002,L-003,L-004,L-005,L-006,L-007,L-008,L-009")]
    [InlineData("ohmstead work SP-0007 replaced C1 --polarity sche", "schematic")]
    [InlineData("ohmstead work SP-0007 replaced C1 --lot L-00", "L-001,L-002,L-003,L-004,L-005,L-006,L-007,L-008,L-009")]
    [InlineData("ohmstead work SP-0007 replaced C1 --kept ", "")]
    [InlineData("ohmstead calculate discharge cap", "capacitance=")]
    [InlineData("ohmstead bench SP-0007 --class C", "C")]
    [InlineData("ohmstead start b", "board")]
    [InlineData("ohmstead nonsense ", "")]
    [InlineData("ohmstead why -- -", "")]
    public void Words_board_numbers_and_references_are_offered(string typed, string offered)
    {
        using var copy = CollectionCopy.Make();
        var line = $"{typed} --in {copy.Root}";
        var run = Run.Of($"[suggest:{typed.Length}]", line);
        Assert.Equal(
            (0, offered, string.Empty),
            (
                run.Exit,
                string.Join(',', run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(word => !word.StartsWith('-'))),
                run.Error
            )
        );
    }

    [Fact]
    public void A_name_that_would_break_the_line_is_not_offered()
    {
        using var copy = CollectionCopy.Make();
        File.Copy(copy.At("boards/SP-0001.md"), copy.At("boards/XX-1\u001B[2J.md"));
        var typed = "ohmstead why XX";
        Assert.Equal(string.Empty, Run.Of($"[suggest:{typed.Length}]", $"{typed} --in {copy.Root}").Out);
    }

    [Fact]
    public void A_folder_that_is_not_there_offers_no_board_and_no_fault() =>
        Assert.Equal(string.Empty, Run.Of("[suggest:16]", "ohmstead why SP- --in /nowhere").Error);

    [Theory]
    [InlineData("bash", "complete -o nosort -F _ohmstead ohmstead")]
    [InlineData("zsh", "compdef _ohmstead ohmstead")]
    [InlineData("fish", "complete --command ohmstead --no-files")]
    [InlineData("powershell", "if ($found.Count -gt 0) { $found } else { '' }")]
    public void Every_shell_asks_the_program_itself_and_offers_no_files_of_its_own(string shell, string bound)
    {
        var run = Run.Of("completion", shell);
        Assert.Equal(0, run.Exit);
        Assert.Contains("ohmstead \"[suggest:", run.Out, StringComparison.Ordinal);
        Assert.Contains(bound, run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("default", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("why SP-000", "SP-0001 SP-0002 SP-0003 SP-0004 SP-0005 SP-0006 SP-0007 SP-0008 SP-0009")]
    [InlineData("work SP-0007 replaced C1 --polarity sche", "schematic")]
    [InlineData("boards --state fit", "fit\\ to\\ run")]
    [InlineData("check b", "boards/")]
    [InlineData("found SP-0007 C1 b", "")]
    public async Task Bash_completes_by_what_it_was_given(string typed, string offered)
    {
        using var copy = CollectionCopy.Make();
        var words = typed.Split(' ');
        var script =
            "ohmstead() { (IFS=\" \"; $program \"$@\"); }; program=$ohmstead; eval \"$($program completion bash)\"; "
            + $"COMP_LINE='ohmstead {typed}'; COMP_POINT={typed.Length + 9}; COMP_WORDS=(ohmstead {typed}); COMP_CWORD={words.Length}; "
            + "_ohmstead; echo \"${COMPREPLY[*]}\"";
        var run = await Child.ShellAsync($"bash -c '{script.Replace("'", "'\\''", StringComparison.Ordinal)}'", copy.Root);
        Assert.Equal(offered + "\n", run.Out);
    }
}
