using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Prompt;

/// <summary>A session at a pseudo terminal, with the codes that real keys send.</summary>
public sealed class BenchTerminalTests
{
    private const string Board = "boards/SP-0007.md";
    private const string Bench = "exec $ohmstead bench SP-0007 --in . --by RK --class C --as-of 2026-11-25";
    private const string First = "C1 [nF, dissipation factor] > ";

    [Theory]
    [InlineData("xterm-256color")]
    [InlineData("vt100")]
    [InlineData("linux")]
    public async Task The_arrows_mend_a_figure_and_write_nothing_by_themselves(string kind)
    {
        Assert.SkipUnless(TestExtent.IsAll || kind == "xterm-256color", TestExtent.LeftOut);
        using var copy = CollectionCopy.Make();
        using var terminal = PseudoTerminal.Open();
        using var bench = terminal.Start(Bench, copy.Root, ("TERM", kind));
        await terminal.UntilAsync(First);
        terminal.Type("C3 461");
        await terminal.UntilAsync("C3 461");
        // Left, the point, and Enter from the keypad in its own mode.
        terminal.Type("\e[D\eOn\e[F \eOp.9\eOM");
        await terminal.UntilAsync("46.1 µF against");
        await terminal.UntilAsync("C4 [");
        terminal.Type("\u0004");
        var end = await terminal.EndAsync();
        Assert.Contains("ended\r\n", end, StringComparison.Ordinal);
        Assert.Contains("- { part: C3, capacitance: 46.1 µF, esr: 0.9 Ω }", copy.Read(Board), StringComparison.Ordinal);
        Assert.DoesNotContain("\e=", terminal.Shown, StringComparison.Ordinal);
        Assert.Equal(kind == "vt100", !terminal.Shown.Contains("\e[?2004", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Ctrl_C_leaves_a_clean_prompt_and_older_lines_come_back_in_the_next_session()
    {
        using var copy = CollectionCopy.Make();
        using var state = CollectionCopy.Empty();
        using var terminal = PseudoTerminal.Open(columns: 40);
        using var one = terminal.Start(Bench, copy.Root, ("XDG_STATE_HOME", state.Root));
        await terminal.UntilAsync("factor] > ");
        terminal.Type("391\u0003");
        await terminal.UntilAsync("^C");
        await terminal.UntilAsync("factor] > ");
        terminal.Type("left\r");
        await terminal.UntilAsync("C1 C2 C3 C4 C5");
        await terminal.UntilAsync("factor] > ");
        terminal.Type("exit\r");
        await terminal.UntilAsync("places are still to be read today\r\n");
        await Child.EndAsync(one);
        Assert.True(terminal.IsAsItWas());

        using var next = PseudoTerminal.Open(columns: 40);
        using var two = next.Start(Bench, copy.Root, ("XDG_STATE_HOME", state.Root));
        await next.UntilAsync("factor] > ");
        next.Type("\u0012lef");
        await next.UntilAsync("(look for 'lef') left");
        next.Type("\r");
        await next.UntilAsync("C1 C2 C3 C4 C5");
        await next.UntilAsync("factor] > ");
        next.Type("\u0004");
        Assert.Contains("ended", await next.EndAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_paste_of_several_lines_is_shown_line_by_line_and_none_answers_a_question()
    {
        using var copy = CollectionCopy.Make();
        using var terminal = PseudoTerminal.Open();
        using var bench = terminal.Start(Bench, copy.Root);
        await terminal.UntilAsync(First);
        terminal.Type("\e[200~C3 46.1nF\ry\rC4 47.6\r\e[201~");
        await terminal.UntilAsync("(+2 pasted) " + First + "C3 46.1nF");
        terminal.Type("\r");
        await terminal.UntilAsync("a slip of the unit?");
        terminal.Type("n\r");
        await terminal.UntilAsync("(+1 pasted)");
        await terminal.UntilAsync("y");
        terminal.Type("\u0003");
        await terminal.UntilAsync("1 pasted lines dropped");
        await terminal.UntilAsync("> ");
        terminal.Type("\u0004");
        await terminal.EndAsync();
        Assert.DoesNotContain("2026-11-25", copy.Read(Board), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tab_knows_references_lots_and_words_by_where_they_stand()
    {
        using var copy = CollectionCopy.Make();
        using var terminal = PseudoTerminal.Open();
        using var bench = terminal.Start(Bench, copy.Root);
        await terminal.UntilAsync(First);
        terminal.Type("c\t\t");
        Assert.Contains("C4", await terminal.UntilAsync("capacitance="), StringComparison.Ordinal);
        terminal.Type("\u0015work repl\t C3 --l\tL-0\t\t");
        await terminal.UntilAsync("L-001");
        terminal.Type("\u0003\u0004");
        Assert.Contains("ended", await terminal.EndAsync(), StringComparison.Ordinal);
        Assert.Contains("work replaced  C3 --lot L-0", terminal.Shown, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("TERM", 143)]
    [InlineData("HUP", 129)]
    [InlineData("INT", 130)]
    [InlineData("QUIT", 131)]
    public async Task However_it_ends_the_terminal_is_as_it_was(string signal, int exit)
    {
        Assert.SkipUnless(TestExtent.IsAll || signal == "TERM", TestExtent.LeftOut);
        using var copy = CollectionCopy.Make();
        using var terminal = PseudoTerminal.Open();
        using var bench = terminal.Start($"echo pid $$; ulimit -c 0; {Bench}", copy.Root);
        await terminal.UntilAsync("pid ");
        var pid = (await terminal.UntilAsync("\r\n")).Trim();
        await terminal.UntilAsync(First);
        Assert.False(terminal.IsAsItWas());
        await Child.ShellAsync($"kill -{signal} {pid}", copy.Root);
        await terminal.UntilAsync("\e[?2004l");
        Assert.Equal(exit, (await Child.EndAsync(bench)).Exit);
        Assert.True(terminal.IsAsItWas());
    }

    // By this it is seen that somebody has put the terminal back between setting it and looking.
    [Fact]
    public void A_terminal_takes_lines_until_bytes_are_asked_for()
    {
        using var terminal = PseudoTerminal.Open();
        Assert.True(terminal.Modes.TakesLines);
        Assert.False(terminal.Modes.ByteByByte(hasSignals: true).TakesLines);
        Assert.False(terminal.Modes.ByteByByte(hasSignals: false).TakesLines);
    }

    [Fact]
    public async Task Ctrl_Z_gives_the_terminal_back_and_takes_it_again_with_the_line_as_it_was()
    {
        using var copy = CollectionCopy.Make();
        using var terminal = PseudoTerminal.Open();
        using var shell = terminal.Start("exec sh -mi", copy.Root, ("ENV", ""), ("PS1", "shell> "));
        await terminal.UntilAsync("shell> ");
        terminal.Type(Bench["exec ".Length..] + "\r");
        await terminal.UntilAsync(First);
        terminal.Type("39");
        await terminal.UntilAsync("39");
        terminal.Type("\u001A");
        await terminal.UntilAsync("Stopped");
        await terminal.UntilAsync("shell> ");
        Assert.True(terminal.IsAsItWas());
        terminal.Type("fg\r");
        await terminal.UntilAsync("39");
        // The framework changes the terminal when a program goes on, and it is changed back.
        while (terminal.IsAsItWas())
        {
            await Task.Delay(TimeSpan.FromMilliseconds(20), TestContext.Current.CancellationToken);
        }

        terminal.Type("\u0015quit\r");
        await terminal.UntilAsync("ended");
        await terminal.UntilAsync("shell> ");
        Assert.True(terminal.IsAsItWas());
        terminal.Type("exit\r");
        await terminal.EndAsync();
    }

    [Theory]
    [InlineData("TERM", "dumb", "")]
    [InlineData("TERM", "", "")]
    [InlineData("OHMSTEAD_PLAIN", "1", "")]
    [InlineData("NO_COLOR", "1", " --plain")]
    public async Task Where_no_cursor_may_be_moved_nothing_but_text_is_sent(string name, string value, string option)
    {
        using var copy = CollectionCopy.Make();
        using var terminal = PseudoTerminal.Open();
        using var bench = terminal.Start(Bench + option, copy.Root, (name, value));
        await terminal.UntilAsync(First);
        terminal.Type("100.2\r");
        await terminal.UntilAsync("100.2 nF against");
        await terminal.UntilAsync("C2 [");
        terminal.Type("\u0004");
        Assert.Contains("ended", await terminal.EndAsync(), StringComparison.Ordinal);
        Assert.DoesNotContain('\e', terminal.Shown);
        Assert.Contains("- { part: C1, capacitance: 100.2 nF }", copy.Read(Board), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--version")]
    [InlineData("--help")]
    [InlineData("explain")]
    public async Task No_command_leaves_the_keypad_in_a_mode_of_its_own(string command)
    {
        using var terminal = PseudoTerminal.Open();
        using var run = terminal.Start($"exec $ohmstead {command}", CollectionCopy.Untouched);
        await terminal.EndAsync();
        Assert.NotEmpty(terminal.Shown);
        Assert.DoesNotContain("\e=", terminal.Shown, StringComparison.Ordinal);
        Assert.DoesNotContain("\e[?1h", terminal.Shown, StringComparison.Ordinal);
    }
}
