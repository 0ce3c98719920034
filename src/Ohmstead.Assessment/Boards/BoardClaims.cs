using System.Collections.Immutable;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>
/// What the fittings of one board ask of the lots that they came from, those that were taken out again included: each had a piece.
/// </summary>
/// <param name="board">The board.</param>
/// <param name="timeline">What sat where and when.</param>
/// <param name="readings">All its readings, oldest first.</param>
/// <param name="workshop">The drawer.</param>
internal sealed class BoardClaims(BoardFile board, Timeline timeline, ImmutableArray<AssessedReading> readings, Workshop workshop)
{
    private readonly Dictionary<string, bool> mayAsk = new(StringComparer.Ordinal);
    private ILookup<string, AssessedReading>? byPart;
    private ILookup<string, AssessedReading>? byPlace;

    /// <summary>All claims in order of time, and what each of the pieces that sit there asks.</summary>
    internal (ImmutableArray<PieceClaim> Claims, PieceAsked[] Asked) Collect(ImmutableArray<NewPiece> sitting)
    {
        // Most lots are read piece by piece at the place they go to: then nothing is asked of the drawer.
        LotFitted[] fittings = [.. timeline.FromLots().Where(fitting => MayAsk(fitting.Lot)).OrderBy(fitting => fitting.Change.At)];
        var asked = new PieceAsked[sitting.Length];
        if (fittings.Length == 0)
        {
            return ([], asked);
        }

        var whereIs = new Dictionary<WorkEntry, int>(ReferenceEqualityComparer.Instance);
        for (var at = 0; at < sitting.Length; at++)
        {
            whereIs.TryAdd(sitting[at].Work, at);
        }

        var claims = ImmutableArray.CreateBuilder<PieceClaim>();
        foreach (var ofLot in fittings.GroupBy(fitting => fitting.Lot, StringComparer.Ordinal))
        {
            var lot = workshop.Lots[ofLot.Key];
            var kind = lot.Values.Kind.Value;
            LotFitted[] all = [.. ofLot];
            string?[] names =
            [
                .. all.Select(fitting =>
                    NameOf(fitting, whereIs.TryGetValue(fitting.Change.Work, out var sits) ? sitting[sits].Own : null)
                ),
            ];
            var loose = LoosePieces(lot, names);
            for (var at = 0; at < all.Length; at++)
            {
                var sits = whereIs.GetValueOrDefault(all[at].Change.Work, -1);
                if (names[at] is null && WasReadItself(all[at], kind))
                {
                    continue;
                }

                var by = names[at] is null ? Take(loose, all[at], kind) : null;
                var name = names[at] ?? by?.Reading.Piece?.Value;
                var claim = by is not null && name is null ? null : ClaimOf(all[at], name);
                if (claim is not null)
                {
                    claims.Add(claim);
                }

                if (sits >= 0)
                {
                    asked[sits] = new(by, claim);
                }
            }
        }

        return (claims.DrainToImmutable(), asked);
    }

    private PieceClaim ClaimOf(LotFitted fitting, string? name) =>
        new(
            fitting.Lot,
            name,
            board.Id.Value,
            board.Path,
            fitting.Reference,
            fitting.Change.Visit.Date.Value,
            fitting.LeftOn?.Date.Value,
            fitting.Change.Work.Spot
        );

    private bool MayAsk(string lot)
    {
        if (!mayAsk.TryGetValue(lot, out var may))
        {
            mayAsk[lot] = may = IsReadInTheDrawer(lot);
        }

        return may;
    }

    private bool IsReadInTheDrawer(string lot) =>
        workshop.Lots.ContainsKey(lot)
        && (
            workshop.IncomingReadings.Contains(lot)
            || readings.Any(reading => reading.Reading.Lot?.Value == lot && (reading.Reading.Piece is not null || IsLoose(reading)))
        );

    // What was read of it in its place tells its name as well as what was read before it went in.
    private string? NameOf(LotFitted fitting, AssessedReading? own)
    {
        var named = own is not null && (own.Reading.Lot is null || own.Reading.Lot.Value == fitting.Lot) ? own.Reading.Piece : null;
        return (named ?? Before(fitting).LastOrDefault(reading => reading.Reading.Piece is not null)?.Reading.Piece)?.Value;
    }

    // Read as a new part for this place, or in it at the visit that fitted it: whoever did so asked nothing of the drawer. What was read
    // later came too late for that: the piece that was read in the drawer was taken for this place.
    private bool WasReadItself(LotFitted fitting, PartKind kind) =>
        Before(fitting).Any()
        || InPlace(fitting.Reference)
            .Any(reading =>
                !reading.IsNew
                && reading.EmptiedOn is null
                && reading.VisitOrder == fitting.Change.At.Visit
                && NewPiece.Passes(reading, kind)
                && ReferenceEquals(PieceAt(reading), fitting.Change)
            );

    private PlaceChange? PieceAt(AssessedReading reading) =>
        timeline.PieceAt(reading.Place!.Ref.Value, reading.VisitOrder, reading.Reading.State is { Value: ReadingState.AsLeft });

    private IEnumerable<AssessedReading> InPlace(string reference) =>
        (
            byPlace ??= readings
                .Where(reading => reading.Place is not null)
                .ToLookup(reading => reading.Place!.Ref.Value, StringComparer.Ordinal)
        )[reference];

    private IEnumerable<AssessedReading> OfPart(string reference) =>
        (
            byPart ??= readings
                .Where(reading => reading.Reading.Part is not null)
                .ToLookup(reading => reading.Reading.Part!.Value, StringComparer.Ordinal)
        )[reference];

    private IEnumerable<AssessedReading> Before(LotFitted fitting) =>
        OfPart(fitting.Reference)
            .Where(reading =>
                reading.IsNew
                && reading.Reading.Lot?.Value == fitting.Lot
                && reading.At > fitting.After
                && reading.At.Visit <= fitting.Change.At.Visit
            );

    // A piece that a reading for a place names went to that place.
    private List<List<AssessedReading>> LoosePieces(Lot lot, string?[] names)
    {
        var came = lot.Received?.Value.Earliest ?? DateOnly.MinValue;
        var ofLot = readings.Where(reading =>
            reading.Reading.Lot?.Value == lot.Id.Value && IsLoose(reading) && reading.Visit.Date.Value >= came
        );
        return [.. LotPieces.Grouped(ofLot).Where(piece => piece[0].Reading.Piece is not { } name || !names.Contains(name.Value))];
    }

    private static AssessedReading? Take(List<List<AssessedReading>> loose, LotFitted fitting, PartKind kind)
    {
        for (var at = 0; at < loose.Count; at++)
        {
            if (loose[at].Find(reading => reading.At.Visit <= fitting.Change.At.Visit && NewPiece.Passes(reading, kind)) is { } by)
            {
                loose.RemoveAt(at);
                return by;
            }
        }

        return null;
    }

    private static bool IsLoose(AssessedReading reading) => reading is { Place: null, Reading: { Part: null, Lot: not null } };
}
