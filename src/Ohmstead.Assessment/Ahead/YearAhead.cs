using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Shelf.Ages;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Life;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Ahead;

/// <summary>What falls due in a collection: lives, shelf lives, forming again, calibrations, looks, and waits that should be asked
/// after.</summary>
public static class YearAhead
{
    /// <summary>After how many days a wait is asked after. Common practice.</summary>
    public const int AskAfterDays = 30;

    /// <summary>After how many years a loan without an end is asked after. Common practice.</summary>
    public const int AskAfterYears = 1;

    /// <summary>Everything that falls due up to a day, what is overdue included, in order of date.</summary>
    /// <param name="workshop">The drawer and the instruments.</param>
    /// <param name="boards">All boards.</param>
    /// <param name="until">The last day to look at; a year from the day of the run is usual.</param>
    /// <param name="today">The day of the run.</param>
    public static IReadOnlyList<DueItem> List(Workshop workshop, IReadOnlyList<BoardSummary> boards, DateOnly today, DateOnly until) =>
        [
            .. boards
                .SelectMany(OfBoard)
                .Concat(Calibrations(workshop))
                .Concat(Lots(workshop, boards, today))
                .Where(item => item.First <= until)
                .OrderBy(item => item.First)
                .ThenBy(item => item.Kind)
                .ThenBy(item => item.Whom, StringComparer.Ordinal)
                .ThenBy(item => item.Place, StringComparer.Ordinal),
        ];

    private static IEnumerable<DueItem> OfBoard(BoardSummary board)
    {
        var number = board.Id.Value;
        foreach (var life in board.Lives)
        {
            if (life.MeasureOn is { } day)
            {
                yield return new(
                    day,
                    life.Latest,
                    DueKind.Life,
                    number,
                    life.Reference,
                    "measure it: its life may be used up",
                    $"estimated between {IsoDate.Text(life.Earliest)} and {IsoDate.Text(life.Latest)}, {RemainingLife.NoPromise}; "
                        + $"ohmstead why {number} {life.Reference} shows the arithmetic"
                );
            }
        }

        if (board.LookAgain is { } look)
        {
            yield return new(
                look,
                look,
                DueKind.LookAgain,
                number,
                null,
                "look at it again",
                board.ToldBefore is { } told
                    ? $"taken as told before {IsoDate.Text(told)}"
                    : $"last seen {IsoDate.Text(board.LastSeen!.Value)}"
            );
        }

        if (board.Whereabouts.Loan is { } loan)
        {
            yield return OfLoan(number, loan);
        }

        foreach (var wait in board.Waits)
        {
            var ask = CalendarSpan.After(wait.Since.Value, AskAfterDays * 86_400m);
            yield return new(
                ask,
                ask,
                DueKind.Wait,
                number,
                null,
                $"ask after {wait.For.Value}",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"waits since {wait.Since.Text} {Under(wait)}; " + $"asked after when {AskAfterDays} days have gone (common practice)"
                )
            )
            {
                Mark = wait.Since.Text,
            };
        }
    }

    private static string Under(Wait wait) =>
        wait.Order is not { } order ? "without an order"
        : wait.Line is not { } line ? "under order " + order.Value
        : $"under order {order.Value}, line {line.Value}";

    private static DueItem OfLoan(string board, WhereaboutsEntry loan)
    {
        var whom = loan.To?.Value ?? "whoever has it";
        var day = loan.Until?.Value ?? loan.Date.Value.AddYears(AskAfterYears);
        return new(
            day,
            day,
            DueKind.Loan,
            board,
            null,
            loan.Until is null ? $"ask {whom} after it" : $"have it back from {whom}",
            loan.Until is { } until
                ? $"lent on {loan.Date.Text} until {until.Text}"
                : $"lent on {loan.Date.Text} without a day to come back; asked after when a year has gone (common practice)"
        )
        {
            Mark = loan.Date.Text,
        };
    }

    private static IEnumerable<DueItem> Calibrations(Workshop workshop) =>
        from instrument in workshop.Instruments.Values
        // The latest is in force, also where an older one would have held longer.
        let last = instrument.Calibrations.MaxBy(calibration => calibration.Date.Value)
        where last is not null
        let until = CalibrationRules.Until(last)
        select new DueItem(
            until,
            until,
            DueKind.Calibration,
            instrument.Id.Value,
            null,
            "have it calibrated",
            $"calibrated {last.Date.Text}, {(last.Valid is { } valid ? "valid " + valid.Text : "valid 12 months, which is usual")}"
        );

    private static IEnumerable<DueItem> Lots(Workshop workshop, IReadOnlyList<BoardSummary> boards, DateOnly today)
    {
        var use = BoardSummary.UseOfLots(boards);
        var judge = new ReadingJudge(workshop);
        foreach (var lot in workshop.Lots.Values)
        {
            var isUsedUp = lot.Quantity is { } came && use.Fitted(lot.Id.Value) + workshop.ScrappedOf(lot.Id.Value) >= came.Value;
            if (
                isUsedUp
                || !workshop.HasCome(lot)
                || ShelfLife.For(lot, today) is not { } shelf
                || LotDoubts.For(workshop, judge, lot, today).FailedOn is not null
            )
            {
                continue;
            }

            var why = $"{shelf.SinceWords}; shelf life {shelf.LifeWords}";
            yield return LotReforming.IsFor(lot)
                ? new(
                    shelf.Due,
                    shelf.Due,
                    DueKind.Reforming,
                    lot.Id.Value,
                    null,
                    $"form it again: {PartWords.Describe(lot.Values)}",
                    $"{why}; ohmstead why {lot.Id.Value} shows the plan"
                )
                : new(
                    shelf.Due,
                    shelf.Due,
                    DueKind.Shelf,
                    lot.Id.Value,
                    null,
                    $"measure or renew it: {PartWords.Describe(lot.Values)}",
                    why
                );
        }
    }
}
