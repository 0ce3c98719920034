using System.Text.RegularExpressions;

namespace Ohmstead.Records.Binding;

/// <summary>The name that was meant by a text that cannot be one.</summary>
internal static partial class UsableName
{
    /// <summary>What to write in its place, or null where nobody can say.</summary>
    /// <param name="key">The key.</param>
    /// <param name="text">What stands behind it.</param>
    /// <param name="path">The path of the file, which is named as what it records.</param>
    internal static string? For(string key, string text, string path)
    {
        var file = Path.GetFileNameWithoutExtension(path);
        if (Bare(file).Length > 0 && Bare(file) == Bare(text) && NameRules.Fault(file) is null)
        {
            return $"write {key}: {file}, as its file is named";
        }

        var pieces = text.Split([' ', ',', ';', '/', '&'], StringSplitOptions.RemoveEmptyEntries);
        if (pieces.Length > 1 && pieces.All(piece => Reference().IsMatch(piece)))
        {
            return $"write {key}: {pieces[0]}, and an entry of its own for {string.Join(", ", pieces.Skip(1))}";
        }

        var slash = text.LastIndexOf('/');
        var isFile = text.EndsWith(".md", StringComparison.OrdinalIgnoreCase) || text.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase);
        var name =
            isFile ? Path.GetFileNameWithoutExtension(text[(slash + 1)..])
            : IsOfBoard(key) && Designator().IsMatch(text) ? text.Replace(" ", string.Empty, StringComparison.Ordinal)
            : string.Join('-', pieces);
        return name.Length > 0 && NameRules.Fault(name) is null
            ? isFile
                ? $"write {key}: {name}; what stands there is its file"
                : $"write {key}: {name}; a name has letters, digits and - + . _ only"
            : null;
    }

    // Parts and points are named as on a drawing; another name with a space has its pieces for a reason.
    private static bool IsOfBoard(string key) => key is "ref" or "part" or "point" or "at";

    private static string Bare(string name) => string.Concat(name.Where(char.IsLetterOrDigit)).ToUpperInvariant();

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
