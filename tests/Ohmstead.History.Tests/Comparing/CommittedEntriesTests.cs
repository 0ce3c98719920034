using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>What was committed is still there and says what it said, unless an entry corrects it with a reason.</summary>
public sealed class CommittedEntriesTests
{
    private const string Board = "boards/SP-0007.md";

    public static TheoryData<string, string, string, string> Rewritten { get; } =
        new()
        {
            {
                Board,
                "capacitance: 31.8 µF, esr: 9.4 Ω",
                "capacitance: 41.8 µF, esr: 9.4 Ω",
                "boards/SP-0007.md:23:9: error: reading of C3, 2026-02-28 RK, committed in HEAD (boards/SP-0007.md:23), was rewritten: "
                    + "capacitance said 31.8 µF and says 41.8 µF [entry-rewritten]"
            },
            {
                Board,
                "      - { part: L1, circuit: out, frequency: 120 Hz, inductance: 2.093 H }\n",
                string.Empty,
                "reading of L1, 2026-02-28 RK, committed in HEAD (boards/SP-0007.md:26), is gone; it said part L1, circuit out, "
                    + "frequency 120 Hz, inductance 2.093 H"
            },
            { Board, "date: 2026-05-09", "date: 2026-05-10", ", is gone; it said" },
            { Board, "    by: RK\n    temperature: 19 °C", "    by: MT\n    temperature: 19 °C", "was rewritten: by said RK and says MT" },
            { Board, "    temperature: 19 °C", "    temperature: 29 °C", "was rewritten: temperature said 19 °C and says 29 °C" },
            {
                Board,
                "what: clear case crazed from end to end, severity: safety",
                "what: clear case crazed from end to end, severity: note",
                "severity said safety and says note"
            },
            {
                "instruments.yaml",
                "{ date: 2026-02-09, valid: 12 months",
                "{ date: 2026-02-09, valid: 24 months",
                "valid said 12 months and says 24 months; reading of"
            },
            {
                "stock.yaml",
                "received: 2026-01-28, quantity: 6, order: PO-01",
                "received: 2026-01-29, quantity: 6, order: PO-01",
                "received said 2026-01-28 and says 2026-01-29; "
            },
        };

    [Theory]
    [MemberData(nameof(Rewritten))]
    public void What_was_committed_is_quoted_where_it_was_rewritten(string path, string was, string now, string told)
    {
        using var copy = ScratchRepository.OfDemo();
        Assert.DoesNotContain("entry-rewritten", Check(copy).Out, StringComparison.Ordinal);
        Edit(copy, path, was, now);
        var run = Check(copy);
        Assert.Equal(1, run.Exit);
        Assert.Contains(told, run.Out, StringComparison.Ordinal);
    }

    public static TheoryData<string, string, string> Allowed { get; } =
        new()
        {
            {
                Board,
                "verdict: out, instrument: meter-1, note: \"too high in circuit, so it is too high\"",
                "instrument: meter-1, note: high"
            },
            { Board, "capacitance: 31.8 µF, esr: 9.4 Ω", "esr: 9400 mΩ, capacitance: 31.80 uF" },
            { "stock.yaml", "received: 2026-01-28, quantity: 6", "received: 2026-01-28, quantity: 7" },
            { "instruments.yaml", "    accuracy:\n", "      - { date: 2026-11-20, valid: 12 months }\n    accuracy:\n" },
        };

