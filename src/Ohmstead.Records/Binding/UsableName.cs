using System.Text.RegularExpressions;

namespace Ohmstead.Records.Binding;

/// <summary>The name that was meant by a text that cannot be one.</summary>
internal static partial class UsableName
{
    /// <summary>What to write in its place, or null where nobody can say.</summary>
    internal static string? For(string key, string text)
    {
        var pieces = text.Split([' ', ',', ';', '/', '&'], StringSplitOptions.RemoveEmptyEntries);
        if (pieces.Length > 1 && pieces.All(piece => Reference().IsMatch(piece)))
        {
            return $"write {key}: {pieces[0]}, and an entry of its own for {string.Join(", ", pieces.Skip(1))}";
        }

        var slash = text.LastIndexOf('/');
        var isFile = text.EndsWith(".md", StringComparison.OrdinalIgnoreCase) || text.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase);
        var name =
            isFile ? Path.GetFileNameWithoutExtension(text[(slash + 1)..])
            : Designator().IsMatch(text) ? text.Replace(" ", string.Empty, StringComparison.Ordinal)
            : string.Join('-', pieces);
        return name.Length > 0 && NameRules.Fault(name) is null
            ? $"write {key}: {name}; a name has letters, digits and - + . _ only"
            : null;
    }

    [GeneratedRegex("^[A-Za-z]{1,4}[0-9]+[A-Za-z]?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Reference();

    // C 2, + 15 V: what is one name on a drawing.
    [GeneratedRegex(
        "^([A-Za-z]{1,3} [0-9]+|[-+]? ?[0-9.]+ ?[A-Za-z]+)$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Designator();
}
