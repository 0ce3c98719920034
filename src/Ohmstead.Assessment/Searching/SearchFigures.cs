using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace Ohmstead.Assessment.Searching;

/// <summary>Reads quantities, codes such as 4k7, and numbers.</summary>
internal static partial class SearchFigures
{
    private const RegexOptions Options = RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture;
    private const int Patience = 1000;
    private const string End = "(?![\\p{L}\\p{Nd}\\uD800-\\uDFFF])";

    /// <summary>Reads what stands at a place of a plain text; null where it is no figure by itself.</summary>
    public static (SearchItem Item, int End)? Read(string text, int at)
    {
        if (!char.IsAsciiDigit(text[at]) && text[at] != '.')
        {
            return null;
        }

        var number = Figure().Match(text, at);
        if (!number.Success)
        {
            return null;
        }

        var end = at + number.Length;
        if (end < text.Length && char.IsLetter(text[end]) && Code().Match(text, at) is { Success: true } code)
        {
            // Letters behind it are its unit, or another word.
            var bare = code.Groups["f"].Index + code.Groups["f"].Length;
            if (Coded(code, code.Groups["u"].Value, at + code.Length) is { } coded)
            {
                return coded;
            }

            if (code.Groups["u"].Success && text[bare] == ' ' && Coded(code, string.Empty, bare) is { } alone)
            {
                return alone;
            }
        }

        var plain = PlainNumber(number.Value);
        return Measured(text, at, end, plain)
            ?? (
                SearchText.IsWithin(text, end) || (end < text.Length && SearchText.IsLetter(text[end]))
                    ? null
                    : (new(SearchItemKind.Number, plain), end)
            );
    }

    private static (SearchItem Item, int End)? Coded(Match code, string letters, int end)
    {
        var (whole, letter, rest) = (code.Groups["w"].Value, code.Groups["l"].Value, code.Groups["f"].Value);
        string[] tokens = [.. SearchUnits.CodeTokens(whole, letter[0], rest, letters)];
        if (tokens.Length == 0)
        {
            return null;
        }

        var name = SearchText.Canonical((whole + letter + rest).ToLowerInvariant());
        return (
            new(SearchItemKind.Quantity, tokens[0]) { Beside = [.. tokens[1..], name], Asked = [.. tokens.Select(OfOne), [name]] },
            end
        );
    }

    private static ImmutableArray<string> OfOne(string token) => [token];

    private static (SearchItem Item, int End)? Measured(string text, int at, int numberEnd, string plain)
    {
        if (UnitBehind().Match(text, numberEnd) is not { Success: true } match)
        {
            return null;
        }

        var letters = match.Groups["u"].Value;
        var end = match.Index + match.Length;
        if (text.AsSpan(end).StartsWith("/s", StringComparison.Ordinal) && SearchUnits.IsUnit(letters + "/s"))
        {
            letters += "/s";
            end += 2;
        }

        var isNegative = at > 0 && text[at - 1] == '-' && (at == 1 || !SearchText.IsLetter(text[at - 2]));
        string[] tokens =
        [
            .. SearchUnits
                .Tokens(text[at..numberEnd], letters)
                .Distinct(StringComparer.Ordinal)
                .Select(token => isNegative ? "-" + token : token),
        ];
        if (tokens.Length == 0)
        {
            return null;
        }

        // Behind a space, letters may be a word after all; and a longer word is found by itself.
        var word = letters.ToLowerInvariant();
        var isApart = text[numberEnd] == ' ';
        return (
            new(SearchItemKind.Quantity, tokens[0])
            {
                Beside =
                [
                    .. tokens[1..],
                    .. isNegative ? tokens.Select(token => token[1..]) : [],
                    plain,
                    .. word.Length >= 3 && word.All(char.IsAsciiLetter) ? [word] : Array.Empty<string>(),
                ],
                Asked =
                [
                    .. tokens.Select(OfOne),
                    .. isApart
                        ?
                        [
                            [plain, word],
                        ]
                        : Array.Empty<ImmutableArray<string>>(),
                ],
            },
            end
        );
    }

    private static string PlainNumber(string number)
    {
        var point = number.IndexOf('.', StringComparison.Ordinal);
        var whole = (point < 0 ? number : number[..point]).TrimStart('0');
        var rest = point < 0 ? string.Empty : number[(point + 1)..].TrimEnd('0');
        return (whole.Length == 0 ? "0" : whole) + (rest.Length == 0 ? string.Empty : "." + rest);
    }

    [GeneratedRegex("\\G(?<w>[0-9]+)(?<l>[A-Za-z\u03A9])(?<f>[0-9]+)( ?(?<u>[A-Za-z\u03A9]+))?" + End, Options, Patience)]
    private static partial Regex Code();

    [GeneratedRegex("\\G([0-9]+(\\.[0-9]+)?|\\.[0-9]+)", Options, Patience)]
    private static partial Regex Figure();

    [GeneratedRegex("\\G ?(?<u>\u00B0C|%|\u2030|[A-Za-z\u03A9]+)" + End, Options, Patience)]
    private static partial Regex UnitBehind();
}
