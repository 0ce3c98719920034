namespace Ohmstead.Report.Pages;

/// <summary>The style sheet that is written once beside the pages.</summary>
public static class StyleSheetFile
{
    /// <summary>Its bytes.</summary>
    public static byte[] Read()
    {
        using var stream = typeof(StyleSheetFile).Assembly.GetManifestResourceStream(PageFrame.StyleSheet) ?? throw new InvalidOperationException("The style sheet is missing from this build.");
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
