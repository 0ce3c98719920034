using System.Buffers;

namespace Ohmstead.Report.Markdown;

/// <summary>What the name of a part or a board is made of.</summary>
internal static class NameCharacters
{
    /// <summary>ASCII letters, digits and the hyphen.</summary>
    public static SearchValues<char> All { get; } = SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-");
}
