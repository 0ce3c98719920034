using Ohmstead.Records.Model;

namespace Ohmstead.Records.Days;

/// <summary>
/// The records as the bench had them at the end of a day: whatever is dated later has not happened. Nothing is filtered afterwards, so no
/// verdict, state or due day can know of what came later.
/// </summary>
/// <param name="day">The day.</param>
public sealed class RecordsUpTo(DateOnly day)
{
    /// <summary>A board, or null when it had not come yet.</summary>
    /// <remarks>A board of which nobody wrote down when it came was there all the time.</remarks>
    public BoardFile? Board(BoardFile board) =>
        board.Arrived?.Date is { Value: var came } && came.Earliest > day
            ? null
            : board with
            {
                Bench = [.. board.Bench.Where(visit => visit.Date.Value <= day)],
                Waiting = [.. board.Waiting.Where(wait => wait.Since.Value <= day).Select(Wait)],
                Whereabouts = [.. board.Whereabouts.Where(step => step.Date.Value <= day)],
            };

    /// <summary>The stock: lots that had come, orders that were placed, what was done with them by then.</summary>
    public StockFile Stock(StockFile stock) =>
        stock with
        {
            Lots = [.. stock.Lots.Where(lot => !(lot.Received is { Value: var came } && came.Earliest > day)).Select(Lot)],
            Orders = [.. stock.Orders.Where(order => order.Placed.Value <= day).Select(Order)],
            Bench = [.. stock.Bench.Where(visit => visit.Date.Value <= day)],
        };

    /// <summary>The instruments with the calibrations that had been made.</summary>
    public InstrumentsFile Instruments(InstrumentsFile instruments) =>
        instruments with
        {
            Instruments =
            [
                .. instruments.Instruments.Select(instrument =>
                    instrument with
                    {
                        Calibrations = [.. instrument.Calibrations.Where(calibration => calibration.Date.Value <= day)],
                    }
                ),
            ],
        };

    // A wait that ended later was open; until when a loan is to last was said when it began, and stays.
    private Wait Wait(Wait wait) => wait with { Until = UpTo(wait.Until) };

    // When it was formed before that is not written down any more.
    private Lot Lot(Lot lot) => lot with { Formed = UpTo(lot.Formed) };

    private Order Order(Order order) =>
        order with
        {
            PartReceived = UpTo(order.PartReceived),
            Received = UpTo(order.Received),
            Lost = UpTo(order.Lost),
            Cancelled = UpTo(order.Cancelled),
        };

    private Written<DateOnly>? UpTo(Written<DateOnly>? date) => date is { Value: var when } && when > day ? null : date;
}
