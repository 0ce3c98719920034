using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Frame;

namespace Ohmstead.Publishing;

/// <summary>The first units of each design with their places; of all others nothing is kept. Told from several workers.</summary>
internal sealed class ComparedUnits
{
    // As many as stand beside each other on a wide screen.
    private const int Most = 6;

    private readonly Lock gate = new();
    private readonly Dictionary<string, SortedDictionary<string, UnitPlaces>> designs = new(StringComparer.Ordinal);

    /// <summary>Takes a board.</summary>
    public void Add(BoardAssessment board)
    {
        if (board.Design is not { } design)
        {
            return;
        }

        lock (gate)
        {
            if (!designs.TryGetValue(design.Id.Value, out var units))
            {
                designs.Add(design.Id.Value, units = new(StringComparer.Ordinal));
            }

            var number = board.Board.Id.Value;
            if (units.Count < Most || string.CompareOrdinal(number, units.Keys.Last()) < 0)
            {
                units[number] = UnitPlaces.From(board);
            }

            if (units.Count > Most)
            {
                units.Remove(units.Keys.Last());
            }
        }
    }

    /// <summary>The units of a design that are compared, in order of number.</summary>
    public IReadOnlyList<UnitPlaces> For(string design)
    {
        lock (gate)
        {
            return designs.TryGetValue(design, out var units) ? [.. units.Values] : [];
        }
    }
}
