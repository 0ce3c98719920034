using System.Text.RegularExpressions;

namespace Ohmstead.Running;

/// <summary>How the keys of a record are typed on the command line that was given, so that what a finding says to write is what can be
/// typed: <c>--lot L-001</c> for <c>lot: L-001</c>, <c>capacitance=391uF</c> for <c>capacitance: 391 uF</c>.</summary>
/// <param name="options">The option of each key that has one.</param>
/// <param name="isValue">Whether a key is typed with its value as one word.</param>
internal sealed partial class TypedKeys(IReadOnlyDictionary<string, string> options, Func<string, bool> isValue)
{
    /// <summary>A next step as it is typed.</summary>
    public string Step(string next)
    {
        var hasTyped = false;
        var step = KeyAndValue()
            .Replace(next, match =>
            {
                var key = match.Groups["key"].Value;
                var typed =
                    options.TryGetValue(key, out var option) ? $"{option} "
                    : isValue(key) ? $"{key}=" + (IsTold(next, match) ? " " : string.Empty)
                    : null;
                hasTyped |= typed is not null;
                return typed ?? match.Value;
            });
        return hasTyped ? BeforeUnit().Replace(step, string.Empty) : next;
    }

    // resistance: with the value it is marked with.
    private static bool IsTold(string next, Match match) => next.AsSpan(match.Index + match.Length).StartsWith("with ");

    [GeneratedRegex("(?<![\\w.-])(?<key>[a-z][a-z_]*): ", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex KeyAndValue();

    // A shell parts words at spaces: 24 h is typed 24h.
    [GeneratedRegex(
        "(?<=[0-9]) (?=([pnµmkM]?(F|H|Hz|V|A|W|Ω)|°C|%|s|min|h|d|weeks|months|years)([ ,;]|$))",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex BeforeUnit();
}
