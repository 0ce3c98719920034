namespace Ohmstead.Records.Binding;

/// <summary>Which texts may name a board, a part, a lot or a point: names become anchors and page names on every file system.</summary>
public static class NameRules
{
    private const int Longest = 60;
    private static readonly string[] Reserved = ["INDEX", "CON", "NUL", "PRN", "AUX", "COM1", "COM2", "COM3", "COM4", "LPT1", "LPT2", "LPT3", ".", ".."];

    /// <summary>Why the text cannot be a name, or null when it can.</summary>
    public static string? Fault(string text)
    {
        if (text.Length == 0)
        {
            return "it is empty";
        }

        if (text.Length > Longest)
        {
            return $"it has {text.Length} characters, at most {Longest} are allowed";
        }

        if (Reserved.Contains(text.ToUpperInvariant(), StringComparer.Ordinal) || text.StartsWith('.') || text.EndsWith('.'))
        {
            return "it cannot be the name of a page";
        }

        foreach (var rune in text.EnumerateRunes())
        {
            if (!(System.Text.Rune.IsLetterOrDigit(rune) || rune.Value is '-' or '+' or '.' or '_' ))
            {
                return rune.Value == ' ' ? "it has a space" : $"it has the character U+{rune.Value:X4}";
            }
        }

        return null;
    }
}
