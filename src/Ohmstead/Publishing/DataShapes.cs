using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Publishing;

/// <summary>What the report tells programs: tables of equal rows. The JSON file, the CSV files and the published schema all follow these
/// shapes, so they cannot disagree.</summary>
internal static class DataShapes
{
    private static readonly string[] Outcomes = [.. Enum.GetValues<VerdictOutcome>().Select(VerdictWords.Describe)];
    private static readonly Key Board = Key.Id("board", "The number of the board.", "SP-0007").Needed();
    private static readonly Key Date = Key.Date("date", "The day at the bench.", "2026-03-14").Needed();
    private static readonly Key By = Key.Text("by", "Initials of who did it.", "RK");
    private static readonly Key Page = Key.Text("page", "The page, from the folder of this file.", "boards/SP-0007.html").Needed();

    /// <summary>Every board with its state.</summary>
    public static Shape Boards { get; } =
        new(
            "board row",
            "One board with its state.",
            "{ board: SP-0007, title: Barograph servo amplifier, state: fit to run, look_overdue: no, page: boards/SP-0007.html, data: "
                + "boards/SP-0007.json, badge: badges/SP-0007.svg, record: boards/SP-0007.md }",
            [
                Board,
                Key.Text("title", "What it is.", "Barograph servo amplifier").Needed(),
                Key.Id("design", "Its design.", "barograph-servo"),
                Key.Text("maker", "Who made it.", "Tallis"),
                Key.Text("serial", "Its serial number, as printed.", "0412"),
                Key.Text("revision", "Its revision.", "C"),
                Word("state", [.. BoardStates.All.Select(BoardStates.Words)], "Its state, computed.").Needed(),
                Key.Text("why", "The weightiest reason for the state.", "C4: the last reading is outside its limit"),
                Key.Text("next", "What to do next.", "replace C4"),
                Key.Date("last_seen", "The last day of any entry.", "2026-03-14"),
                Key.Date("look_again", "The day of the next look.", "2027-03-14"),
                Word("look_overdue", ["yes", "no"], "Whether that day is past: what was proved is then not known to hold.").Needed(),
                Key.Text("where", "Where it is and whose it is, or what became of it.", "on loan to Two Weirs museum since 2026-05-02"),
                Key.Count("inside", "Readings inside their limits.", "21").Needed(),
                Key.Count("outside", "Readings outside.", "2").Needed(),
                Key.Count("undecided", "Readings too close to call.", "1").Needed(),
                Key.Count("other", "Readings without a limit, or proving nothing.", "0").Needed(),
                Page,
                Key.Text("data", "Its parts, readings and bench entries, from the folder of this file.", "boards/SP-0007.json").Needed(),
                Key.Text("badge", "The badge, from the folder of this file.", "badges/SP-0007.svg").Needed(),
                Key.Text("record", "The record it was read from.", "boards/SP-0007.md").Needed(),
            ]
        );

    /// <summary>Every place of every board.</summary>
    public static Shape Parts { get; } =
        new(
            "part row",
            "One place of a board, and what sits there.",
            "{ board: SP-0007, part: C12, what: tantalum 10 µF, sits: original }",
            [
                Board,
                Key.Id("part", "The reference designator.", "C12").Needed(),
                Key.Text("what", "What belongs there.", "tantalum 10 µF ±10 % 35 V").Needed(),
                Word("sits", ["original", "replacement", "empty"], "What sits there now.").Needed(),
                Key.Id("lot", "The lot that sits there.", "L-031"),
                Key.Date("changed", "The day on which the place was last changed.", "2026-03-14"),
                Word("outcome", Outcomes, "What the readings of what sits there say together; absent when there are none."),
                Key.Text("decided", "What a person decided about it.", "keep"),
                Key.Text("because", "Why.", "inside its limit at working temperature"),
                Key.Text(
                    "decision_doubt",
                    "Why the decision does not hold, where it does not.",
                    "decided before the reading of 2026-10-03, which it does not answer"
                ),
            ]
        );

