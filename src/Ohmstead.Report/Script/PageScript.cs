namespace Ohmstead.Report.Script;

/// <summary>The scripts that are written once beside the pages: one sorts and filters what is there without it and has the field of the
/// search, the other searches and is loaded when somebody does.</summary>
public static class PageScript
{
    /// <summary>The name of the file of the first, at the root of the report.</summary>
    public const string FileName = "ohmstead.js";

    /// <summary>The name of the file of the second, at the root of the report.</summary>
    public const string SearchName = "search.js";

    /// <summary>The bytes of one, the same for every report of this version.</summary>
    public static byte[] Read(string name)
    {
        using var resource = typeof(PageScript).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The assembly was built without {name}.");
        var bytes = new byte[resource.Length];
        resource.ReadExactly(bytes);
        return bytes;
    }
}
