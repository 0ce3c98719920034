using System.Text.RegularExpressions;

namespace Ohmstead.Yaml;

/// <summary>A picture as a story shows it, where a list of photographs is expected: <c>- ![front](front.jpg)</c>.</summary>
internal static partial class MarkdownPicture
{
    /// <summary>What to write in its place, or null where none stands at the offset.</summary>
    internal static string? At(YamlSlice slice, int at)
    {
        var line = slice.Source.LineAt(at);
        var text = slice.Source.Line(line);
        var picture = text.Length <= 200 ? Item().Match(text.ToString()) : Match.Empty;
        if (!picture.Success)
        {
            return null;
        }

        var (shows, file) = (picture.Groups["shows"].Value.Trim(), picture.Groups["file"].Value);
        return $"write - {{ file: {file}, shows: {(shows.Length == 0 ? "…" : shows)} }}";
    }

    // A text with other signs would need quotes of its own.
    [GeneratedRegex(
        "^ *- +!\\[(?<shows>[A-Za-z0-9 _.+-]*)\\]\\((?<file>[A-Za-z0-9_./+-]+)\\) *$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Item();
}
