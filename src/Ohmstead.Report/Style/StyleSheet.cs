namespace Ohmstead.Report.Style;

/// <summary>The style sheet that is written once beside the pages.</summary>
public static class StyleSheet
{
    /// <summary>The name of its file, at the root of the report.</summary>
    public const string FileName = "report.css";

    /// <summary>Its bytes, the same for every report of this version.</summary>
    public static byte[] Read()
    {
        using var resource = typeof(StyleSheet).Assembly.GetManifestResourceStream(FileName)
            ?? throw new InvalidOperationException($"The assembly was built without {FileName}.");
        var bytes = new byte[resource.Length];
        resource.ReadExactly(bytes);
        return bytes;
    }
}
