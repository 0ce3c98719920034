using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A date of a lot, an order or a calibration lies after the day of this run.</summary>
public sealed class StockDateInFuture : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "stock-date-in-future",
            Severity.Error,
            "a date of a lot, an order or a calibration lies after the day of this run",
            CheckEffect.HoldsBack,
            "what has not happened proves nothing"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        var stock = collection.Workshop.StockFile;
        var dates = (stock?.Orders ?? [])
            .SelectMany(order => new[] { order.Placed, order.PartReceived, order.Received, order.Lost, order.Cancelled })
            .Concat((stock?.Orders ?? []).SelectMany(order => order.Lines).SelectMany(line => new[] { line.Lost, line.Cancelled }))
            .OfType<Written<DateOnly>>()
            .Concat((stock?.Orders ?? []).SelectMany(order => order.Came).Select(came => came.Date))
            .Concat((stock?.Bench ?? []).Select(visit => visit.Date))
            .Concat((stock?.Lots ?? []).Select(lot => lot.Formed).OfType<Written<DateOnly>>())
            .Select(date => (stock!.Path, date))
            .Concat(
                (collection.Workshop.InstrumentsFile?.Instruments ?? [])
                    .SelectMany(instrument => instrument.Calibrations)
                    .Select(calibration => (collection.Workshop.InstrumentsFile!.Path, calibration.Date))
            );
        foreach (var lot in (stock?.Lots ?? []).Where(lot => lot.Received?.Value.Earliest > collection.Today))
        {
            yield return new Finding(
                Description.Name,
                Description.Severity,
                lot.Received!.Spot.In(stock!.Path),
                $"{lot.Received.Text} is in the future",
                "mend the year, month or day"
            );
        }

        foreach (var (path, date) in dates.Where(pair => pair.Item2.Value > collection.Today))
        {
            yield return new Finding(
                Description.Name,
                Description.Severity,
                date.Spot.In(path),
                $"{date.Text} is in the future",
                "mend the year, month or day"
            );
        }
    }
}
