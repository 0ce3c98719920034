using Ohmstead.Assessment.Families.Statistics;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>The parts of a board by family, with what their readings say about their lives.</summary>
public static class BoardFamilies
{
    // Most boards have fewer.
    private const int Usual = 32;

    /// <summary>The families in order of the parts list, those of parts that were fitted later after them.</summary>
    public static IReadOnlyList<FamilyOnBoard> Count(BoardHistory board)
    {
        var families = new OrderedDictionary<FamilyName, Counting>(Math.Min(board.Places.Length, Usual));
        var lives = new List<(Counting Family, ObservedLife Life)>(board.Places.Length);
        var work = WorkOnParts(board.Visits);
        foreach (var place in board.Places)
        {
            var family = At(families, FamilyName.For(place.Part.Values));
            family.Originals++;
            if (place.Readings.Length == 0)
            {
                continue;
            }

            if (!work.TryGetValue(place.Part.Ref.Value, out var done))
            {
                // Nearly every part is the original.
                Look(place, family, SeatedPart.Original(place), []);
                continue;
            }

            foreach (var sitting in SeatedPart.Find(place, done))
            {
                Look(place, family, sitting, done);
            }
        }

        return Gathered(families, lives);

        void Look(PlaceHistory place, Counting family, SeatedPart sitting, IReadOnlyList<WorkMoment> done)
        {
            if (sitting.Life(place.Part, board, done) is { } life)
            {
                var of = sitting.IsOriginal ? family : At(families, FamilyName.For(sitting.Values));
                of.Lives++;
                lives.Add((of, life));
            }
            else if (sitting is { IsOriginal: true, FailedInCircuit: true })
            {
                family.FailedInCircuit++;
            }
        }
    }

    private static FamilyOnBoard[] Gathered(
        OrderedDictionary<FamilyName, Counting> families,
        List<(Counting Family, ObservedLife Life)> lives
    )
    {
        var gathered = new FamilyOnBoard[families.Count];
        for (var at = 0; at < gathered.Length; at++)
        {
            var (name, counting) = families.GetAt(at);
            counting.Gathered = counting.Lives == 0 ? [] : new ObservedLife[counting.Lives];
            counting.Lives = 0;
            gathered[at] = new(name, counting.Originals, counting.Gathered, counting.FailedInCircuit);
        }

        foreach (var (family, life) in lives)
        {
            family.Gathered[family.Lives++] = life;
        }

        return gathered;
    }

    private static Dictionary<string, List<WorkMoment>> WorkOnParts(IReadOnlyList<BenchVisit> visits)
    {
        var all = new Dictionary<string, List<WorkMoment>>(StringComparer.Ordinal);
        for (var order = 0; order < visits.Count; order++)
        {
            foreach (var work in visits[order].Work)
            {
                if (work.Part is { } part && work.Did.Value is not (WorkKind.LeftAlone or WorkKind.MadeSafe))
                {
                    if (!all.TryGetValue(part.Value, out var list))
                    {
                        all[part.Value] = list = [];
                    }

                    list.Add(new(Moments.OfWork(order), visits[order].Date.Value, work));
                }
            }
        }

        return all;
    }

    private static Counting At(OrderedDictionary<FamilyName, Counting> families, FamilyName name)
    {
        if (!families.TryGetValue(name, out var counting))
        {
            families.Add(name, counting = new Counting());
        }

        return counting;
    }

    private sealed class Counting
    {
        internal int Originals { get; set; }

        internal int FailedInCircuit { get; set; }

        internal int Lives { get; set; }

        internal ObservedLife[] Gathered { get; set; } = [];
    }
}
