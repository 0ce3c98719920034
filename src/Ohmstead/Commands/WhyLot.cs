using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Life;

namespace Ohmstead.Commands;

/// <summary>Tells all about a lot in the drawer: what it is, its readings, its age and what makers say of it, how to form it again, where
/// its parts went.</summary>
/// <param name="line">Tells one line.</param>
/// <param name="verdicts">Tells the verdicts on one reading.</param>
internal sealed class WhyLot(Action<string> line, Action<ImmutableArray<Verdict>> verdicts)
{
    /// <summary>Tells a lot; false when there is none of that name.</summary>
    public bool Tell(CollectionFolder files, RunOptions options, string name)
    {
        if (!new CollectionRun(files.Only([]), options).Run().Workshop.Lots.ContainsKey(name))
        {
            return false;
        }

        var result = new CollectionRun(files, options with { ForPages = false }).Run();
        LotFitting[] fittings =
        [
            .. result.Boards.SelectMany(board => board.Fittings).Where(fitted => fitted.Lot == name).Select(fitted => fitted.Fitting),
        ];
        Tell(LotStory.Gather(result.Workshop, result.Workshop.Lots[name], fittings, options.Today), result.Workshop, options.Today);
        return true;
    }

    private void Tell(LotStory story, Workshop workshop, DateOnly today)
    {
        var (lot, path) = (story.Lot, workshop.StockFile!.Path);
        line($"{lot.Id.Value}: {PartWords.Describe(lot.Values)} {path}:{lot.Spot.Line.ToString(CultureInfo.InvariantCulture)}");
        var order =
            workshop.ArrivalOf(lot.Id.Value) is var (whole, arrival) ? $" under order {whole.Id.Value}, line {arrival.Line.Value}"
            : lot.Order is { } under ? " under order " + under.Value
            : string.Empty;
        line($"  came {lot.Received?.Text ?? "on a day not written"}{order}, {Count(story)}");
        Readings(story, path);
        Scrapped(story, path);
        Age(story, today);
        Plan(story, today);
        foreach (var fitting in story.Fittings)
        {
            line(
                $"fitted {IsoDate.Text(fitting.Date)}: {fitting.Board} "
                    + $"{fitting.Reference}{(fitting.IsThere ? string.Empty : ", no longer there")}"
            );
        }

        if (lot.Values.Note is { } note)
        {
            line($"note: {note.Value}");
        }
    }

    private static string Count(LotStory story) =>
        story.Lot.Quantity is not { } came
            ? string.Create(CultureInfo.InvariantCulture, $"how many is not written, {story.Fittings.Count} fitted{Binned(story)}")
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{came.Value} of them, {story.Fittings.Count} fitted{Binned(story)}, {story.Left} left"
            );

    private static string Binned(LotStory story) =>
        story.Pieces.Scrapped == 0 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $", {story.Pieces.Scrapped} scrapped");

    private void Scrapped(LotStory story, string path)
    {
        foreach (var (visit, scrap) in story.Scraps)
        {
            line(
                $"{visit.Date.Text} (scrapped) "
                    + $"{scrap.Count.Text}{(scrap.Piece is { } piece ? ", piece " + piece.Value : string.Empty)}: {scrap.Because.Value} "
                    + $"{path}:{scrap.Spot.Line.ToString(CultureInfo.InvariantCulture)}"
            );
        }

        if (story.Pieces.ShareInWords is { } share)
        {
            line(story.Pieces.IsDoubted ? "doubt all of it: " + story.Pieces.DoubtInWords : share);
        }
    }

    private void Readings(LotStory story, string path)
    {
        foreach (var reading in story.Incoming)
        {
            var how =
                (reading.Reading.Frequency is { } frequency ? $"incoming, {frequency.Text}" : "incoming")
                + (reading.Reading.Piece is { } piece ? ", piece " + piece.Value : string.Empty);
            line($"{reading.Visit.Date.Text} ({how}) {path}:{reading.Reading.Spot.Line.ToString(CultureInfo.InvariantCulture)}");
            verdicts(reading.Verdicts);
        }

        if (story.Incoming.Count == 0)
        {
            line("no incoming reading: a new part is measured before it is fitted");
        }
    }

    private void Age(LotStory story, DateOnly today)
    {
        if (story.Dates.Words is { } made)
        {
            line($"made: {made} (date code {story.Lot.Values.DateCode!.Text})");
            foreach (var reading in story.Dates.Made)
            {
                line($"    {reading.Value}: {reading.Rule}; source: {reading.Source.Text}");
            }
        }
        else if (story.Dates.Fault is { } fault)
        {
            line($"made: not known, {fault}");
        }

        foreach (var (from, age) in story.Ages)
        {
            line(string.Create(CultureInfo.InvariantCulture, $"age: {age.Years:0.0} years since {from:yyyy-MM-dd}; {ShelfAge.Meaning}"));
            foreach (var advice in age.Advice)
            {
                line($"    {advice.Says}: {advice.Source.Text}");
            }
        }

        if (story.Shelf is { } shelf)
        {
            line(
                $"shelf life: {shelf.LifeWords}, {shelf.SinceWords}: until "
                    + $"{IsoDate.Text(shelf.Due)}{(shelf.IsOverOn(today) ? ", over" : string.Empty)}"
            );
        }
    }

    private void Plan(LotStory story, DateOnly today)
    {
        if (story.Shelf is not { } shelf || !shelf.IsOverOn(today) || story.Left <= 0)
        {
            return;
        }

        if (!LotReforming.Plan(story.Lot).Is(out var plan, out var reason))
        {
            line($"forming again: {reason}");
            return;
        }

        line("forming again, one part at a time:");
        line($"    {plan.ForParts}");
        line(
            string.Create(
                CultureInfo.InvariantCulture,
                $"    through {plan.SeriesOhms / 1000m:0.###} kΩ, which must bear {plan.WorstWatts:0.00} W and pass "
                    + $"{plan.WorstMilliamperes:0.0} mA should the part be shorted"
            )
        );
        for (var step = 0; step < plan.Steps.Count; step++)
        {
            line(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"    {step + 1}. {plan.Steps[step].Do}{(plan.Steps[step].Source == plan.Source ? string.Empty : " (common practice)")}"
                )
            );
        }

        line($"    give up when {string.Join(", or ", plan.StopWhen)} (common practice)");
        line($"    arithmetic: {plan.Arithmetic}");
        line($"    source: {plan.Source.Text}");
        line($"    {ReformingPlan.Caution}");
        line("    then write formed: with the day, and the leakage under bench, in stock.yaml");
    }
}
