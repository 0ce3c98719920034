using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;

namespace Ohmstead.Publishing;

/// <summary>The rows of the tables: one cell for each key of the row's shape, in its order; null where there is nothing to say.</summary>
internal static class DataRows
{
    /// <summary>A board.</summary>
    public static string?[] Board(BoardSummary board, Workshop workshop)
    {
        var maker = board.Maker ?? (board.Design is { } name ? workshop.Designs.GetValueOrDefault(name)?.Maker?.Value : null);
        var reason = board.Reasons.Length == 0 ? null : board.Reasons[0];
        return
        [
            board.Id.Value,
            board.Title,
            board.Design,
            maker,
            board.Serial,
            board.Revision,
            BoardStates.Words(board.State),
            reason?.Told,
            reason?.NextStep,
            Day(board.LastSeen),
            Day(board.LookAgain),
            board.IsLookOverdue ? "yes" : "no",
            board.Whereabouts.Told,
            Number(board.Readings.Inside),
            Number(board.Readings.Outside),
            Number(board.Readings.Undecided),
            Number(board.Readings.Others),
            SiteAddress.Board(board.Id.Value),
            SiteAddress.BoardData(board.Id.Value),
            Badges.PathOf(board.Id.Value),
            board.Path,
        ];
    }

    /// <summary>The places of a board.</summary>
    public static void Parts(BoardAssessment board, IRowTaker rows)
    {
        foreach (var place in board.Places)
        {
            rows.Take(
                board.Board.Id.Value,
                place.Part.Ref.Value,
                place.What,
                place.IsEmpty ? "empty"
                    : place.FittedBy is null ? "original"
                    : "replacement",
                place.IsEmpty ? null : place.FittedBy?.Lot?.Value,
                Day(place.FittedOn?.Date.Value),
                place.Standing.Length == 0 && place.PassedTest is null
                    ? null
                    : VerdictWords.Describe(
                        Outcomes.Together(place.Standing, null) is var together && place.PassedTest == false ? VerdictOutcome.Outside
                        : place is { PassedTest: true, Standing.Length: 0 } ? VerdictOutcome.Inside
                        : together
                    ),
                place.Decision?.What.Text,
                place.Decision?.Because.Value,
                DecisionWords.Doubt(place)
            );
        }
    }

    /// <summary>The readings and proofs of a board, value by value.</summary>
    public static void Readings(BoardAssessment board, IRowTaker rows)
    {
        foreach (var assessed in board.Readings)
        {
            var reading = assessed.Reading;
            if ((reading.Part ?? reading.Point ?? reading.Lot) is { } of)
            {
                var start = new Entry(
                    board.Board.Id.Value,
                    assessed.Visit,
                    of.Value,
                    reading.StateWord,
                    reading.Circuit?.Text,
                    (reading.Instrument ?? assessed.Visit.Instrument)?.Value,
                    reading.Spot.Line
                );
                start.Rows(rows, assessed.Verdicts, reading.Result);
            }
        }

        foreach (var assessed in board.Proofs)
        {
            var proof = assessed.Proof;
            var start = new Entry(
                board.Board.Id.Value,
                assessed.Visit,
                proof.Point.Value,
                "proof",
                null,
                (proof.Instrument ?? assessed.Visit.Instrument)?.Value,
                proof.Spot.Line
            );
            start.Rows(rows, assessed.Verdicts, proof.Result);
        }
    }

    /// <summary>What was found, done, decided and noted at the bench.</summary>
    public static void Bench(BoardAssessment board, IRowTaker rows)
    {
        var number = board.Board.Id.Value;
        foreach (var visit in board.Visits)
        {
            var (date, by) = (Day(visit.Date.Value), visit.By?.Value);
            foreach (var found in visit.Found)
            {
                rows.Take(
                    number,
                    date,
                    by,
                    "found",
                    found.At.Value,
                    found.What.Value,
                    found.Severity.Text,
                    null,
                    null,
                    Number(found.Spot.Line)
                );
            }

            foreach (var work in visit.Work)
            {
                rows.Take(
                    number,
                    date,
                    by,
                    "work",
                    (work.Part ?? work.At)?.Value,
                    work.Did.Text,
                    null,
                    work.Lot?.Value,
                    work.Note?.Value,
                    Number(work.Spot.Line)
                );
            }

            foreach (var decision in visit.Decided)
            {
                rows.Take(
                    number,
                    date,
                    by,
                    "decided",
                    decision.Place?.Value,
                    decision.What.Text,
                    null,
                    null,
                    decision.Because.Value,
                    Number(decision.Spot.Line)
                );
            }

            if (visit.Note is { } note)
            {
                rows.Take(number, date, by, "note", null, note.Value, null, null, null, Number(note.Spot.Line));
            }
        }
    }

