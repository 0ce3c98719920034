namespace Ohmstead.Report.Script;

/// <summary>The script that is written once beside the pages: it sorts, filters and searches what is there without it.</summary>
public static class PageScript
{
    /// <summary>The name of its file, at the root of the report.</summary>
    public const string FileName = "ohmstead.js";

    /// <summary>Its bytes, the same for every report of this version.</summary>
    public static byte[] Read()
    {
        using var resource = typeof(PageScript).Assembly.GetManifestResourceStream(FileName)
            ?? throw new InvalidOperationException($"The assembly was built without {FileName}.");
        var bytes = new byte[resource.Length];
        resource.ReadExactly(bytes);
        return bytes;
    }
}
