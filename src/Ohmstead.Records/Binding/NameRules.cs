using System.Buffers;
using System.Collections.Frozen;

namespace Ohmstead.Records.Binding;

/// <summary>Which texts may name a board, a part, a lot or a point: names become anchors and page names on every file system.</summary>
public static class NameRules
{
    private const int Longest = 60;

    // Names that some systems keep for devices, with whatever behind a full stop (Microsoft, Naming Files, Paths, and Namespaces, from
    // memory).
    private static readonly FrozenSet<string> Devices = new[] { "CON", "PRN", "AUX", "NUL", "CONIN$", "CONOUT$", "CLOCK$" }
        .Concat("0123456789¹²³".SelectMany(number => new[] { "COM" + number, "LPT" + number }))
        .ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    private static readonly SearchValues<char> Refused = SearchValues.Create("<>:\"\\|?*");

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

        if (text.Equals("index", StringComparison.OrdinalIgnoreCase) || IsDevice(text) || text.StartsWith('.') || text.EndsWith('.'))
        {
            return "it cannot be the name of a page";
        }

        foreach (var rune in text.EnumerateRunes())
        {
            if (!(System.Text.Rune.IsLetterOrDigit(rune) || rune.Value is '-' or '+' or '.' or '_'))
            {
                return rune.Value == ' ' ? "it has a space"
                    : rune.Value is > ' ' and <= '~' ? $"it has a {rune}"
                    : $"it has the character U+{rune.Value:X4}";
            }
        }

        return null;
    }

    /// <summary>Why some system cannot keep a file or folder of this name, or null when all can.</summary>
    public static string? FileFault(ReadOnlySpan<char> name) =>
        IsDevice(name) ? "a device has that name there"
        : name.EndsWith('.') ? "a name there does not end in a full stop"
        : name.EndsWith(' ') ? "a name there does not end in a space"
        : name.IndexOfAny(Refused) is >= 0 and var at ? $"a name there holds no {name[at]}"
        : name.IndexOfAnyInRange('\0', '\u001F') >= 0 ? "a name there holds no control character"
        : null;

    private static bool IsDevice(ReadOnlySpan<char> name)
    {
        var stem = name.IndexOf('.') is >= 0 and var dot ? name[..dot] : name;
        return Devices.GetAlternateLookup<ReadOnlySpan<char>>().Contains(stem.TrimEnd(' '));
    }
}
