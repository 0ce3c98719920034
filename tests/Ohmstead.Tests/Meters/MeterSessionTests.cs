using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Meters;

/// <summary>A session at the bench whose readings come from a meter: one that is simulated, at a socket and at a pseudo terminal. No real
/// one was tried.</summary>
public sealed class MeterSessionTests
{
    private const string Board = "boards/SP-0007.md";

    private const string Description = """
        meters:
          - meter: bench-bridge
            what: LCR bridge at a socket
            instrument: bridge-1
            talks: scpi
            ask: FETCh?
            ask_frequency: FREQuency?
            ask_range: SENSe:CAPacitance:RANGe?
            fields:
              - { holds: capacitance, unit: F }
              - { holds: esr, unit: ohm }
              - { holds: status }
          - meter: hand-bridge
            instrument: bridge-2
            talks: lines
            separator: spaces
            overload: OL
            fields:
              - { holds: capacitance, unit: uF }
              - { holds: esr, unit: ohm }
              - { holds: frequency, unit: Hz }

        """;

    [Fact]
    public void What_the_meter_shows_is_told_with_its_verdict_and_enter_takes_it_with_frequency_and_range()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("meters.yaml", Description);
        using var meter = new SimulatedMeter(query =>
            query switch
            {
                "*IDN?" => "Invented,B1,0,1\n",
                "FETCh?" => "+4.61E-05,+9.0E-01,+0\n",
                "FREQuency?" => "120\n",
                "SENSe:CAPacitance:RANGe?" => "+1.0E-04\n",
                _ => null,
            }
        );
        var run = Bench(copy, "C3\nout\n\n\nquit\n", "--from", meter.Place, "--meter", "bench-bridge");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains($"the meter at {meter.Place} says that it is Invented,B1,0,1\n", run.Out, StringComparison.Ordinal);
        var shown = run.Out.IndexOf(
            "  the meter shows capacitance 46.1 µF, esr 900 mΩ, frequency 120 Hz, range 100 µF\n",
            StringComparison.Ordinal
        );
        var judged = run.Out.IndexOf("  capacitance 46.1 µF against 37.6 µF", StringComparison.Ordinal);
        var asked = run.Out.IndexOf("  Enter takes it, r reads again, anything else leaves it > ", StringComparison.Ordinal);
        Assert.True(shown > 0 && shown < judged && judged < asked, run.Out);
        // The verdict is told once, before it is written.
        Assert.Equal(judged, run.Out.LastIndexOf("  capacitance 46.1 µF against", StringComparison.Ordinal));
        Assert.Contains(
            "    instrument: bridge-1\n    readings:\n"
                + "      - { part: C3, circuit: out, frequency: 120 Hz, capacitance: 46.1 µF, esr: 900 mΩ, range: 100 µF }\n",
            copy.Read(Board),
            StringComparison.Ordinal
        );
        Assert.Contains("C4 [µF, Ω; 120 Hz, out] > ", run.Out, StringComparison.Ordinal);
        Assert.Equal(["*IDN?", "FETCh?", "FREQuency?", "SENSe:CAPacitance:RANGe?"], meter.Asked);
    }

    [Theory]
    [InlineData("C3\n\nn\nquit\n", "4.61E-05,0.9,0", "  nothing was taken\n")]
    [InlineData("C3\n\n", "4.61E-05,0.9,0", "Enter takes it")]
    [InlineData("C3\n\n\nquit\n", "9.9E37,0.9,0", "beyond its range, or has no reading")]
    [InlineData("C3\n\n\nquit\n", "4.61E-05,0.9,1", "the meter marks its reading with '1'")]
    [InlineData("C3\n\n\nquit\n", "4.61E-05", "has 1 fields, and the description of bench-bridge has 3")]
    [InlineData("R1\n\n\nquit\n", "4.61E-05,0.9,0", "R1 is measured in resistance, and the meter shows capacitance; nothing was taken")]
    [InlineData("+80V\n\n\nquit\n", "4.61E-05,0.9,0", "and the meter shows capacitance; nothing was taken")]
    [InlineData("C3\n\n\nquit\n", "4.61E-08,0.9,0", "capacitance 46.1 nF is 1/1020 of the marked 47 µF")]
    [InlineData("C3\n\n\nquit\n", "\u001b[2J", "'<U+001B>[2J' has 1 fields")]
    public void Nothing_is_written_that_was_not_taken_or_does_not_belong_there(string typed, string shown, string told)
    {
        using var copy = CollectionCopy.Make();
        copy.Write("meters.yaml", Description);
        var before = copy.Read(Board);
        using var meter = new SimulatedMeter(query =>
            query == "FETCh?" ? shown + "\n"
            : query == "FREQuency?" ? "120\n"
            : "1E-4\n"
        );
        var run = Bench(copy, typed, "--from", meter.Place, "--meter", "bench-bridge", "--wait", "600");
        Assert.Contains(told, run.Out + run.Error, StringComparison.Ordinal);
        Assert.Equal(before, copy.Read(Board));
        Assert.DoesNotContain('\u001b', run.Out + run.Error);
    }

    [Fact]
    public void A_meter_without_a_description_says_itself_what_it_measures()
    {
        using var copy = CollectionCopy.Make();
        using var meter = new SimulatedMeter(query =>
            query switch
            {
                "*IDN?" => "Invented,M6,0,1\r\n",
                "SENS:FUNC?" => "\"RES\"\r\n",
                "READ?" => "+1.49000000E+03\r\n",
                "SENS:RES:RANG?" => "+1.0E+04\r\n",
                _ => null,
            }
        );
        var run = Bench(copy, "R1\n\n\nC3\n\nquit\n", "--from", meter.Place, "--instrument", "meter-1");
        Assert.Contains("- { part: R1, resistance: 1.49 kΩ, range: 10 kΩ }", copy.Read(Board), StringComparison.Ordinal);
        // A resistance across a capacitor is no ESR.
        Assert.Contains(
            "C3 is measured in capacitance, esr, leakage, and the meter shows resistance; nothing was taken",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.All(meter.Asked, query => Assert.Contains(query, new[] { "*IDN?", "SENS:FUNC?", "READ?", "SENS:RES:RANG?" }));
    }

    [Fact]
    public async Task A_meter_that_sends_lines_is_listened_to_and_sent_nothing()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("meters.yaml", Description);
        using var port = PseudoTerminal.Open();
        using var terminal = PseudoTerminal.Open();
        using var bench = terminal.Start(
            "exec $ohmstead bench SP-0007 --in . --by RK --class C --as-of 2026-11-25 --meter hand-bridge "
                + $"--from serial:{port.Name},19200,7e1",
            copy.Root
        );
        await terminal.UntilAsync("listening to hand-bridge");
        await terminal.UntilAsync("factor] > ");
        // Said before anybody asked: of the part before.
        port.Type("11.1 1.1 120\r\n");
        terminal.Type("C3\r");
        await terminal.UntilAsync("C3 [µF, Ω] > ");
        terminal.Type("\r");
        // A bridge sends several lines a second, and the first of them may have begun too soon.
        await Sent(port, terminal, "46.1 0.9 120\r\n", "the meter shows capacitance 46.1 µF, esr 900 mΩ, frequency 120 Hz");
        await terminal.UntilAsync("leaves it > ");
        terminal.Type("\r");
        await terminal.UntilAsync("C4 [");
        terminal.Type("\r");
        await Sent(port, terminal, "OL OL 120\r\n", "beyond its range");
        await terminal.UntilAsync("C4 [");
        terminal.Type("\r\u0003");
        await terminal.UntilAsync("stopped waiting for the meter");
        await terminal.UntilAsync("C4 [");
        terminal.Type("\u0004");
        Assert.Contains("ended", await terminal.EndAsync(), StringComparison.Ordinal);
        Assert.Contains("- { part: C3, frequency: 120 Hz, capacitance: 46.1 µF, esr: 900 mΩ }", copy.Read(Board), StringComparison.Ordinal);
        Assert.Equal(string.Empty, port.Shown);
    }

    [Theory]
    [InlineData("*IDN? is not known", "--from", "tcp:127.0.0.1:1")]
    [InlineData("is no serial port", "--from", "serial:/dev/null")]
    [InlineData("/nowhere", "--from", "serial:/nowhere")]
    [InlineData("write serial:/dev/ttyUSB0", "--from", "/dev/ttyUSB0")]
    [InlineData("there is no meters.yaml in the collection", "--from", "tcp:127.0.0.1:1", "--meter", "bridge")]
    [InlineData("--from must say where it is", "--meter", "bridge")]
    [InlineData("--wait takes 1 to 3600 seconds", "--from", "tcp:127.0.0.1:1", "--wait", "0")]
    public void A_meter_that_cannot_be_had_is_told_and_nothing_begins(string told, params string[] words)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "serial ports as Linux has them");
        using var copy = CollectionCopy.Make();
        var run = Bench(copy, "quit\n", words);
        Assert.Equal((2, string.Empty), (run.Exit, run.Out));
        Assert.Contains(told == "*IDN? is not known" ? "the meter cannot be opened: " : told, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ask: FETCh?", "ask: \"*RST;FETC?\"", "'*RST;FETC?' is not sent")]
    [InlineData("ask: FETCh?", "ask: \"MEAS:CAP?\"", "'MEAS:CAP?' is not sent")]
    [InlineData("holds: esr", "holds: ers", "meters.yaml:")]
    [InlineData("meter: bench-bridge", "meter: bench-brigde", "describes no meter 'bench-bridge', 'bench-brigde' is the nearest")]
    public void A_description_that_cannot_be_right_is_told(string text, string instead, string told)
    {
        using var copy = CollectionCopy.Make();
        copy.Write("meters.yaml", Description.Replace(text, instead, StringComparison.Ordinal));
        var run = Bench(copy, "quit\n", "--from", "tcp:127.0.0.1:1", "--meter", "bench-bridge");
        Assert.Equal(2, run.Exit);
        Assert.Contains(told, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_meter_that_never_says_who_it_is_is_given_up()
    {
        using var copy = CollectionCopy.Make();
        using var meter = new SimulatedMeter(_ => null);
        var run = Bench(copy, "quit\n", "--from", meter.Place, "--wait", "1");
        Assert.Equal(2, run.Exit);
        Assert.Contains(
            "does not answer *IDN?; a meter that sends lines by itself is named with --meter",
            run.Error,
            StringComparison.Ordinal
        );
    }

    private static async Task Sent(PseudoTerminal port, PseudoTerminal terminal, string line, string told)
    {
        using var enough = new CancellationTokenSource();
        var sending = Task.Run(async () =>
        {
            while (!enough.IsCancellationRequested)
            {
                port.Type(line);
                await Task.Delay(TimeSpan.FromMilliseconds(100), CancellationToken.None);
            }
        });
        await terminal.UntilAsync(told);
        await enough.CancelAsync();
        await sending;
    }

    private static Run Bench(CollectionCopy copy, string typed, params string[] words) =>
        Run.Typing(typed, ["bench", "SP-0007", "--in", copy.Root, "--as-of", "2026-11-25", "--by", "RK", .. words]);
}
