using Ohmstead.Running;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Output;

/// <summary>Colours where a person watches, and nowhere else.</summary>
public sealed class PaletteTests
{
    [Theory]
    [InlineData(true, "xterm", null, true)]
    [InlineData(true, "xterm", "", true)]
    [InlineData(true, "xterm", "1", false)]
    [InlineData(true, "dumb", null, false)]
    [InlineData(true, null, null, false)]
    [InlineData(false, "xterm", null, false)]
    public void Colours_are_where_there_is_a_terminal_that_has_them_and_nobody_minds(
        bool isTerminal,
        string? kind,
        string? noColour,
        bool has
    )
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "a terminal says of what kind it is");
        var palette = Palette.For(isTerminal, name => name switch
            {
                "TERM" => kind,
                "NO_COLOR" => noColour,
                _ => null,
            });
        Assert.Equal(has ? "\e[1;31moutside\e[0m" : "outside", palette.Wrong("outside"));
    }

    [Theory]
    [InlineData("why SP-0004 C12 --in .", "\e[1;31m  capacitance 312.4 µF")]
    [InlineData("boards --in . --brief", "\e[1;31ma fault stands\e[0m")]
    [InlineData("check . --as-of 2026-11-25", "\e[33mwarning\e[0m: ")]
    [InlineData("enter SP-0007 C3 31uF --lifted --by RK --in . --trial", "\e[1;31m  capacitance 31 µF against")]
    public async Task Outside_and_errors_stand_out_at_a_terminal_and_a_pipe_has_the_same_words_alone(string line, string told)
    {
        using var copy = CollectionCopy.Make();
        using var terminal = PseudoTerminal.Open();
        using var run = terminal.Start("exec $ohmstead " + line, copy.Root, ("NO_COLOR", string.Empty));
        Assert.Contains(told, await terminal.EndAsync(), StringComparison.Ordinal);
        var piped = await Child.ShellAsync("$ohmstead " + line + " 2>&1 | cat", copy.Root, ("NO_COLOR", string.Empty));
        Assert.DoesNotContain('\e', piped.Out);
    }
}
