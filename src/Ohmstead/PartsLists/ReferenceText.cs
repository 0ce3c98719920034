using System.Globalization;
using System.Text.RegularExpressions;
using Ohmstead.Records.Binding;

namespace Ohmstead.PartsLists;

/// <summary>Reads the reference designators of one cell: <c>C1, C2, C5-C8</c>.</summary>
internal static partial class ReferenceText
{
    private const int MostInRange = 500;

    /// <summary>All references in the order written, ranges taken apart; or what is wrong, with what to write.</summary>
    public static (IReadOnlyList<string> References, string? Fault, string? NextStep) Read(string text)
    {
        var references = new List<string>();
        foreach (var piece in Separators().Split(RangeBlanks().Replace(text.Trim(), "-")).Where(piece => piece.Length > 0))
        {
            if (Range().Match(piece) is { Success: true } range)
            {
                var (letters, first, again, last) = (range.Groups[1].Value, range.Groups[2].Value, range.Groups[3].Value, range.Groups[4].Value);
                if (again.Length == 0)
                {
                    return ([], $"'{piece}' can be the places {letters}{first} to {letters}{last}, or one place of that name", $"write {letters}{first}-{letters}{last} for a range");
                }

                if (again != letters)
                {
                    return ([], $"'{piece}' goes from one class letter to another", "name the references one by one");
                }

                if (Of(first) is not { } from || Of(last) is not { } to || to < from || to - from >= MostInRange)
                {
                    return ([], $"'{piece}' does not go up from a first to a last reference, by {MostInRange} at most", "name the lower reference first");
                }

                references.AddRange(Enumerable.Range(from, to - from + 1).Select(number => letters + number.ToString(new string('0', first.Length), CultureInfo.InvariantCulture)));
            }
            else if (NameRules.Fault(piece) is { } fault)
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

    private static int? Of(string digits) => digits.Length <= 6 ? int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture) : null;

    [GeneratedRegex(@"[,;\s]+", RegexOptions.CultureInvariant)]
    private static partial Regex Separators();

    // Dashes of all lengths, two points, and the blanks around them; a minus between letters stays part of a name.
    [GeneratedRegex(@"(?<=\d)\s*(?:[-\u2010-\u2014\u2212]|\.\.\.?|\u2026)\s*(?=[A-Za-z]*\d)", RegexOptions.CultureInvariant)]
    private static partial Regex RangeBlanks();

    [GeneratedRegex(@"^([A-Za-z]+)(\d+)-([A-Za-z]*)(\d+)$", RegexOptions.CultureInvariant)]
    private static partial Regex Range();
}
