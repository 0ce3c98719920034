using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>A name that a record uses and that nothing has: told in the same way wherever it stands.</summary>
/// <param name="Key">The key that it stands behind, for the text to write.</param>
/// <param name="Add">How to make the name known, as words that can follow 'or'.</param>
internal sealed record UnknownName(string Key, string Add)
{
    /// <summary>How to go on when no known name is near, where that is more than to add it.</summary>
    internal string? Otherwise { get; init; }

    /// <summary>All names that are known, where they are few enough to be told; null where they are not.</summary>
    internal IReadOnlyList<string>? Listed { get; init; }

    private static string Joined(IReadOnlyList<string> names) =>
        names.Count == 1 ? names[0] : $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}";

    /// <summary>The finding: what is missing, the known name that is nearest, and what to write.</summary>
    internal Finding In(string path, CheckDescription check, Written<string> name, string missing, KnownNames known)
    {
        if (known.LookingLike(name.Value) is { } alike)
        {
            return new(
                check.Name,
                check.Severity,
                name.Spot.In(path),
                $"{missing}; it looks like '{alike}' but has {Appearance.Difference(name.Value, alike)}",
                $"write {Key}: {alike}, copied from its list"
            );
        }

        var near = known.NearestTo(name.Value);
        return new(
            check.Name,
            check.Severity,
            name.Spot.In(path),
            Nearest.Told(
                missing,
                near,
                Listed is { } listed ? $"; there {(listed.Count == 1 ? "is" : "are")} {Joined(listed)}" : string.Empty
            ),
            near is null
                ? Otherwise ?? (Listed is null ? Add : $"write {Key}: with the one that is meant, or {Add}")
                : $"write {Key}: {near}, or {Add}"
        );
    }
}
