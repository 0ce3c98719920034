using System.Buffers;

namespace Ohmstead.Report.Html;

/// <summary>Characters that browsers drop from an address or take for others; an address that holds one does not say where it
/// leads.</summary>
internal static class AddressCharacters
{
    /// <summary>The characters refused, besides white space and controls: the backslash, and what steers the direction of text.</summary>
    public static SearchValues<char> Refused { get; } =
        SearchValues.Create("\\\u061C\u200B\u200C\u200D\u200E\u200F\u202A\u202B\u202C\u202D\u202E\u2060\u2066\u2067\u2068\u2069\uFEFF");
}
