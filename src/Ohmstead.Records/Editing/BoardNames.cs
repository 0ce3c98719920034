using System.Globalization;
using Ohmstead.Records.Editing.Edits;

namespace Ohmstead.Records.Editing;

/// <summary>Finds the number of a board where it stands in a text as a whole, and says what stands there after the board got
/// another.</summary>
/// <remarks>
/// A name stands as a whole where nothing touches it that names are made of. One that touches a slash is a part of a path, of an address,
/// or a label such as <c>bag SP-0007/1</c>: it is replaced only where the path is one of those that move.
/// </remarks>
/// <param name="from">The number as it is.</param>
/// <param name="to">The number as it shall be.</param>
/// <param name="paths">Pieces of paths that move, each with what it becomes: a folder with its last slash, or a file.</param>
public sealed class BoardNames(string from, string to, IReadOnlyList<(string From, string To)> paths)
{
    private const int LongestAddress = 2_000;

    private readonly (string From, string To)[] paths = [.. paths.OrderByDescending(path => path.From.Length)];

    /// <summary>The number as it is.</summary>
    public string From { get; } = from;

    /// <summary>The number as it shall be.</summary>
    public string To { get; } = to;

    /// <summary>A text after the change.</summary>
    public string In(string text) => TextEdit.Apply(text, EditsIn(text));

    /// <summary>The changes of a text, in order.</summary>
    public IReadOnlyList<TextEdit> EditsIn(string text)
    {
        var edits = new List<TextEdit>();
        var at = 0;
        while (at < text.Length)
        {
            var edit = At(text, at);
            if (edit is { } found)
            {
                edits.Add(found);
            }

            at += edit?.Length ?? 1;
        }

        return edits;
    }

    /// <summary>Where the number stands in a text, changed or not.</summary>
    public IEnumerable<int> PlacesIn(string text)
    {
        for (var at = text.IndexOf(From, StringComparison.Ordinal); at >= 0; at = text.IndexOf(From, at + 1, StringComparison.Ordinal))
        {
            if (!IsWord(text, at - 1) && !GoesOn(text, at + From.Length))
            {
                yield return at;
            }
        }
    }

    private TextEdit? At(string text, int at)
    {
        foreach (var (path, becomes) in paths)
        {
            if (Stands(text, at, path) && !IsWord(text, at - 1) && (path.EndsWith('/') || !GoesOn(text, at + path.Length)))
            {
                return IsInAddress(text, at) ? null : new(at, path.Length, becomes);
            }
        }

        return Stands(text, at, From) && IsWhole(text, at) ? new(at, From.Length, To) : null;
    }

    private bool IsWhole(string text, int at)
    {
        var end = at + From.Length;
        return !IsWord(text, at - 1)
            && !GoesOn(text, end)
            && !(at > 0 && text[at - 1] is '/' or '\\' or '.')
            && !(end < text.Length && text[end] is '/' or '\\')
            && !IsInAddress(text, at);
    }

    private static bool Stands(string text, int at, string name) => text.AsSpan(at).StartsWith(name, StringComparison.Ordinal);

    // A hyphen or a full stop at the end belongs to the sentence; before a letter or a figure it belongs to a longer name.
    private static bool GoesOn(string text, int end) =>
        IsLetter(text, end) || (end < text.Length && (text[end] == '+' || (text[end] is '-' or '.' && IsLetter(text, end + 1))));

    private static bool IsWord(string text, int at) => at >= 0 && (IsLetter(text, at) || text[at] is '-' or '+');

    private static bool IsLetter(string text, int at) =>
        at < text.Length
        && (
            char.IsLetterOrDigit(text[at])
            || char.IsSurrogate(text[at])
            || text[at] == '_'
            || char.GetUnicodeCategory(text[at]) == UnicodeCategory.NonSpacingMark
        );

    // An address elsewhere is not ours to change.
    private static bool IsInAddress(string text, int at)
    {
        var start = at;
        while (
            start > 0
            && at - start < LongestAddress
            && !char.IsWhiteSpace(text[start - 1])
            && text[start - 1] is not ('(' or '<' or '"' or '\'' or '[')
        )
        {
            start--;
        }

        return text.AsSpan(start, at - start).Contains("://", StringComparison.Ordinal);
    }
}