    /// <summary>Every value of every reading and proof.</summary>
    public static Shape Readings { get; } =
        new(
            "reading row",
            "One value of a reading or proof, with its verdict.",
            "{ board: SP-0007, date: 2026-03-14, of: C12, kind: as found, measured: capacitance, value: 391 µF, outcome: inside, line: "
                + "31 }",
            [
                Board,
                Date,
                By,
                Key.Text("of", "The part, point or lot that was read.", "C12").Needed(),
                Word("kind", [.. Vocabulary.ReadingStates, "proof"], "When in the life of the part it was taken, or that it is a proof.")
                    .Needed(),
                Word("circuit", Vocabulary.Circuits, "Whether the part was in the circuit."),
                Key.Id("instrument", "The instrument.", "bridge-2"),
                Key.Text("measured", "What was measured; test for a test of function.", "capacitance").Needed(),
                Key.Text(
                        "value",
                        "The value as written: a figure, a bound such as > 20 MΩ, or open, short, over range; pass or fail for a test.",
                        "391 µF"
                    )
                    .Needed(),
                Key.Text("limit", "The values inside the limit that governs.", "376 µF … 564 µF"),
                Key.Text("limit_kind", "Which kind of limit that is.", "circuit limit"),
                Word("outcome", Outcomes, "What the value says.").Needed(),
                Key.Number("probability_inside", "The probability that the true value is inside.", "0.9987"),
                Key.Count("line", "The line of the record.", "31").Needed(),
            ]
        );

    /// <summary>What was found, done and decided.</summary>
    public static Shape Bench { get; } =
        new(
            "bench row",
            "Something found, done or decided at the bench.",
            "{ board: SP-0007, date: 2026-03-14, entry: work, what: cleaned, line: 40 }",
            [
                Board,
                Date,
                By,
                Word("entry", ["found", "work", "decided", "note"], "What kind of entry it is.").Needed(),
                Key.Text("at", "The part or place.", "J3"),
                Key.Text("what", "What was seen, done, decided or noted.", "flux left from earlier work").Needed(),
                Word("severity", Vocabulary.Severities, "How much a finding matters."),
                Key.Id("lot", "The lot that was fitted.", "L-031"),
                Key.Text("note", "The reason of a decision, or a remark.", "this family fails shorted"),
                Key.Count("line", "The line of the record.", "40").Needed(),
            ]
        );

    /// <summary>Everything that must be shown before a board may be switched on.</summary>
    public static Shape Obligations { get; } =
        new(
            "obligation row",
            "Something that must be shown before a board may be switched on, and how it stands.",
            "{ board: SP-0007, kind: point-proved, at: +15V, standing: met, text: +15V proved after the last work }",
            [
                Board,
                Word("kind", [.. ObligationCatalogue.All.Select(rule => rule.Kind)], "The kind of obligation.").Needed(),
                Key.Text("at", "The part or point; absent when the whole board is meant.", "+15V"),
                Word(
                        "standing",
                        [.. ObligationStandings.All.Select(ObligationStandings.Words)],
                        "How it stands. A board is fit to run when none is open."
                    )
                    .Needed(),
                Key.Text(
                        "text",
                        "Why it is open, what it asks for where it is met, or why it does not apply.",
                        "+15V proved after the last work"
                    )
                    .Needed(),
                Word("state", [.. BoardStates.All.Select(BoardStates.Words)], "The state that it alone would give, while it is open."),
                Key.Text("next", "What to do, while it is open.", "measure +15V and record it under proof"),
                Key.Text("evidence", "What meets it.", "+15V proved: 15.02 V, 4 mV"),
                Key.Date("day", "The day of that.", "2026-03-14"),
                Key.Text("record", "The file in which that stands.", "boards/SP-0007.md"),
                Key.Count("line", "Its line there.", "40"),
            ]
        );

    /// <summary>Every design.</summary>
    public static Shape Designs { get; } =
        new(
            "design row",
            "One design with how its units stand.",
            "{ design: barograph-servo, title: Barograph servo amplifier, units: 3, fit_to_run: 2, look_overdue: 0, page: "
                + "designs/barograph-servo.html }",
            [
                Key.Id("design", "Its name.", "barograph-servo").Needed(),
                Key.Text("title", "What it is.", "Barograph servo amplifier").Needed(),
                Key.Text("maker", "Who made it.", "Tallis"),
                Key.Text("revision", "The revision described.", "C"),
                Key.Count("units", "How many boards are of it.", "3").Needed(),
                Key.Count("fit_to_run", "How many of them are fit to run.", "2").Needed(),
                Key.Count("look_overdue", "Of how many of those the look is overdue.", "0").Needed(),
                Page,
            ]
        );

