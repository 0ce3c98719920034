using System.Collections.Immutable;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Checks.Files;

/// <summary>Two parts or points have names that look the same or differ by capitals alone: a reader takes one for the other, and so does a
/// system that does not tell capitals.</summary>
public sealed class NameLooksAlike : IFileCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "name-looks-alike",
            Severity.Warning,
            "two parts or points have names that look the same or differ by capitals alone",
            CheckEffect.HoldsBack,
            "which of the two a reading is of is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(FileUnderCheck file) =>
        Alike(file, file.Design?.Parts.Select(part => part.Ref) ?? [], file.References)
            .Concat(Alike(file, file.Design?.Points.Select(point => point.Name) ?? [], file.Points.Select(point => point.Name)));

    // Two names of the design are told there, once for all its boards.
    private IEnumerable<Finding> Alike(FileUnderCheck file, IEnumerable<Written<string>> ofDesign, IEnumerable<Written<string>> ofRecord)
    {
        ImmutableArray<Written<string>> before = [.. ofDesign];
        ImmutableArray<Written<string>> all = [.. before, .. ofRecord];

        // Most lists have no letter that could be taken for another, and no small one.
        if (all.All(static name => LookOf(name.Value) == name.Value))
        {
            yield break;
        }

        var first = new Dictionary<string, int>(all.Length, StringComparer.Ordinal);
        for (var at = 0; at < all.Length; at++)
        {
            var look = LookOf(all[at].Value);
            if (first.TryAdd(look, at) || at < before.Length || all[first[look]] is not { } other || other.Value == all[at].Value)
            {
                continue;
            }

            var path = first[look] < before.Length ? file.Design!.Path : file.Path;
            yield return file.Finding(
                Description,
                all[at].Spot,
                Say(all[at].Value, other.Value),
                $"write {other.Value} if it is the same, or a name that cannot be taken for it"
            ) with
            {
                Related = [new RelatedPlace(other.Spot.In(path), "the other one")],
            };
        }
    }

    private static string Say(string name, string other) =>
        name.Equals(other, StringComparison.OrdinalIgnoreCase)
            ? $"'{name}' differs from '{other}' by capitals alone"
            : $"'{name}' looks like '{other}' but has {Appearance.Difference(name, other)}";

    private static string LookOf(string name) => Appearance.Skeleton(name).ToUpperInvariant();
}
