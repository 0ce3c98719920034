using System.Globalization;

namespace Ohmstead.Prompt;

/// <summary>A line that is being typed, and where in it the cursor stands. The cursor is never inside of what is one character to a
/// person.</summary>
/// <param name="Text">The text.</param>
/// <param name="Cursor">The place in front of which it stands, in UTF-16 units.</param>
internal readonly record struct EditLine(string Text, int Cursor)
{
    /// <summary>How long a line may become; what is longer was not typed.</summary>
    public const int Longest = 2000;

    /// <summary>Nothing.</summary>
    public static EditLine Empty { get; } = new(string.Empty, 0);

    /// <summary>A text with the cursor behind it.</summary>
    public static EditLine For(string text) => new(text, text.Length);

    /// <summary>The text in front of the cursor.</summary>
    public string Before => Text[..Cursor];

    /// <summary>The text behind the cursor.</summary>
    public string After => Text[Cursor..];

    /// <summary>With a text put in at the cursor, or as it is where that would be too long.</summary>
    public EditLine Put(string text) => Text.Length + text.Length > Longest ? this : Settled(Before + text + After, Cursor + text.Length);

    /// <summary>With the cursor elsewhere.</summary>
    public EditLine At(int cursor) => this with { Cursor = cursor };

    /// <summary>Without what stands between two places; the cursor is where it stood.</summary>
    public EditLine Without(int start, int end) => Settled(Text[..start] + Text[end..], start);

    /// <summary>One character back from the cursor.</summary>
    public int Left
    {
        get
        {
            var (last, next) = (0, 0);
            while (next < Cursor)
            {
                last = next;
                next += StringInfo.GetNextTextElementLength(Text, next);
            }

            return last;
        }
    }

    /// <summary>One character on.</summary>
    public int Right => Cursor == Text.Length ? Cursor : Cursor + StringInfo.GetNextTextElementLength(Text, Cursor);

    /// <summary>The beginning of the word of letters and digits before the cursor.</summary>
    public int WordLeft
    {
        get
        {
            var at = Cursor;
            while (at > 0 && !char.IsLetterOrDigit(Text[at - 1]))
            {
                at--;
            }

            while (at > 0 && char.IsLetterOrDigit(Text[at - 1]))
            {
                at--;
            }

            return Whole(at);
        }
    }

    /// <summary>The end of the word of letters and digits behind the cursor.</summary>
    public int WordRight
    {
        get
        {
            var at = Cursor;
            while (at < Text.Length && !char.IsLetterOrDigit(Text[at]))
            {
                at++;
            }

            while (at < Text.Length && char.IsLetterOrDigit(Text[at]))
            {
                at++;
            }

            return at == Text.Length ? at : Math.Max(Whole(at), Right);
        }
    }

    /// <summary>The beginning of what stands between the last space and the cursor.</summary>
    public int SpaceLeft
    {
        get
        {
            var at = Before.TrimEnd().Length;
            return Whole(Text.AsSpan(0, at).LastIndexOf(' ') + 1);
        }
    }

    /// <summary>With the two characters at the cursor swapped, and the cursor behind them.</summary>
    public EditLine Swapped()
    {
        var line = Cursor == Text.Length && Cursor > 0 ? At(Left) : this;
        var (left, right) = (line.Left, line.Right);
        return line.Cursor == 0 || line.Cursor == Text.Length
            ? this
            : Settled(Text[..left] + Text[line.Cursor..right] + Text[left..line.Cursor] + Text[right..], right);
    }

    // What was put together may have become one character.
    private static EditLine Settled(string text, int cursor) =>
        new EditLine(text, cursor).At(new EditLine(text, cursor).Whole(cursor, true));

    private int Whole(int place, bool isUp = false)
    {
        var (last, next) = (0, 0);
        while (next < place)
        {
            last = next;
            next += StringInfo.GetNextTextElementLength(Text, next);
        }

        return next == place || isUp ? next : last;
    }
}
