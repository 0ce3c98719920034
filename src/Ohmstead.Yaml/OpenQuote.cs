using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Yaml;

/// <summary>A quote that is not closed, where its line tells where it was meant to end.</summary>
internal static class OpenQuote
{
    private const int Longest = 120;

    /// <summary>The finding, or null where the line does not tell.</summary>
    /// <param name="slice">The YAML.</param>
    /// <param name="context">What surrounds the quote.</param>
    /// <param name="quote">The offset of the quote.</param>
    internal static Finding? Explain(YamlSlice slice, YamlContext context, int quote)
    {
        var start = slice.Source.LineStart(slice.Source.LineAt(quote));
        var rest = slice.Text.AsSpan(quote..slice.Source.LineEnd(slice.Source.LineAt(quote))).TrimEnd();
        var before = slice.Text.AsSpan(start..quote);
        var key = before[(before.LastIndexOfAny(',', '{') + 1)..].Trim();
        key = key.StartsWith("- ") ? key[2..].Trim() : key;
        if (GoesOn(slice, quote) || rest.Length > Longest || key.Length is < 2 or > 60 || key[^1] != ':' || key.Contains(' '))
        {
            return null;
        }

        var mark = rest[0];
        var value = rest[1..].Trim();
        var closing =
            context.Brackets.Count == 0 ? '\0'
            : slice.Text[context.Brackets[^1]] == '[' ? ']'
            : '}';
        if (value.IsEmpty || (closing != '\0' && (value[0] == ',' || value[0] == closing)))
        {
            return Told(slice, quote, $"a {mark} alone repeats nothing; expected the value", $"write {key} with the value again");
        }

        if (closing != '\0')
        {
            // With a comma it may be the end of this value, or a part of it.
            return value[^1] == closing && !value.Contains(',') && LineCures.Quoted(value[..^1]) is { } inside
                ? Told(
                    slice,
                    quote,
                    $"the {mark} before {Quotation.Quote(value)} is not closed; expected it at the end of the value",
                    $"write {key} {inside} {closing}"
                )
                : null;
        }

        var isOther = value.Length > 1 && value[^1] is '"' or '\'' or '”' or '’' or '“' or '‘';
        return LineCures.Quoted(isOther ? value[..^1] : value) is { } whole
            ? Told(
                slice,
                quote,
                isOther
                    ? $"the value begins with {mark} and ends with {value[^1]}"
                    : $"the {mark} before {Quotation.Quote(value)} is not closed; expected it at the end of the value",
                $"write {key} {whole}"
            )
            : null;
    }

    // A text may run over several lines: then its first line is not where it was meant to end.
    private static bool GoesOn(YamlSlice slice, int quote)
    {
        var line = slice.Source.LineAt(quote) + 1;
        var last = slice.Source.LineAt(slice.End);
        while (line <= last && slice.Source.Line(line).IsWhiteSpace())
        {
            line++;
        }

        var next = line <= last && slice.Source.LineStart(line) < slice.End ? slice.Source.Line(line).Trim() : [];
        return !next.IsEmpty && next[0] is not ('-' or '{' or '#') && !next.Contains(": ", StringComparison.Ordinal) && next[^1] != ':';
    }

    private static Finding Told(YamlSlice slice, int quote, string message, string next) =>
        slice.Error(TextChecks.YamlSyntax, quote, 1, message, next);
}
