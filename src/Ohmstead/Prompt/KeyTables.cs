using System.Globalization;

namespace Ohmstead.Prompt;

/// <summary>What the keys of terminals send: ECMA-48, the control sequences of xterm, and those of the Linux console, of rxvt and of the
/// VT100
/// keypad where they differ.</summary>
internal static class KeyTables
{
    /// <summary>A control character.</summary>
    public static KeyName? OfControl(byte code) =>
        code switch
        {
            1 => KeyName.Home,
            2 => KeyName.Left,
            3 => KeyName.Interrupt,
            4 => KeyName.DeleteOrEnd,
            5 => KeyName.End,
            6 => KeyName.Right,
            7 => KeyName.Cancel,
            8 or 127 => KeyName.Backspace,
            9 => KeyName.Complete,
            10 or 13 => KeyName.Enter,
            11 => KeyName.KillToEnd,
            12 => KeyName.Clear,
            14 => KeyName.Down,
            16 => KeyName.Up,
            18 => KeyName.Search,
            19 => KeyName.SearchOn,
            20 => KeyName.Swap,
            21 => KeyName.KillToStart,
            23 => KeyName.KillToSpace,
            25 => KeyName.Yank,
            26 => KeyName.Suspend,
            31 => KeyName.Undo,
            _ => null,
        };

    /// <summary>A key with Alt, or behind Escape.</summary>
    public static KeyName? OfAlt(byte code) =>
        code switch
        {
            (byte)'b' or (byte)'B' => KeyName.WordLeft,
            (byte)'f' or (byte)'F' => KeyName.WordRight,
            (byte)'d' or (byte)'D' => KeyName.KillWordRight,
            8 or 127 => KeyName.KillWordLeft,
            _ => null,
        };

    /// <summary>A key of the keypad or the like: <c>ESC O</c> and a letter.</summary>
    /// <param name="letter">The letter.</param>
    /// <param name="isShifted">True where a modifier stood before the letter.</param>
    public static Key? OfKeypad(char letter, bool isShifted) =>
        letter switch
        {
            >= 'p' and <= 'y' => new(KeyName.Text, ((char)('0' + (letter - 'p'))).ToString()),
            'j' => new(KeyName.Text, "*"),
            'k' => new(KeyName.Text, "+"),
            'l' => new(KeyName.Text, ","),
            'm' => new(KeyName.Text, "-"),
            'n' => new(KeyName.Text, "."),
            'o' => new(KeyName.Text, "/"),
            'X' => new(KeyName.Text, "="),
            ' ' => new(KeyName.Text, " "),
            'M' => new(KeyName.Enter),
            'I' => new(KeyName.Complete),
            // rxvt, with Ctrl.
            'c' => new(KeyName.WordRight),
            'd' => new(KeyName.WordLeft),
            _ => OfLetter(letter, isShifted) is { } name ? new(name) : null,
        };

    /// <summary>What <c>ESC [</c> with its figures asks for.</summary>
    /// <param name="figures">The figures, separated by semicolons.</param>
    /// <param name="last">The character that ends it.</param>
    public static KeyName? OfSequence(ReadOnlySpan<char> figures, char last)
    {
        Span<Range> parts = stackalloc Range[4];
        var count = figures.Split(parts, ';');
        // Of Shift, Alt and Ctrl, the last two go by words.
        var isByWord =
            count > 1
            && int.TryParse(figures[parts[1]], NumberStyles.None, CultureInfo.InvariantCulture, out var modifier)
            && ((modifier - 1) & 6) != 0;
        if (last is not ('~' or '^' or '$' or '@'))
        {
            return OfLetter(last, isByWord);
        }

        isByWord |= last is '^' or '@';
        return int.TryParse(figures[parts[0]], NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number switch
            {
                1 or 7 => KeyName.Home,
                4 or 8 => KeyName.End,
                3 => isByWord ? KeyName.KillWordRight : KeyName.Delete,
                _ => null,
            }
            : null;
    }

    private static KeyName? OfLetter(char letter, bool isByWord) =>
        letter switch
        {
            'A' => KeyName.Up,
            'B' => KeyName.Down,
            'C' => isByWord ? KeyName.WordRight : KeyName.Right,
            'D' => isByWord ? KeyName.WordLeft : KeyName.Left,
            'H' => KeyName.Home,
            'F' => KeyName.End,
            _ => null,
        };
}
