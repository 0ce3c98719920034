using System.Globalization;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Yaml;

/// <summary>One escape in a double-quoted value.</summary>
/// <param name="Offset">Where its backslash stands.</param>
/// <param name="Length">How long it is.</param>
/// <param name="Code">The code point it stands for, or -1 when it is no escape that YAML knows.</param>
internal readonly record struct Escape(int Offset, int Length, int Code);

/// <summary>Looks at the escapes of double-quoted values: characters that may not stand in a record as such may not be escaped into it
/// either.</summary>
internal static class Escapes
{
    /// <summary>Adds a finding for each escape of a character that a record may not hold.</summary>
    /// <param name="findings">Where they go.</param>
    /// <param name="source">The file.</param>
    /// <param name="from">The offset behind the opening quote.</param>
    /// <param name="to">The offset of the closing quote.</param>
    internal static void AddRefused(FindingList findings, SourceText source, int from, int to)
    {
        while (Next(source.Text, from, to) is { } escape)
        {
            from = escape.Offset + escape.Length;
            if (Judge(source, escape) is { } finding)
            {
                findings.Add(finding);
            }
        }
    }

    /// <summary>The first escape that cannot be read or may not be used, as a finding; null when all can.</summary>
    internal static Finding? FirstFault(SourceText source, int from, int to)
    {
        while (Next(source.Text, from, to) is { } escape)
        {
            from = escape.Offset + escape.Length;
            if (escape.Code < 0)
            {
                return new Finding(
                    TextChecks.YamlSyntax,
                    Severity.Error,
                    source.PlaceAt(escape.Offset, escape.Length),
                    $"{Quotation.Quote(source.Text.AsSpan(escape.Offset, escape.Length))} is no escape that a double-quoted value knows",
                    @"write \\ for a backslash, or put the value in single quotes, where a backslash is only itself"
                );
            }

            if (Judge(source, escape) is { } finding)
            {
                return finding;
            }
        }

        return null;
    }

    private static Finding? Judge(SourceText source, Escape escape) =>
        (escape.Code < 0 ? CharacterKind.Ordinary : SuspectCharacters.KindOf(escape.Code)) switch
        {
            CharacterKind.Control => Error(
                source,
                escape,
                TextChecks.ControlCharacter,
                $"the control character {SuspectCharacters.NameOf(escape.Code)}"
            ),
            CharacterKind.NoCharacter => Error(source, escape, TextChecks.NotACharacter, "no character"),
            CharacterKind.LineSeparator or CharacterKind.Direction or CharacterKind.Invisible => Error(
                source,
                escape,
                TextChecks.HiddenCharacter,
                $"the hidden character {SuspectCharacters.NameOf(escape.Code)}"
            ),
            _ => null,
        };

    private static Finding Error(SourceText source, Escape escape, string check, string what) =>
        new(
            check,
            Severity.Error,
            source.PlaceAt(escape.Offset, escape.Length),
            $"the escape {source.Text.AsSpan(escape.Offset, escape.Length)} stands for {what}",
            "remove the escape"
        );

    private static Escape? Next(string text, int from, int to)
    {
        if (from >= to || text.AsSpan(from, to - from).IndexOf('\\') is not (>= 0 and var found))
        {
            return null;
        }

        var at = from + found;
        if (at + 1 >= to)
        {
            return new Escape(at, 1, -1);
        }

        return text[at + 1] switch
        {
            'x' => Numeric(text, at, 2, to),
            'u' => Numeric(text, at, 4, to),
            'U' => Numeric(text, at, 8, to),
            var letter => new Escape(at, 2, Simple(letter)),
        };
    }

    private static Escape Numeric(string text, int at, int digits, int to)
    {
        if (!TryHex(text, at + 2, digits, to, out var code))
        {
            return new Escape(at, Math.Min(2, to - at), -1);
        }

        var length = 2 + digits;

        // Two escapes, each half of a pair, make one character.
        return
            code is >= 0xD800 and <= 0xDBFF
            && at + length + 1 < to
            && text[at + length] == '\\'
            && text[at + length + 1] == 'u'
            && TryHex(text, at + length + 2, 4, to, out var low)
            && low is >= 0xDC00 and <= 0xDFFF
            ? new Escape(at, length + 6, char.ConvertToUtf32((char)code, (char)low))
            : new Escape(at, length, (int)Math.Min(code, int.MaxValue));
    }

    private static bool TryHex(string text, int at, int digits, int to, out uint code)
    {
        code = 0;
        return at + digits <= to
            && uint.TryParse(text.AsSpan(at, digits), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out code);
    }

    /// <summary>The code point of a one-letter escape (YAML 1.2.2, section 5.7), or -1.</summary>
    private static int Simple(char letter) =>
        letter switch
        {
            '0' => 0x00,
            'a' => 0x07,
            'b' => 0x08,
            't' or '\t' => 0x09,
            'n' => 0x0A,
            'v' => 0x0B,
            'f' => 0x0C,
            'r' => 0x0D,
            'e' => 0x1B,
            ' ' or '"' or '/' or '\\' => letter,
            'N' => 0x85,
            '_' => 0xA0,
            'L' => 0x2028,
            'P' => 0x2029,

            // A backslash at the end of a line joins it with the next.
            '\n' or '\r' => ' ',
            _ => -1,
        };
}
