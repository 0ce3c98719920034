using System.Text.RegularExpressions;

namespace Ohmstead.Yaml;

/// <summary>The text to write in place of a line that cannot be read: its words as they are, with the sign, the quotes or the braces that
/// it lacks.</summary>
internal static partial class LineCures
{
    private const int Longest = 120;

    /// <summary>A value in the quotes that keep it whole; null when it is too long to be told.</summary>
    internal static string? Quoted(ReadOnlySpan<char> value)
    {
        var text = value.Trim();
        return text.Length is 0 or > Longest ? null
            : text.IndexOfAny('"', '\\') < 0 ? $"\"{text}\""
            : $"'{text.ToString().Replace("'", "''", StringComparison.Ordinal)}'";
    }

    /// <summary>A line of a key and its value with the value in quotes: <c>note: "remember: C2"</c>.</summary>
    internal static string? WithQuotedValue(ReadOnlySpan<char> line)
    {
        var content = line.Trim();
        if (content.IndexOf('{') is >= 0 and var brace && content.IndexOf(": ", StringComparison.Ordinal) > brace)
        {
            return null;
        }

        content = content.StartsWith("- ", StringComparison.Ordinal) ? content[2..].TrimStart() : content;
        var colon = content.IndexOf(": ", StringComparison.Ordinal);
        return colon > 0 && Quoted(Unquoted(content[(colon + 2)..])) is { } value ? $"{content[..colon]}: {value}" : null;
    }

    /// <summary>A value without the quotes around it: those at both ends, else the pair at its beginning.</summary>
    private static string Unquoted(ReadOnlySpan<char> value)
    {
        var text = value.Trim().ToString();
        if (text.Length < 2 || text[0] is not ('"' or '\''))
        {
            return text;
        }

        var quote = text[0];
        var close = text.IndexOf(quote, 1);
        var words =
            text[^1] == quote ? text[1..^1]
            : close > 0 ? text[1..close] + text[(close + 1)..]
            : text[1..];

        // Doubled as a spreadsheet doubles them, or with a backslash.
        return words
            .Replace($"{quote}{quote}", $"{quote}", StringComparison.Ordinal)
            .Replace($"\\{quote}", $"{quote}", StringComparison.Ordinal);
    }

    /// <summary>A line with another sign where its colon belongs: <c>title = Amplifier</c>, <c>made：1978</c>, <c>made :1978</c>.</summary>
    internal static (string Sign, string Line)? WithColon(ReadOnlySpan<char> content)
    {
        if (content.Length > Longest)
        {
            return null;
        }

        var match = OtherSign().Match(content.ToString());
        return match.Success
            ? (
                match.Groups["sign"].Value.Trim(' '),
                $"{match.Groups["dash"].Value}{match.Groups["key"].Value}: {match.Groups["value"].Value}"
            )
            : null;
    }

    /// <summary>Several keys on one line without their braces: <c>- point: drift, result: pass</c>.</summary>
    internal static string? InBraces(ReadOnlySpan<char> content)
    {
        var match = content.Length > Longest ? Match.Empty : Pairs().Match(content.ToString());
        return match.Success ? $"- {{ {match.Groups["pairs"].Value.Trim()} }}" : null;
    }

    /// <summary>An item behind something that is no dash with a space: a long dash, a bullet, a number, a dash alone.</summary>
    internal static (string Mark, string Line)? WithDash(ReadOnlySpan<char> content)
    {
        var match = content.Length > Longest ? Match.Empty : OtherDash().Match(content.ToString());
        return match.Success ? (match.Groups["mark"].Value, $"- {match.Groups["item"].Value}") : null;
    }

    /// <summary>Whether a line looks like a row of a table: cells between bars, tabs, or quotes with commas.</summary>
    internal static bool IsTableRow(ReadOnlySpan<char> content) =>
        content.Length <= 1000 && (Bars().IsMatch(content) || Cells().IsMatch(content) || content.Count('\t') > 1);

    [GeneratedRegex(
        "^(?<dash>- )?(?<key>[a-z][a-z_]*)(?<sign> ?=|：| :(?=[^ ])|:\u00A0+|\u00A0+:|;(?= ))[ \u00A0]*(?<value>[^ \u00A0].*)$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex OtherSign();

    [GeneratedRegex(
        "^-? ?[(\\[{]?(?<pairs> ?[a-z_]+: [^,:()\\[\\]{}]+(, [a-z_]+: [^,:()\\[\\]{}]+)+) ?[)\\]}]?$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Pairs();

    [GeneratedRegex(
        "^(?<mark>[–—−•·‣▪]|\\*(?= )|[0-9]{1,3}[.)]|-(?=[^ -])|-(?=\u00A0))[ \u00A0]*(?<item>[^ \u00A0].*)$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex OtherDash();

    [GeneratedRegex("^(- )?\\|.*\\|", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Bars();

    [GeneratedRegex("^(- )?\"[^\"]*\"(, ?\"[^\"]*\")+$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Cells();
}
