using System.Globalization;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;

namespace Ohmstead.PartsLists;

/// <summary>A parts list held against the parts that a record has already.</summary>
/// <param name="New">Parts that the record does not have.</param>
/// <param name="Same">References that it has, with nothing against them in the list.</param>
/// <param name="Less">Parts that it has without something the list says: told, and left to the keeper.</param>
/// <param name="Conflicts">Parts that it has with another value: each as one line that says both.</param>
/// <param name="Alike">References that can be taken for one that is there, or for each other.</param>
internal sealed record ListComparison(
    IReadOnlyList<ListedPart> New,
    IReadOnlyList<string> Same,
    IReadOnlyList<string> Less,
    IReadOnlyList<ListFault> Conflicts,
    IReadOnlyList<ListFault> Alike
)
{
    // Words about a part may differ; what decides a verdict may not.
    private static readonly string[] WordsAboutIt =
    [
        PartShape.Note.Name,
        PartShape.Maker.Name,
        PartShape.Series.Name,
        PartShape.DateCode.Name,
    ];

    /// <summary>Compares.</summary>
    /// <param name="parts">The list.</param>
    /// <param name="known">The parts of the record by reference.</param>
    public static ListComparison Compare(IReadOnlyList<ListedPart> parts, IReadOnlyDictionary<string, KnownPart> known)
    {
        var (added, same, less) = (new List<ListedPart>(), new List<string>(), new List<string>());
        var (conflicts, alike) = (new List<ListFault>(), new List<ListFault>());
        var looks = known
            .Keys.GroupBy(Appearance.Skeleton, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal);
        foreach (var part in parts)
        {
            if (known.TryGetValue(part.Reference, out var there))
            {
                var against = Against(part, there);
                conflicts.AddRange(against);
                if (against.Count == 0)
                {
                    same.Add(part.Reference);
                    less.AddRange(
                        part.Values.Where(value => there.Get(value.Key) is null)
                            .Select(value =>
                                string.Create(
                                    CultureInfo.InvariantCulture,
                                    $"{part.Reference}: the record says no {value.Key}, the list says {value.Value}"
                                )
                            )
                    );
                }
            }
            else if (!looks.TryAdd(Appearance.Skeleton(part.Reference), part.Reference))
            {
                var other = looks[Appearance.Skeleton(part.Reference)];
                alike.Add(
                    new(
                        part.Line,
                        0,
                        $"'{part.Reference}' looks like '{other}': it has {Appearance.Difference(part.Reference, other)}",
                        $"write {other} if it is the same"
                    )
                );
            }
            else
            {
                added.Add(part);
            }
        }

        return new(added, same, less, conflicts, alike);
    }

    private static List<ListFault> Against(ListedPart part, KnownPart there)
    {
        var at = $"{there.Path}:{there.Part.Spot.Line.ToString(CultureInfo.InvariantCulture)}";
        var against = new List<ListFault>();
        if (part.IsKindSaid && part.Kind != there.Part.Values.Kind.Value)
        {
            against.Add(
                new(
                    part.Line,
                    0,
                    $"{part.Reference} is '{part.Kind.Name}' in the list, and '{there.Part.Values.Kind.Text}' in {at}",
                    "mend the one that is wrong"
                )
            );
        }

        against.AddRange(
            part.Values.Where(value => !WordsAboutIt.Contains(value.Key) && there.Get(value.Key) is { } known && known != value.Value)
                .Select(value => new ListFault(
                    part.Line,
                    0,
                    $"{part.Reference} has {value.Key} {value.Value} in the list, and {there.Get(value.Key)} in {at}",
                    "mend the one that is wrong"
                ))
        );
        return against;
    }
}
