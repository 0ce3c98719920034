using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Labels;

/// <summary>Makes labels of what the records say.</summary>
/// <param name="workshop">What the collection shares.</param>
/// <param name="site">Where its pages are found, or null for labels without a code.</param>
/// <param name="today">The day of the labels.</param>
public sealed class LabelMaker(Workshop workshop, PublishedAt? site, DateOnly today)
{
    private readonly Func<string, LocalLink?> lots = LotAddresses.For(workshop);

    /// <summary>The label of a board.</summary>
    public Label Of(BoardAssessment board)
    {
        var file = board.Board;
        var maker = PageFrame.Joined(
            (file.Maker ?? board.Design?.Maker)?.Value,
            file.Serial is { } serial ? "serial " + serial.Value : null
        );
        return new(
            file.Id.Value,
            file.Title.Value,
            Told(
                board.Design?.Title.Value == file.Title.Value ? null : board.Design?.Title.Value ?? file.Design?.Value,
                maker,
                $"label of {IsoDate.Text(today)}"
            ),
            Kinds(board.Hazards.Where(hazard => hazard.MadeSafe is null)),
            site?.Board(file.Id.Value)
        );
    }

    /// <summary>The labels of the originals that were taken off a board and are kept, in order of time.</summary>
    public IEnumerable<Label> Originals(BoardAssessment board)
    {
        var sits = board.Places.ToDictionary(
            place => place.Part.Ref.Value,
            place => (PartValues?)place.Part.Values,
            StringComparer.Ordinal
        );
        foreach (var visit in board.Visits)
        {
            foreach (var work in visit.Work.Where(work => work is { Part: not null, ChangesAPlace: true }))
            {
                var place = work.Part!.Value;
                if (work is { TakesAPartOut: true, Kept: { } kept })
                {
                    yield return Original(board, place, sits.GetValueOrDefault(place), (visit, work, kept.Value));
                }

                sits[place] = work.Lot is { } lot ? workshop.Lots.GetValueOrDefault(lot.Value)?.Values : work.NewPart;
            }
        }
    }

    /// <summary>The label of a lot in the drawer.</summary>
    public Label Of(Lot lot) =>
        new(
            lot.Id.Value,
            PartWords.Describe(lot.Values),
            Told(
                PageFrame.Joined(lot.Values.Maker?.Value, lot.Values.DateCode is { } code ? "date code " + code.Value : null),
                lot.Quantity is { } quantity ? $"{quantity.Text} came" + On(lot)
                    : lot.Received is { } on ? "came " + on.Text
                    : null,
                lot.Order is { } order ? "order " + order.Value : null
            ),
            [],
            site is not null && lots(lot.Id.Value) is { } place ? site.Of(place) : null
        );

    private static string On(Lot lot) => lot.Received is { } on ? $" {on.Text}" : string.Empty;

    private Label Original(BoardAssessment board, string place, PartValues? was, (BenchVisit Visit, WorkEntry Work, string Kept) gone) =>
        new(
            $"{board.Board.Id.Value} {place}",
            was is null ? "part, of which the record says no more" : PartWords.Describe(was),
            Told($"out {gone.Visit.Date.Text}", $"kept: {gone.Kept}", board.Board.Title.Value),
            // What could hurt in the board is in the bag now: that the board was made safe by it makes no difference here.
            Kinds(board.Hazards.Where(hazard => hazard.Hazard.At?.Value == place || ReferenceEquals(hazard.By, gone.Work))),
            site?.Of(LocalLink.ToFile(SiteAddress.Board(board.Board.Id.Value), 0, ElementId.For(IdPrefix.Part, place)))
        );

    private static ImmutableArray<string> Kinds(IEnumerable<AssessedHazard> hazards) =>
        [.. hazards.OrderBy(hazard => hazard.MustGo ? 0 : 1).Select(hazard => hazard.Hazard.Kind.Text).Distinct(StringComparer.Ordinal)];

    private static ImmutableArray<string> Told(params ReadOnlySpan<string?> words)
    {
        var there = ImmutableArray.CreateBuilder<string>();
        foreach (var word in words)
        {
            if (!string.IsNullOrEmpty(word))
            {
                there.Add(word);
            }
        }

        return there.DrainToImmutable();
    }
}
