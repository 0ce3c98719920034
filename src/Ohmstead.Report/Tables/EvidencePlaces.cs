using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Electronics;
using Ohmstead.Records.Text;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>The ways from an evidence to the entry that it is: a reading by its address, a lot in the drawer, any other entry by its
/// visit.</summary>
/// <param name="context">What every page knows.</param>
/// <param name="board">The board of the page.</param>
/// <param name="anchors">The addresses of its readings.</param>
internal sealed class EvidencePlaces(ReportContext context, BoardAssessment board, ReadingAnchors anchors)
{
    private readonly Dictionary<Spot, AssessedReading> readings = board
        .Readings.Where(reading => reading.VisitOrder >= 0)
        .ToDictionary(reading => reading.Reading.Spot);
    private readonly HashSet<ElementId> led = [];
    private readonly IReadOnlyList<ElementId> visits = VisitAnchors.For(board.Visits);

    /// <summary>Writes the place of an obligation, leading to the reading that meets it, where that is told in full, else to the part the
    /// first time that it is named.</summary>
    public void Where(HtmlWriter html, Obligation met)
    {
        var (evidence, name) = (met.MetBy!, met.At ?? "board");
        if (evidence.Kind == EvidenceKind.Reading && IsHere(evidence) && AnchorOf(evidence.Spot, board.Place(name)) is { } anchor)
        {
            html.Open(Tag.A).To(anchor).Text(name);
            return;
        }

        if (led.Add(ElementId.For(IdPrefix.Part, name)))
        {
            PartLink.Write(html, board, name);
        }
        else
        {
            html.Text(name);
        }

        if (evidence.Kind == EvidenceKind.Reading && !IsHere(evidence) && board.Place(name)?.FittedLot is { } lot)
        {
            html.Text(" (");
            if (context.LotOf(lot.Id.Value) is { } drawer)
            {
                html.Open(Tag.A).To(drawer).Text($"lot {lot.Id.Value}");
            }
            else
            {
                html.Text($"lot {lot.Id.Value}");
            }

            html.Text(")");
        }
    }

    /// <summary>Writes the day of an evidence, leading to its visit the first time that it is named; nothing where it has no day.</summary>
    public void Day(HtmlWriter html, Obligation met)
    {
        if (met.MetBy is not { Day: { } day } evidence)
        {
            return;
        }

        var words = IsoDate.Text(day);
        if (IsHere(evidence) && VisitOf(day, evidence) is { } visit && led.Add(visit))
        {
            html.Open(Tag.A).To(visit).Text(words);
        }
        else
        {
            html.Text(words);
        }
    }

    private bool IsHere(Evidence evidence) => evidence.Path == board.Board.Path;

    // A reading whose verdict stands is told in full in the row of its part, which is where its line at the bench leads too.
    private ElementId? AnchorOf(Spot spot, PlaceHistory? place) =>
        !readings.TryGetValue(spot, out var reading)
        || (place is not null && reading.Verdicts.Length > 0 && reading.Verdicts.All(verdict => place.Standing.Contains(verdict)))
            ? null
        : reading.Verdicts.Length > 0 ? anchors.Find(reading.Verdicts[0])
        : anchors.Find(reading.Reading);

    // Of two visits of one day it is the one behind whose beginning the entry stands.
    private ElementId? VisitOf(DateOnly day, Evidence evidence)
    {
        // Visits are in order of time, those of one day in order of the file: the last that began no later.
        var (low, high) = (0, board.Visits.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            var visit = board.Visits[middle];
            var isNoLater =
                (visit.Date.Value, visit.Spot.Line, visit.Spot.Column).CompareTo((day, evidence.Spot.Line, evidence.Spot.Column)) <= 0;
            (low, high) = isNoLater ? (middle + 1, high) : (low, middle);
        }

        return low > 0 && board.Visits[low - 1].Date.Value == day ? visits[low - 1] : null;
    }
}
