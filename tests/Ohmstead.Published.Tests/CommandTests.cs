using System.CommandLine;
using Ohmstead.Running;

namespace Ohmstead.Published.Tests;

/// <summary>Every command, given to both programs: the same exit code, the same words on either stream, the same files
/// afterwards.</summary>
public sealed class CommandTests(PublishedProgram published)
{
    /// <summary>Command lines and how they end.</summary>
    public static TheoryData<string, int> Lines { get; } =
        new()
        {
            { "check .", 0 },
            { "check . --strict", 1 },
            { "check . --thorough --form json --workers 2", 0 },
            { "check boards/SP-0007.md --form annotations", 0 },
            { "check nowhere --form json", 2 },
            { "check . > /dev/full", 3 },
            { "report . --to pages --site https://example.org/boards/", 0 },
            { "preview . --to .", 2 },
            { "sheet SP-0007 --paper Letter", 0 },
            { "labels --of originals --size 38.1x21.2 --from 4 --site https://boards.example/", 0 },
            { "boards --needs point-proved --sort seen", 0 },
            { "boards --form json", 0 },
            { "boards tide --form csv", 0 },
            { "changes . . --was-on 2026-11-25 --as-of 2027-11-25 --form json", 0 },
            { "changes HEAD", 2 },
            { "history --in . --as-of 2026-11-25", 0 },
            { "history SP-0007", 3 },
            { "check . --on 2026-05-01", 0 },
            { "check . --form sarif", 0 },
            { "why SP-0007 C1", 0 },
            { "why SP-0009 C7", 0 },
            { "why L-022", 0 },
            { "why SP-0077 C1", 2 },
            { "failures .", 0 },
            { "failures . --json", 0 },
            { "enter SP-0007 C3 46.1uF 0.9ohm 120Hz --lifted --by RK --instrument bridge-1", 0 },
            { "enter SP-0007 C3 46.1nF --lifted", 1 },
            { "bench SP-0007 --class C < /dev/null", 0 },
            { "found SP-0007 J1 'green: \"like copper\"' minor", 0 },
            { "decide SP-0007 BR1 watch 'plates clean'", 0 },
            { "work SP-0007 washed --with isopropanol --dry 24h", 0 },
            { "work SP-0007 're-soldered' 'C3-C4 R3'", 0 },
            { "work SP-0011 replaced C2 --from 'SP-0020 C2' --polarity schematic", 0 },
            { "work SP-0007 replaced C3 --lot L-018", 1 },
            { "whereabouts SP-0012 lent --to 'Two Weirs museum' --until 2027-03-31", 0 },
            { "whereabouts SP-0012 'came back'", 1 },
            { "photo SP-0007 photos/SP-0009/underside.png --shows 'C3 before'", 0 },
            { "photo SP-0007 photos/SP-0007/c1-new.png --shows 'C1 again'", 2 },
            { "told 2020-01-01 SP-0019", 0 },
            { "told 2020-01-01 --trial", 0 },
            { "told 2099-01-01", 2 },
            { "renumber SP-0009 SP-0109", 0 },
            { "renumber SP-0009 SP-0010", 2 },
            { "remove SP-0007 C3", 1 },
            { "correct SP-0007 +80V 80.3V --because 'misread the scale'", 0 },
            { "wait SP-0007 'a pen, two belts' --blocks soak", 0 },
            { "start collection lighthouse --name 'Fog signals: of the old light'", 0 },
            { "start schemas schemas", 0 },
            { "start board SP-0021 --design bench-supply --serial 0731", 0 },
            { "start design pulse-shaper --from SP-0019", 0 },
            { "start parts list.csv --design rain-counter --kind 'C=polyester film' --kind 'R=metal film resistor'", 0 },
            { "add part SP-0019 C31 'polyester film' 100nF 63V", 0 },
            { "add point SP-0019 +15V 15V 5% ripple_limit=10mV", 0 },
            { "add hazard SP-0019 'charged capacitor' at=C1 340V 100uF 220kohm", 0 },
            { "take-in --readings lists/readings.csv --days day-first --decimals comma --write", 0 },
            { "take-in --boards lists/boards.csv --parts lists/parts.csv --days day-first --decimals comma --write", 1 },
            { "tidy . --check", 0 },
            { "tidy . --verdicts", 0 },
            { "tidy . --verdicts --diff", 0 },
            { "settle boards/SP-0007.md boards/SP-0007.md boards/SP-0007.md --path boards/SP-0007.md", 0 },
            { "drawer . --form json", 0 },
            { "lot L-031 'aluminium electrolytic' 470uF 20% 35V 105C date_code=2610 --quantity 10 --price '0.42 EUR'", 0 },
            { "incoming L-018 47.4uF 112mohm 120Hz --by TS --instrument bridge-1", 0 },
            { "scrap L-013 1 'reads 70 % of its mark' --piece 2 --by TS", 0 },
            { "instrument meter-2 'handheld multimeter' --accuracy 'resistance error=0.5% digits=2 step=1ohm up_to=4kohm'", 0 },
            { "calibration bridge-2 --valid '12 months' --certificate SPC-26-021", 0 },
            { "enter SP-0008 F1 open --in-circuit --by RK", 0 },
            { "orders . --form csv", 0 },
            { "order PO-14 placed '220 µF 100 V, ten' --from 'Two Weirs Electronics'", 0 },
            { "order PO-07 line fuse current=1A --quantity 5 --price '0.30 EUR'", 0 },
            { "order PO-07 came 2", 0 },
            { "lot L-032 valve type=VK81 --quantity 1 --order PO-07 --line 1", 0 },
            { "buy . --form csv", 0 },
            { "ahead . --calendar ahead.ics", 0 },
            { "ahead . --until 2028-12-31 --json", 0 },
            { "fit SP-0010 C9", 0 },
            { "fit SP-0013 C1 --json", 0 },
            { "marking 103 --years 1975-1985", 0 },
            { "marking brown black red gold --json", 0 },
            { "calculate", 0 },
            { "explain guard band", 0 },
            { "calculate esr capacitance=391uF tan-delta=0.2 frequency=100Hz --form json", 0 },
            { "method", 0 },
            { "method drying", 0 },
            { "explain", 0 },
            { "explain polarity-from-print-alone", 0 },
            { "completion bash", 0 },
            { "'[suggest:21]' 'ohmstead why SP-0007 C'", 0 },
            { "--version", 0 },
            { "chekc .", 2 },
        };