    /// <summary>What must be shown before a board may be switched on.</summary>
    public static void Obligations(JudgedBoard board, IRowTaker rows)
    {
        foreach (var obligation in board.Obligations)
        {
            var (isOpen, by) = (obligation.Standing == ObligationStanding.Open, obligation.MetBy);
            rows.Take(
                board.Board.Id.Value,
                obligation.Kind,
                obligation.At,
                ObligationStandings.Words(obligation.Standing),
                obligation.Text,
                isOpen ? BoardStates.Words(obligation.State) : null,
                isOpen ? obligation.NextStep : null,
                by?.Words.Text,
                Day(by?.Day),
                by?.Path,
                by is null ? null : Number(by.Spot.Line)
            );
        }
    }

    /// <summary>The designs.</summary>
    public static IEnumerable<string?[]> Designs(RunResult result) =>
        DesignUnits
            .Of(result.Workshop.Designs.Values, result.Boards)
            .Select(
                string?[] (units) =>
                    [
                        units.Design.Id.Value,
                        units.Design.Title.Value,
                        units.Design.Maker?.Value,
                        units.Design.Revision?.Value,
                        Number(units.Units.Count),
                        Number(units.Units.Count(unit => unit.State == BoardState.FitToRun)),
                        Number(units.Units.Count(unit => unit.IsFitButOverdue)),
                        SiteAddress.Design(units.Design.Id.Value),
                    ]
            );

    /// <summary>The lots.</summary>
    public static IEnumerable<string?[]> Lots(RunResult result)
    {
        var use = BoardSummary.UseOfLots(result.Boards);
        return result
            .Workshop.Lots.Values.OrderBy(lot => lot.Id.Value, StringComparer.Ordinal)
            .Select(
                string?[] (lot) =>
                    [
                        lot.Id.Value,
                        PartWords.Describe(lot.Values),
                        lot.Quantity is { } came ? Number(came.Value) : null,
                        Number(use.Fitted(lot.Id.Value)),
                        lot.Received?.Value.ToString(),
                        lot.Order?.Value,
                        Number(result.Workshop.ScrappedOf(lot.Id.Value)),
                    ]
            );
    }

    /// <summary>The findings.</summary>
    public static IEnumerable<string?[]> Findings(IEnumerable<Finding> findings) =>
        findings.Select(
            string?[] (finding) =>
                [
                    finding.Place.Path,
                    Number(finding.Place.Line),
                    Number(finding.Place.Column),
                    finding.Check,
                    finding.Severity switch
                    {
                        Severity.Error => "error",
                        Severity.Warning => "warning",
                        _ => "note",
                    },
                    finding.Message,
                    finding.NextStep,
                ]
        );

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string? Day(DateOnly? day) => day is { } there ? IsoDate.Text(there) : null;

    private readonly struct Entry(string board, BenchVisit visit, string of, string kind, string? circuit, string? instrument, int line)
    {
        private readonly string? date = Day(visit.Date.Value);
        private readonly string place = Number(line);

        public void Rows(IRowTaker rows, IReadOnlyList<Verdict> verdicts, Written<TestResult>? test)
        {
            for (var i = 0; i < verdicts.Count; i++)
            {
                var verdict = verdicts[i];
                Row(
                    rows,
                    VerdictWords.Describe(verdict.Measured),
                    verdict.Reading.Text,
                    verdict.LimitInWords?.Text,
                    verdict.Limit is { } limit ? VerdictWords.Describe(limit.Kind) : null,
                    verdict.Outcome,
                    verdict.Probability is { } probability ? VerdictWords.Probability(probability) : null
                );
            }

            if (test is not null)
            {
                Row(rows, "test", test.Text, null, null, Outcomes.From(test.Value), null);
            }
        }

        private void Row(
            IRowTaker rows,
            string measured,
            string value,
            string? limit,
            string? limitKind,
            VerdictOutcome outcome,
            string? probability
        ) =>
            rows.Take(
                board,
                date,
                visit.By?.Value,
                of,
                kind,
                circuit,
                instrument,
                measured,
                value,
                limit,
                limitKind,
                VerdictWords.Describe(outcome),
                probability,
                place
            );
    }
}
