using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>An instrument and its calibrations are entered without an editor, and no calibration that stands there is touched.</summary>
public sealed class InstrumentCommandTests
{
    private const string Path = "instruments.yaml";

    [Fact]
    public void An_instrument_is_entered_with_what_its_handbook_says()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Path);
        var run = Do(
            copy,
            "instrument",
            "meter-2",
            "handheld multimeter",
            "--serial",
            "M2-0412",
            "--accuracy",
            "resistance error=0.5% digits=2 step=1ohm up_to=4kohm",
            "--accuracy",
            "capacitance error=2% digits=5 step=0.1nF",
            "--valid",
            "12 months",
            "--on",
            "2026-11-02"
        );
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("  its calibration holds until 2027-11-02\n", run.Out, StringComparison.Ordinal);
        Assert.Equal(
            before
                + """
                  - id: meter-2
                    what: handheld multimeter
                    serial: M2-0412
                    calibrations:
                      - { date: 2026-11-02, valid: 12 months }
                    accuracy:
                      - { measures: resistance, error: 0.5 %, digits: 2, step: 1 Ω, up_to: 4 kΩ }
                      - { measures: capacitance, error: 2 %, digits: 5, step: 0.1 nF }

                """.ReplaceLineEndings("\n"),
            copy.Read(Path)
        );
    }

    [Fact]
    public void The_first_instrument_makes_the_file()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("collection.yaml", "name: a shelf\n");
        var run = Do(copy, "instrument", "meter-1", "handheld multimeter");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains(
            "no calibration is on record; enter one: ohmstead calibration meter-1 --valid \"12 months\"\n",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.EndsWith("instruments:\n  - { id: meter-1, what: handheld multimeter }\n", copy.Read(Path), StringComparison.Ordinal);

        // In braces as it stands it has no room for a list: it becomes lines first.
        Assert.Equal(0, Do(copy, "calibration", "meter-1", "--certificate", "SPC-26-021").Exit);
        Assert.EndsWith(
            "  - id: meter-1\n    what: handheld multimeter\n    calibrations:\n      - { date: 2026-11-25, certificate: SPC-26-021 }\n",
            copy.Read(Path),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_calibration_stands_behind_those_that_judge_what_was_read_before_it()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Path);
        var run = Do(copy, "calibration", "bridge-2", "--valid", "6months", "--certificate", "SPC-26-021", "--on", "2026-11-20");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("  its calibration holds until 2027-05-20\n", run.Out, StringComparison.Ordinal);
        const string Last = "      - { date: 2026-06-22, valid: 12 months, certificate: SPC-26-012 }\n";
        Assert.Equal(
            before.Replace(
                Last,
                Last + "      - { date: 2026-11-20, valid: 6 months, certificate: SPC-26-021 }\n",
                StringComparison.Ordinal
            ),
            copy.Read(Path)
        );
    }

    [Theory]
    [InlineData("there is no instrument 'bridge-9', 'bridge-1' is the nearest", "calibration", "bridge-9")]
    [InlineData("there is no instrument 'sniffer'; enter it first: ohmstead instrument sniffer \"what it is\"", "calibration", "sniffer")]
    [InlineData("bridge-1 was calibrated on 2026-02-09 already, by what is on record", "calibration", "bridge-1", "--on", "2026-02-09")]
    [InlineData("2026-11-26 has not come yet: today is 2026-11-25", "calibration", "bridge-1", "--on", "2026-11-26")]
    [InlineData("2026-11-26 has not come yet: today is 2026-11-25", "instrument", "meter-2", "a meter", "--on", "2026-11-26")]
    [InlineData(
        "there is an instrument 'meter-1' already; its next calibration: ohmstead calibration meter-1",
        "instrument",
        "meter-1",
        "x"
    )]
    [InlineData("--accuracy 'resistence error=1%' begins with nothing that", "instrument", "m", "x", "--accuracy", "resistence error=1%")]
    [InlineData("--accuracy 'esr 1%': '1%' has no key; write error=0.5%", "instrument", "m", "x", "--accuracy", "esr 1%")]
    [InlineData("'12' has no unit", "calibration", "bridge-1", "--valid", "12")]
    [InlineData("m: 5 steps of the last digit of its esr, and no step", "instrument", "m", "x", "--accuracy", "esr error=1% digits=5")]
    [InlineData("m: '5' is more than half of what it shows", "instrument", "m", "x", "--accuracy", "esr error=5")]
    public void What_is_no_entry_is_refused_and_nothing_is_written(string why, params string[] words)
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Path);
        var run = Do(copy, words);
        Assert.NotEqual(0, run.Exit);
        Assert.Contains(why, run.Error, StringComparison.Ordinal);
        Assert.Equal(before, copy.Read(Path));
    }

    [Fact]
    public void A_trial_writes_nothing()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Path);
        Assert.Contains("would add bridge-1 {", Do(copy, "calibration", "bridge-1", "--trial").Out, StringComparison.Ordinal);
        Assert.Contains("would add {", Do(copy, "instrument", "m", "x", "--trial").Out, StringComparison.Ordinal);
        Assert.Equal(before, copy.Read(Path));
    }

    private static Run Do(CollectionCopy copy, params string[] words) => Run.Of([.. words, "--in", copy.Root, "--as-of", "2026-11-25"]);
}
