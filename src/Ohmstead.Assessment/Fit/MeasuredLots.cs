using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>Lots with what was measured of them before they were fitted.</summary>
internal static class MeasuredLots
{
    /// <summary>A lot in the drawer.</summary>
    internal static LotOffer Offer(Workshop workshop, Lot lot) =>
        new(lot.Id.Value, lot.Values, Esr(LotPieces.ReadingsStillThere(workshop, lot.Id.Value).Select(pair => pair.Reading)));

    /// <summary>A lot that went into a place: readings of that very part count, else those of the lot. None do where the place asks for no
    /// ESR.</summary>
    internal static LotOffer Offer(Workshop workshop, Lot lot, PlaceHistory place)
    {
        if (place.Part.Values is { EsrLimit: null, EsrLow: null })
        {
            return new(lot.Id.Value, lot.Values, []);
        }

        var own = Esr(
            place.Readings.Where(reading => reading.IsNew && reading.Reading.Lot?.Value == lot.Id.Value).Select(reading => reading.Reading)
        );
        return own.Count > 0 ? new(lot.Id.Value, lot.Values, own) : Offer(workshop, lot);
    }

    /// <summary>A part that came from no lot, with what was read of it before it went in.</summary>
    internal static LotOffer Offer(PartValues values, PlaceHistory place) =>
        new(
            "the new part",
            values,
            Esr(place.Readings.Where(reading => reading.IsNew && reading.Reading.Lot is null).Select(reading => reading.Reading))
        );

    private static List<decimal> Esr(IEnumerable<Reading> readings) =>
        [
            .. readings
                .SelectMany(reading => reading.Values)
                .Where(value => value.Measured == Measured.Esr)
                .Select(value => value.Exact?.Value)
                .OfType<decimal>(),
        ];
}
