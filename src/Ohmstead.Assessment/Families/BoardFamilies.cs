using Ohmstead.Assessment.Boards;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Families;

/// <summary>The parts of a board by family, with what their readings say about their lives.</summary>
public static class BoardFamilies
{
    /// <summary>The families in order of the parts list, those of parts that were fitted later after them.</summary>
    public static IReadOnlyList<FamilyOnBoard> Of(BoardAssessment board)
    {
        var families = new OrderedDictionary<FamilyName, Counting>();
        var work = WorkOnParts(board.Visits);
        foreach (var place in board.Places)
        {
            var family = At(families, FamilyName.Of(place.Part.Values));
            family.Originals++;
            if (place.Readings.Length == 0)
            {
                continue;
            }

            var done = work.GetValueOrDefault(place.Part.Ref.Value) ?? [];
            foreach (var sitting in Sitting.Of(place, done))
            {
                if (sitting.Life(place.Part, board, done) is { } life)
                {
                    (sitting.IsOriginal ? family : At(families, FamilyName.Of(sitting.Values))).Lives.Add(life);
                }
                else if (sitting is { IsOriginal: true, FailedInCircuit: true })
                {
                    family.FailedInCircuit++;
                }
            }
        }

        return [.. families.Select(pair => new FamilyOnBoard(pair.Key, pair.Value.Originals, pair.Value.Lives.Count == 0 ? [] : [.. pair.Value.Lives], pair.Value.FailedInCircuit))];
    }

    private static Dictionary<string, List<WorkMoment>> WorkOnParts(IReadOnlyList<BenchVisit> visits)
    {
        var all = new Dictionary<string, List<WorkMoment>>(StringComparer.Ordinal);
        for (var order = 0; order < visits.Count; order++)
        {
            foreach (var work in visits[order].Work)
            {
                if (work.Part is { } part && work.Did.Value is not ("left alone" or "made safe"))
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

        internal List<PartLife> Lives { get; } = [];
    }
}
