using System.Buffers;
using System.Globalization;
using System.Text;

namespace Ohmstead.Records.Editing;

/// <summary>Writes values as they stand in a record: <c>{ part: C12, esr: 1.4 Ω }</c> on one line.</summary>
/// <remarks>A value is quoted only where it would be read as something else. The rules hold inside braces, so they hold outside,
/// too.</remarks>
public static class FlowText
{
    // Inside braces these end or begin something; a colon or a number sign does so only beside a space.
    private static readonly SearchValues<char> Ending = SearchValues.Create("{}[],");
    private static readonly SearchValues<char> Beginning = SearchValues.Create("-?:,[]{}#&*!|>'\"%@`");

    /// <summary>A mapping on one line, its keys in the order given; entries without a value are left out.</summary>
    public static string Mapping(IEnumerable<(string Key, string? Value)> entries) =>
        MappingOf(entries.Select(entry => (entry.Key, entry.Value is null ? null : Scalar(entry.Value))));

    /// <summary>A mapping on one line whose values are YAML already, such as a list.</summary>
    public static string MappingOf(IEnumerable<(string Key, string? Yaml)> entries) =>
        "{ " + string.Join(", ", entries.Where(entry => entry.Yaml is not null).Select(entry => $"{entry.Key}: {entry.Yaml}")) + " }";

    /// <summary>A list on one line, or a single value as it is.</summary>
    public static string List(IReadOnlyList<string> items) =>
        items.Count == 1 ? Scalar(items[0]) : "[" + string.Join(", ", items.Select(Scalar)) + "]";

    /// <summary>One value, quoted where it must be.</summary>
    public static string Scalar(string value) => IsPlain(value) ? value : Quoted(value);

    /// <summary>One value that is text whatever it looks like: quoted, too, where another reader of YAML would take it for a number, a date
    /// or a yes.</summary>
    public static string TextScalar(string value) =>
        IsPlain(value) && (LooksLikeNumber(value) || LooksLikeWord(value)) ? Quoted(value) : Scalar(value);

    private static bool IsPlain(string value) =>
        value.Length > 0
        && !char.IsWhiteSpace(value[0])
        && !char.IsWhiteSpace(value[^1])
        && !(Beginning.Contains(value[0]) && !IsSignedNumber(value))
        && !value.AsSpan().ContainsAny(Ending)
        && !value.Contains(": ", StringComparison.Ordinal)
        && value[^1] != ':'
        && !value.Contains(" #", StringComparison.Ordinal)
        && value is not ("~" or "null" or "Null" or "NULL" or "---" or "...")
        && !value.Any(char.IsControl)
        && !value.AsSpan().ContainsAny('\u0085', '\u2028', '\u2029');

    // 0412, 7834, 1E3, 0x1F, 12:30 and 1978-03-01 are a number, a time or a date to one YAML or another.
    private static bool LooksLikeNumber(string value) =>
        value.Any(char.IsAsciiDigit)
        && value.All(letter => char.IsAsciiHexDigit(letter) || letter is '.' or '-' or '+' or '_' or ':' or 'x' or 'o')
        && (char.IsAsciiDigit(value[0]) || value[0] is '.' or '-' or '+');

    private static bool LooksLikeWord(string value) =>
        value.ToUpperInvariant() is "YES" or "NO" or "ON" or "OFF" or "TRUE" or "FALSE" or "Y" or "N" or ".NAN" or ".INF" or "-.INF";

    // -15 V is plain text in YAML: a minus begins something only before a space.
    private static bool IsSignedNumber(string value) =>
        value[0] == '-' && value.Length > 1 && (char.IsAsciiDigit(value[1]) || value[1] == '.');

    private static string Quoted(string value)
    {
        var text = new StringBuilder("\"", value.Length + 8);
        foreach (var letter in value)
        {
            _ = letter switch
            {
                '"' => text.Append("\\\""),
                '\\' => text.Append("\\\\"),
                '\n' => text.Append("\\n"),
                '\t' => text.Append("\\t"),
                _ when char.IsControl(letter) || letter is '\u2028' or '\u2029' => text.Append(
                    CultureInfo.InvariantCulture,
                    $"\\u{(int)letter:X4}"
                ),
                _ => text.Append(letter),
            };
        }

        return text.Append('"').ToString();
    }
}
