using System.Globalization;

namespace Ohmstead.Records.Binding;

/// <summary>Which whole number is meant by what people write in its place. Nothing is read by it: it is told.</summary>
public static class CountText
{
    private const string Dozen = "dozen";

    private static readonly string[] Words =
    [
        "one",
        "two",
        "three",
        "four",
        "five",
        "six",
        "seven",
        "eight",
        "nine",
        "ten",
        "eleven",
        "twelve",
    ];

    /// <summary>The number in digits: of <c>10 pcs</c>, <c>10.0</c>, <c>ten</c> or <c>a dozen</c>; null when none is meant, as by
    /// <c>2.5</c>.</summary>
    public static string? Meant(string text)
    {
        var word = text.Trim();
        word = word.StartsWith("a ", StringComparison.OrdinalIgnoreCase) ? word[2..].Trim() : word;
        var at = Array.FindIndex(Words, one => one.Equals(word, StringComparison.OrdinalIgnoreCase));
        return at >= 0 ? Text(at + 1)
            : word.Equals(Dozen, StringComparison.OrdinalIgnoreCase) ? Text(Words.Length)
            : Leading(text) is { Length: > 0 } count ? count
            : null;
    }

    // 10 pcs, 10.0 and 900 h say ten, ten and nine hundred; 2.5 says no whole number.
    private static string Leading(string text)
    {
        var end = text.AsSpan().IndexOfAnyExceptInRange('0', '9') is >= 0 and var at ? at : text.Length;
        var rest = text.AsSpan(end);
        var isWhole = rest.IsEmpty || (rest[0] != '.' && rest[0] != ',') || (rest.Length > 1 && rest[1..].IndexOfAnyExcept('0') < 0);
        return isWhole && end is > 0 and <= 9 ? text[..end].TrimStart('0') : string.Empty;
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
