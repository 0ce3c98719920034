using static Ohmstead.History.Tests.Story.Season;

namespace Ohmstead.History.Tests.Story;

/// <summary>A season of one board: two restorers work on branches, a keeper takes them in. What is expected was worked out by hand: C1 is
/// 2200 µF ±20 %, so 1760 µF to 2640 µF; R1 4.7 kΩ ±5 %, so 4.465 kΩ to 4.935 kΩ; the rail 12 V ±5 %, so 11.4 V to 12.6 V.</summary>
public sealed class SeasonTests
{
    [Fact]
    public void A_board_goes_through_a_season_of_two_restorers_and_a_keeper_and_each_step_is_told_as_what_it_was()
    {
        using var season = Begin("2026-03-02");
        Has(season.Boards("--as-of", "2026-03-02"), $"{Board}  not looked at yet", "1 board, 0 fit to run");

        // RK looks at the clock. The reservoir has lost half of what it had, so another is ordered, and the board waits for it.
        season.Branches("rk/inspect");
        season.Types("2026-03-05", "found", Board, "C1", "crust at the foot", "major", "--by", "RK");
        season.Types("2026-03-05", "enter", Board, "C1", "1210uF", "1.9ohm", "120Hz", "--lifted", "--instrument", "bridge-1", "--by", "RK");
        season.Types("2026-03-05", "decide", Board, "C1", "replace", "half of it is gone", "--by", "RK");
        season.Types("2026-03-05", "order", "PO-01", "placed", "2200 µF 35 V, two", "--from", "Lantern Yard Spares");
        season.Types("2026-03-05", "wait", Board, "2200 µF 35 V", "--order", "PO-01", "--blocks", "everything with power");
        season.Commits("2026-03-05", "RK", "C1 inspected");

        // MT began where RK did, and reads the resistor and washes the board in the meantime: two commits.
        season.Branches("mt/wash");
        season.Types("2026-03-06", "enter", Board, "R1", "4.81kohm", "--lifted", "--instrument", "meter-1", "--by", "MT");
        season.Commits("2026-03-06", "MT", "R1 read");
        season.Types("2026-03-06", "work", Board, "washed", "--with", "isopropanol", "--dry", "24h", "--by", "MT");
        season.Commits("2026-03-06", "MT", "washed");

        season.TakesIn("2026-03-07", "rk/inspect");
        IsSound(season, "2026-03-07");
        Has(
            season.Changed("2026-03-07"),
            $"{Board}  was not looked at yet, now a fault stands",
            "C1: capacitance 1210 µF against 1760 µF … 2640 µF (delivery limit, the marking): outside",
            "part to find  C1: new: aluminium electrolytic 2200 µF 20 % 35 V 85 °C",
            "order  PO-01: new: placed"
        );

        // MT's branch is put on top of what came, and both visits stand there, in order.
        season.Rebases("mt/wash");
        season.TakesIn("2026-03-08", "mt/wash");
        IsSound(season, "2026-03-08");
        Assert.Equal(["  - date: 2026-03-05", "  - date: 2026-03-06"], season.Bench);
        var washed = season.Changed("2026-03-08");
        Has(washed, "new reading of R1, 2026-03-06 MT", "resistance 4.81 kΩ", "-> inside", "new work, 2026-03-06 MT: did washed");
        HasNot(washed, "RK", "gone", "not as it was");

        // The order comes. It is one piece of the trade: the order, the lot in the drawer and the end of the wait.
        season.Types("2026-03-16", "order", "PO-01", "received");
        season.Types(
            "2026-03-16",
            ["lot", "L-001", "aluminium electrolytic", "2200uF", "20%", "35V", "105C", "date_code=2541", "polarity=polarised", .. Two]
        );
        season.Types("2026-03-16", "wait", Board, "2200 µF 35 V", "--over");
        season.Commits("2026-03-16", "TS", "PO-01 came");
        IsSound(season, "2026-03-16");
        Has(
            season.Changed("2026-03-16"),
            "order  PO-01: was placed, now received",
            "drawer  L-001: new: 2 left",
            "reason  no longer: waits since 2026-03-05 for 2200 µF 35 V"
        );

        // RK measures a new one, fits it, and proves the rail; the figure goes wrong on the way into the record.
        season.Branches("rk/fit");
        season.Types("2026-03-17", "incoming", "L-001", "2231uF", "38mohm", "120Hz", "--instrument", "bridge-1", "--by", "RK");
        season.Types(
            "2026-03-17",
            ["work", Board, "replaced", "C1", "--lot", "L-001", "--polarity", "schematic", "--kept", "bag 1", "--by", "RK"]
        );
        season.Types("2026-03-17", ["enter", Board, "C1", "2228uF", "40mohm", "120Hz", "--lifted", "--state", "as left", .. Bridge]);
        season.Commits("2026-03-17", "RK", "C1 fitted");
        season.Types("2026-03-18", "enter", Board, "+12V", "12.8V", "--instrument", "meter-1", "--by", "RK");
        season.Commits("2026-03-18", "RK", "the rail");
        season.TakesIn("2026-03-19", "rk/fit");
        IsSound(season, "2026-03-19");
        Has(
            season.Changed("2026-03-19"),
            $"{Board}  a fault stands, as it was",
            "reason  no longer: C1: crust at the foot",
            "reason  new: +12V: voltage 12.8 V against 11.4 V … 12.6 V (circuit limit, this board's record): outside",
            "part to find  C1: no longer",
            "drawer  L-001: was 2 left",
            "now 1 left"
        );

        // Who writes over what was committed is told so, however right the new figure is.
        season.Branches("mt/overwrites");
        season.Writes($"boards/{Board}.md", "voltage: 12.8 V", "voltage: 12.08 V");
        var rewritten = season.Checks("2026-03-20", "main");
        Assert.Equal(1, rewritten.Exit);
        Has(rewritten.Out, "proof +12V, 2026-03-18 RK", "was rewritten: voltage said 12.8 V and says 12.08 V", "[entry-rewritten]");
        season.TakesBack();

        // RK's own correction stands beside it, with the reason.
        season.Branches("rk/corrects");
        season.Types(
            "2026-03-20",
            ["correct", Board, "+12V", "12.08V", "--because", "read off the wrong scale", "--of", "2026-03-18", .. Rk]
        );
        season.Commits("2026-03-20", "RK", "the rail is 12.08 V");
        season.TakesIn("2026-03-20", "rk/corrects");
        IsSound(season, "2026-03-20");
        Has(
            season.Changed("2026-03-20"),
            $"{Board}  was a fault stands, now fit to run",
            "new proof +12V, 2026-03-20 RK: voltage 12.08 V",
            "corrects 2026-03-18, because read off the wrong scale"
        );

        // The clock is lent, and comes home five days late.
        season.Types("2026-04-10", "whereabouts", Board, "lent", "--to", "Two Weirs museum", "--until", "2026-06-15");
        season.Commits("2026-04-10", "TS", "lent");
        IsSound(season, "2026-04-10");
        Has(season.Changed("2026-04-10"), "new whereabouts 2026-04-10", "did lent", "to Two Weirs museum");
        season.Types("2026-06-20", "whereabouts", Board, "came back", "--at", "shelf 3");
        season.Commits("2026-06-20", "TS", "it is back");
        IsSound(season, "2026-06-20");

        // RK proves the rail once more, with a meter whose calibration ran out three weeks before. MT had it calibrated in May, and its
        // certificate comes at the end of June: from then on the reading stands as what it was.
        season.Branches("mt/certificate");
        season.Branches("rk/again");
        season.Types("2026-06-22", ["enter", Board, "+12V", "12.05V", "--instrument", "meter-1", .. Rk]);
        season.Commits("2026-06-22", "RK", "the rail again");
        season.TakesIn("2026-06-23", "rk/again");
        var late = season.Checks("2026-06-23");
        Assert.Equal(0, late.Exit);
        Has(
            late.Out,
            "instrument meter-1 was used on 2026-06-22, its calibration ran out on 2026-06-01 [calibration-expired]",
            "1 warning"
        );
        Has(season.Changed("2026-06-23"), "finding  new: instrument meter-1 was used on 2026-06-22");

        season.Rebases("mt/certificate");
        const string Old = "      - { date: 2025-06-01, valid: 12 months }\n";
        season.Writes("instruments.yaml", Old, Old + "      - { date: 2026-05-28, valid: 12 months, certificate: C-26-011 }\n");
        season.Commits("2026-06-30", "MT", "the certificate of May came");
        season.TakesIn("2026-06-30", "mt/certificate");
        IsSound(season, "2026-06-30");
        Has(
            season.Changed("2026-06-30"),
            "finding  no longer: instrument meter-1 was used on 2026-06-22",
            "because of the calibration: instruments.yaml:",
            "due  meter-1 calibration: was 2026-06-01, now 2027-05-28"
        );

        // Looked back on: the bench as it was, and what the repository knew.
        Has(season.Boards("--on", "2026-03-04"), "not looked at yet");
        Has(season.Boards("--on", "2026-03-06"), "a fault stands", "C1: crust at the foot");
        Has(season.Boards("--known", "2026-03-06"), "not looked at yet");
        Has(season.Boards("--on", "2026-03-18"), "a fault stands", "+12V: voltage 12.8 V");
        Has(season.Boards("--known", "2026-03-18"), "a fault stands", "C1: crust at the foot");
        Has(season.Boards("--on", "2026-03-20"), "fit to run");
        Has(season.Boards("--on", "2026-03-20", "--known", "2026-03-19"), "a fault stands");
        Has(season.Check("--known", "2026-06-25"), "[calibration-expired]");
        HasNot(season.Check("--on", "2026-06-25"), "calibration-expired");
        Has(season.Boards("--as-of", "2026-06-30"), $"{Board}  fit to run", "look at it again on 2028-06-22", "1 board, 1 fit to run");
    }

    private static string[] Two => ["--quantity", "2", "--order", "PO-01"];

    private static string[] Rk => ["--by", "RK"];

    private static string[] Bridge => ["--instrument", "bridge-1", .. Rk];

    // What was committed is still there, and nothing is wrong.
    private static void IsSound(Season season, string day)
    {
        var check = season.Checks(day);
        Assert.True(check.Exit == 0, check.Out + check.Error);
        Has(check.Out, "; 0 errors, 0 warnings");
    }

    private static void Has(string text, params string[] words) =>
        Assert.All(words, word => Assert.Contains(word, text, StringComparison.Ordinal));

    private static void HasNot(string text, params string[] words) =>
        Assert.All(words, word => Assert.DoesNotContain(word, text, StringComparison.Ordinal));
}
