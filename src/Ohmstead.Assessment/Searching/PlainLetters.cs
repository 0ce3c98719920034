using System.Collections.Frozen;
using System.Text;

namespace Ohmstead.Assessment.Searching;

/// <summary>Letters as a search compares them: marks, quotes and the kinds of dashes and spaces make no difference.</summary>
/// <remarks>One table for the program and for the script of the pages, which reads it from the index.</remarks>
public static class PlainLetters
{
    private const char FirstMark = '\u0300';
    private const char LastMark = '\u036F';

    // Each group: what is compared, then what may be written.
    private static readonly string[] Groups =
    [
        "AÀÁÂÃÄÅĀĂĄ",
        "aàáâãäåāăą",
        "CÇĆĈĊČ",
        "cçćĉċč",
        "DĎĐÐ",
        "dďđð",
        "EÈÉÊËĒĔĖĘĚ",
        "eèéêëēĕėęě",
        "GĜĞĠĢ",
        "gĝğġģ",
        "HĤĦ",
        "hĥħ",
        "IÌÍÎÏĨĪĬĮİ",
        "iìíîïĩīĭįı",
        "JĴ",
        "jĵ",
        "KĶ\u212A",
        "kķ",
        "LĹĻĽŁ",
        "lĺļľł",
        "NÑŃŅŇ",
        "nñńņň",
        "OÒÓÔÕÖØŌŎŐ",
        "oòóôõöøōŏő",
        "RŔŖŘ",
        "rŕŗř",
        "SŚŜŞŠȘ",
        "sśŝşšș",
        "TŢŤŦȚ",
        "tţťŧț",
        "UÙÚÛÜŨŪŬŮŰŲ",
        "uùúûüũūŭůűų\u00B5\u03BC",
        "WŴ",
        "wŵ",
        "YÝŶŸ",
        "yýÿŷ",
        "ZŹŻŽ",
        "zźżž",
        "\u03A9\u2126",
        "-\u2010\u2011\u2012\u2013\u2014\u2212",
        " \u00A0\u2009\u202F\t\n",
    ];

    private static readonly (string Plain, string Written)[] Longer =
    [
        ("AE", "Æ"),
        ("ae", "æ"),
        ("OE", "Œ"),
        ("oe", "œ"),
        ("ss", "ß"),
        ("\u00B0C", "\u2103"),
        (string.Empty, "'\u2018\u2019\u201A\u201B\u02BC\u00B4`\u00AD"),
    ];

    /// <summary>What each character is compared as, where that is another one, several or none; in order of the character. The marks that
    /// are characters of their own (U+0300 to U+036F) are none besides.</summary>
    public static IReadOnlyDictionary<char, string> Table { get; } =
        Groups
            .SelectMany(group => group.Skip(1).Select(written => (written, plain: group[..1])))
            .Concat(Longer.SelectMany(group => group.Written.Select(written => (written, plain: group.Plain))))
            .ToFrozenDictionary(pair => pair.written, pair => pair.plain);

    /// <summary>The text with plain letters; capitals stay, for units tell them apart.</summary>
    public static string Of(string text)
    {
        var at = 0;
        while (at < text.Length && IsPlain(text[at]))
        {
            at++;
        }

        if (at == text.Length)
        {
            return text;
        }

        var plain = new StringBuilder(text, 0, at, text.Length + 8);
        foreach (var c in text.AsSpan(at))
        {
            if (IsPlain(c))
            {
                plain.Append(c);
            }
            else if (Table.TryGetValue(c, out var other))
            {
                plain.Append(other);
            }
            else if (c is < FirstMark or > LastMark)
            {
                plain.Append(c);
            }
        }

        return plain.ToString();
    }

    private static bool IsPlain(char c) => c is (< '\u0080' and not '\'' and not '`' and not '\t' and not '\n');
}