    [Theory]
    [MemberData(nameof(Allowed))]
    public void What_rewrites_nothing_that_was_used_is_allowed(string path, string was, string now)
    {
        using var copy = ScratchRepository.OfDemo();
        Edit(copy, path, was, now);
        Assert.DoesNotContain("entry-rewritten", Check(copy).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void New_entries_and_corrections_by_command_are_allowed()
    {
        using var copy = ScratchRepository.OfDemo();
        string[] where = ["--in", copy.Root, "--as-of", "2026-11-25", "--by", "RK"];
        Assert.Equal(0, Run.Of(["enter", "SP-0007", "C3", "43.2uF", "--lifted", .. where]).Exit);
        Assert.Equal(
            0,
            Run.Of([
                "correct",
                "SP-0007",
                "C4",
                "35.1uF",
                "8.1ohm",
                "120Hz",
                "--because",
                "read off the wrong line",
                "--of",
                "2026-02-28",
                "--state",
                "as found",
                .. where,
            ]).Exit
        );
        Assert.Equal(0, Run.Of("renumber", "SP-0007", "SP-0107", "--in", copy.Root, "--as-of", "2026-11-25").Exit);
        Assert.DoesNotContain("entry-rewritten", Check(copy).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_added_to_an_entry_is_a_warning()
    {
        using var copy = ScratchRepository.OfDemo();
        Edit(copy, Board, "{ part: K1, circuit: out, resistance: 561 Ω", "{ part: K1, circuit: out, method: four-wire, resistance: 561 Ω");
        Assert.Contains(
            ": warning: reading of K1, 2026-02-28 RK, committed in HEAD (boards/SP-0007.md:25), says more now: method four-wire",
            Check(copy).Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_record_that_was_committed_is_not_taken_away()
    {
        using var copy = ScratchRepository.OfDemo();
        File.Delete(copy.At(Board));
        var run = Check(copy);
        Assert.Equal(1, run.Exit);
        Assert.Contains("boards/SP-0007.md:1:1: error: this record was committed and is gone, with ", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_does_as_well_as_a_revision()
    {
        using var was = CollectionCopy.Make();
        using var now = CollectionCopy.Make();
        using var edited = ScratchRepository.In(now.Root);
        Edit(edited, Board, "capacitance: 31.8 µF, esr: 9.4 Ω", "capacitance: 41.8 µF, esr: 9.4 Ω");
        Assert.Contains(
            "[entry-rewritten]",
            Run.Of("check", now.Root, "--since", was.Root, "--as-of", "2026-11-25").Out,
            StringComparison.Ordinal
        );
    }

    // Whoever corrects an entry may not rewrite it besides: both stand.
    [Fact]
    public void A_correction_beside_it_is_no_leave_to_rewrite_an_entry()
    {
        using var copy = ScratchRepository.OfDemo();
        string[] words = ["C3", "33.8uF", "--because", "misread the scale", "--of", "2026-02-28", "--state", "as found", "--by", "RK"];
        Assert.Equal(0, Run.Of(["correct", "SP-0007", .. words, "--in", copy.Root, "--as-of", "2026-11-25"]).Exit);
        Assert.DoesNotContain("entry-rewritten", Check(copy).Out, StringComparison.Ordinal);
        Edit(copy, Board, "capacitance: 31.8 µF, esr: 9.4 Ω", "capacitance: 41.8 µF, esr: 9.4 Ω");
        Assert.Contains("was rewritten: capacitance said 31.8 µF and says 41.8 µF", Check(copy).Out, StringComparison.Ordinal);
    }

    // A reading rests on the calibration that held on its day: one of the day itself does, as where readings are judged, and the one in
    // front of it then does not; one of the day behind it came too late.
    [Theory]
    [InlineData("2026-02-28", "2026-02-28", true)]
    [InlineData("2026-02-28", "2026-02-09", false)]
    [InlineData("2026-03-01", "2026-03-01", false)]
    [InlineData("2026-03-01", "2026-02-09", true)]
    public void A_calibration_of_the_very_day_of_a_reading_is_the_one_it_rests_on(string later, string rewritten, bool isHeld)
    {
        using var copy = ScratchRepository.OfDemo();
        Edit(
            copy,
            "instruments.yaml",
            "instruments:\n",
            "instruments:\n  - id: bridge-9\n    what: LCR bridge\n    calibrations:\n"
                + $"      - {{ date: 2026-02-09, valid: 12 months }}\n      - {{ date: {later}, valid: 12 months }}\n"
        );
        Edit(copy, Board, "capacitance: 31.8 µF, esr: 9.4 Ω,", "capacitance: 31.8 µF, esr: 9.4 Ω, instrument: bridge-9,");
        copy.Commit("another bridge");

        Edit(copy, "instruments.yaml", $"{{ date: {rewritten}, valid: 12 months }}", $"{{ date: {rewritten}, valid: 24 months }}");

        var told = $"bridge-9 {rewritten}, committed in HEAD (instruments.yaml:";
        Assert.Equal(isHeld, Check(copy).Out.Contains(told, StringComparison.Ordinal));
        Assert.Equal(isHeld, Check(copy).Out.Contains("valid said 12 months and says 24 months; reading of C3", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("--on")]
    [InlineData("--known")]
    public void What_lies_there_is_looked_at_and_no_other_day(string clock)
    {
        using var copy = ScratchRepository.OfDemo();
        var run = Run.Of("check", copy.Root, "--since", "HEAD", clock, "2026-11-20");
        Assert.Equal((2, "--since looks at the files as they lie; leave --on and --known out\n"), (run.Exit, run.Error));
    }

    private static Run Check(ScratchRepository copy) => Run.Of("check", copy.Root, "--since", "HEAD", "--as-of", "2026-11-25");

    private static void Edit(ScratchRepository copy, string path, string was, string now)
    {
        var text = copy.Read(path);
        var at = text.IndexOf(was, StringComparison.Ordinal);
        Assert.True(at >= 0, was);
        copy.Write(path, text[..at] + now + text[(at + was.Length)..]);
    }
}
