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
    public void A_folder_that_is_not_there_offers_no_board_and_no_fault() =>
        Assert.Equal(string.Empty, Run.Of("[suggest:16]", "ohmstead why SP- --in /nowhere").Error);

    [Theory]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("fish")]
    [InlineData("powershell")]
    public void Every_shell_asks_the_program_itself(string shell)
    {
        var run = Run.Of("completion", shell);
        Assert.Equal(0, run.Exit);
        Assert.Contains("ohmstead \"[suggest:", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bash_completes_by_what_it_was_given()
    {
        using var copy = CollectionCopy.Make();
        const string script =
            "ohmstead() { (IFS=\" \"; $program \"$@\"); }; program=$ohmstead; eval \"$($program completion bash)\"; COMP_LINE='ohmstead "
            + "why SP-000'; COMP_POINT=19; COMP_WORDS=(ohmstead why SP-000); COMP_CWORD=2; _ohmstead; echo \"${COMPREPLY[*]}\"";
        var run = await Child.ShellAsync($"bash -c '{script.Replace("'", "'\\''", StringComparison.Ordinal)}'", copy.Root);
        Assert.Equal("SP-0001 SP-0002 SP-0003 SP-0004 SP-0005 SP-0006 SP-0007 SP-0008 SP-0009\n", run.Out);
    }
}
