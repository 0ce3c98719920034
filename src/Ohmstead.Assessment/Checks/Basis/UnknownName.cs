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
                $"write {Key}: {alike}, or {Add}"
            );
        }

        var near = known.NearestTo(name.Value);
        return new(
            check.Name,
            check.Severity,
            name.Spot.In(path),
            Nearest.Told(missing, near),
            near is null ? Otherwise ?? Add : $"write {Key}: {near}, or {Add}"
        );
    }
}