    /// <summary>Every lot.</summary>
    public static Shape Lots { get; } =
        new(
            "lot row",
            "One lot of spare parts.",
            "{ lot: L-031, what: tantalum 10 µF, fitted: 2, scrapped: 1 }",
            [
                Key.Id("lot", "Its name.", "L-031").Needed(),
                Key.Text("what", "What the parts are.", "tantalum 10 µF ±10 % 35 V").Needed(),
                Key.Count("came", "How many came.", "10"),
                Key.Count("fitted", "How many were fitted on boards.", "2").Needed(),
                Key.RoughDate("received", "When it came.", "2026-03"),
                Key.Id("order", "The order.", "O-004"),
                Key.Count("scrapped", "How many went to the bin.", "1").Needed(),
            ]
        );

    /// <summary>Every finding.</summary>
    public static Shape Findings { get; } =
        new(
            "finding row",
            "Something about a record that a person should know.",
            "{ record: boards/SP-0007.md, line: 31, column: 5, check: reading-outside, severity: warning, message: says something }",
            [
                Key.Text("record", "The file.", "boards/SP-0007.md").Needed(),
                Key.Count("line", "The line.", "31").Needed(),
                Key.Count("column", "The column.", "5").Needed(),
                Key.Id("check", "The check that found it.", "polarity-from-print-alone").Needed(),
                Word("severity", ["note", "warning", "error"], "How serious it is.").Needed(),
                Key.Text("message", "What was found and what was expected.", "the print alone does not establish polarity").Needed(),
                Key.Text("next", "What to do.", "add polarity: [meter]"),
            ]
        );

    /// <summary>The tables with a row or more for each board.</summary>
    public static IReadOnlyList<(string Name, Shape Row)> OfEachBoard { get; } =
    [("parts", Parts), ("readings", Readings), ("bench", Bench), ("obligations", Obligations)];

    /// <summary>The tables of the collection.</summary>
    public static IReadOnlyList<(string Name, Shape Row)> OfAll { get; } =
    [("boards", Boards), ("designs", Designs), ("lots", Lots), ("findings", Findings)];

    /// <summary>Every table by name.</summary>
    public static IReadOnlyList<(string Name, Shape Row)> All { get; } = [OfAll[0], .. OfEachBoard, .. OfAll.Skip(1)];

    /// <summary>The JSON file of the collection.</summary>
    public static Shape Whole { get; } =
        new(
            "report data",
            "What the report of a collection tells, for programs. What it tells of each board is in a file of its own.",
            "{ version: 2, collection: Saltmarsh Point, as_of: 2026-11-25 }",
            [
                Key.Count("version", "The version of this form.", "2").Needed(),
                Key.Text("collection", "The name of the collection.", "Saltmarsh Point").Needed(),
                Key.Date("as_of", "The day that was taken for today.", "2026-11-25").Needed(),
                .. OfAll.Select(table => Key.List(table.Name, table.Row, table.Row.Description).Needed()),
            ]
        );

    /// <summary>The JSON file of a board: a change to one board changes a small file.</summary>
    public static Shape WholeBoard { get; } =
        new(
            "board data",
            "What the report tells of a board, for programs.",
            "{ version: 2, board: SP-0007 }",
            [
                Key.Count("version", "The version of this form.", "2").Needed(),
                Board,
                .. OfEachBoard.Select(table => Key.List(table.Name, OfOneBoard(table.Row), table.Row.Description).Needed()),
            ]
        );

    /// <summary>A row as it stands in the file of its board, which says once which board that is.</summary>
    public static Shape OfOneBoard(Shape row) =>
        new(
            row.Name,
            row.Description,
            row.Example.Replace("board: SP-0007, ", string.Empty, StringComparison.Ordinal),
            [.. row.Keys.Skip(1)]
        );

    // These rows are written and never read back, so no other word can stand there.
    private static Key Word(string name, IReadOnlyList<string> words, string description) =>
        Key.Word(name, words, "no other word", description);
}
