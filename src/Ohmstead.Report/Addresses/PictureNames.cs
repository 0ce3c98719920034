namespace Ohmstead.Report.Addresses;

/// <summary>Which picture paths a page may show: below the collection, and a picture by name. Anything else is reported by a check and not
/// shown.</summary>
public static class PictureNames
{
    /// <summary>True when the path stays below the root of the collection and names a picture.</summary>
    public static bool IsSafe(string path) =>
        path.Length is > 0 and < 300
        && !path.Contains('\\', StringComparison.Ordinal)
        && !path.Contains(':', StringComparison.Ordinal)
        && !path.Contains('%', StringComparison.Ordinal)
        && !path.Any(char.IsControl)
        && path.Split('/').All(part => part is not ("" or "." or ".."))
        && Path.GetExtension(path).ToUpperInvariant() is (".PNG" or ".JPG" or ".JPEG" or ".GIF" or ".WEBP" or ".SVG");
}
