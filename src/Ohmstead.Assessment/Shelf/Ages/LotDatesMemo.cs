using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Shelf.Ages;

/// <summary>Keeps in mind what the date codes of lots can mean: lots are few, and their parts go to many boards. Used by one thread at a
/// time.</summary>
internal sealed class LotDatesMemo
{
    // A drawer has some hundred lots, and each came on one day.
    private const int Most = 1_024;

    private readonly Dictionary<(string Lot, DateOnly Came), LotDates> known = [];

    /// <summary>The dates of a lot as seen on a day, as <see cref="LotDates.Read"/> gives them.</summary>
    internal LotDates For(Lot lot, DateOnly day)
    {
        var key = (lot.Id.Value, LotDates.Came(lot, day));
        if (!known.TryGetValue(key, out var dates))
        {
            if (known.Count == Most)
            {
                known.Clear();
            }

            known[key] = dates = LotDates.Read(lot, day);
        }

        return dates;
    }
}