    [Theory]
    [MemberData(nameof(Lines))]
    public async Task A_command_ends_alike_says_the_same_and_leaves_the_same_files(string line, int exit)
    {
        var outcome = await SideBySide.AsOneAsync(published, $"$ohmstead {line}", copy =>
            copy.Write("list.csv", "Designator;Val;Footprint;Qty\n\"C31, C33-C34\";100n 63V;x;3\nR31;10k 1%;;1\nU31;7805;;1\n")
        );
        Assert.Equal(exit, outcome.Run.Exit);
        Assert.NotEqual(string.Empty, outcome.Run.Out + outcome.Run.Error);
    }

    [Fact]
    public void Every_command_of_the_program_has_a_line_here()
    {
        var without = All().Where(command => !Lines.Any(line => $"{line.Data.Item1} ".StartsWith($"{command} ", StringComparison.Ordinal)));
        Assert.Equal([], without);
    }

    [Fact]
    public async Task Every_command_explains_itself_alike()
    {
        var outcome = await SideBySide.AsOneAsync(
            published,
            string.Join('\n', All().Select(command => $"$ohmstead {command} --help || exit 9"))
        );
        Assert.Equal(0, outcome.Run.Exit);
        Assert.All(All(), command => Assert.Contains($"ohmstead {command} ", outcome.Run.Out, StringComparison.Ordinal));
    }

    // The commands that do something: of one that only holds others, those.
    private static List<string> All()
    {
        using var terminal = new Terminal(TextWriter.Null, TextWriter.Null, showsProgress: false);
        using var interruption = new Interruption();
        return [.. CommandLine.Commands(terminal, interruption).SelectMany(command => Below(command.Make(), string.Empty))];
    }

    private static IEnumerable<string> Below(Command command, string before) =>
        command.Subcommands.Count == 0
            ? [before + command.Name]
            : command.Subcommands.SelectMany(below => Below(below, $"{before}{command.Name} "));
}
