using System.Globalization;
using System.Text;
using Ohmstead.Records.Binding;

namespace Ohmstead.PartsLists;

/// <summary>Reads the reference designators of one cell: <c>C1, C2, C5-C8</c>.</summary>
internal static class ReferenceList
{
    private const int MostInRange = 500;

    /// <summary>All references in the order written, ranges taken apart; or what is wrong, with what to write.</summary>
    public static (IReadOnlyList<string> References, string? Fault, string? NextStep) Read(string text)
    {
        var references = new List<string>();
        foreach (var piece in Joined(text).Split([',', ';', ' '], StringSplitOptions.RemoveEmptyEntries))
        {
            if (Ends(piece) is var (letters, first, again, last))
            {
                if (again.Length == 0)
                {
                    return (
                        [],
                        $"'{piece}' can be the places {letters}{first} to {letters}{last}, or one place of that name",
                        $"write {letters}{first}-{letters}{last} for a range"
                    );
                }

                if (again != letters)
                {
                    return ([], $"'{piece}' goes from one class letter to another", "name the references one by one");
                }

                if (ParseDigits(first) is not { } from || ParseDigits(last) is not { } to || to < from || to - from >= MostInRange)
                {
                    return (
                        [],
                        $"'{piece}' does not go up from a first to a last reference, by {MostInRange} at most",
                        "name the lower reference first"
                    );
                }

                references.AddRange(
                    Enumerable
                        .Range(from, to - from + 1)
                        .Select(number => letters + number.ToString(new string('0', first.Length), CultureInfo.InvariantCulture))
                );
            }
            else if (
                (NameRules.Fault(piece) ?? (piece[^1] == '-' || !piece.Any(char.IsLetterOrDigit) ? "nothing follows its dash" : null)) is
                { } fault
            )
            {
                return ([], $"'{CsvTableReader.Excerpt(piece)}' cannot be a reference: {fault}", "write references such as C1, C2, C5-C8");
            }
            else
            {
                references.Add(piece);
            }
        }

        return references.Count > 0 ? (references, null, null) : ([], "there is no reference", "write references such as C1, C2, C5-C8");
    }

    /// <summary>The class letters of a reference: the letters it begins with, in capitals.</summary>
    public static string ClassLetters(string reference) => string.Concat(reference.TakeWhile(char.IsAsciiLetter)).ToUpperInvariant();

    private static int? ParseDigits(string digits) =>
        digits.Length <= 6 ? int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture) : null;

    // One kind of blank and one kind of dash: C5 – C8, C5..C8 and C5-C8 are the same. A dash behind a letter may be part of a name.
    private static string Joined(string text)
    {
        var joined = new StringBuilder(text.Length);
        foreach (var letter in text.Replace("...", "-", StringComparison.Ordinal).Replace("..", "-", StringComparison.Ordinal))
        {
            var plain =
                letter is (>= '\u2010' and <= '\u2014') or '\u2212' or '\u2026' ? '-'
                : char.IsWhiteSpace(letter) ? ' '
                : letter;
            var written = joined.ToString().AsSpan().TrimEnd(' ');
            if (plain == '-' && written.Length > 0 && char.IsAsciiDigit(written[^1]))
            {
                joined.Length = written.Length;
            }

            if (plain != ' ' || !(joined.Length > 1 && joined[^1] == '-' && char.IsAsciiDigit(joined[^2])))
            {
                joined.Append(plain);
            }
        }

        return joined.ToString();
    }

    // The four pieces of C5-C8; null where it is no range.
    private static (string Letters, string First, string Again, string Last)? Ends(string piece)
    {
        var dash = piece.IndexOf('-', StringComparison.Ordinal);
        if (dash < 0)
        {
            return null;
        }

        var (left, right) = (piece[..dash], piece[(dash + 1)..]);
        var (letters, again) = (string.Concat(left.TakeWhile(char.IsAsciiLetter)), string.Concat(right.TakeWhile(char.IsAsciiLetter)));
        var (first, last) = (left[letters.Length..], right[again.Length..]);
        return letters.Length > 0 && first.Length > 0 && last.Length > 0 && first.All(char.IsAsciiDigit) && last.All(char.IsAsciiDigit)
            ? (letters, first, again, last)
            : null;
    }
}
