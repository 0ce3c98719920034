namespace Ohmstead.Report.Style;

/// <summary>The style sheet that is written once beside the pages.</summary>
public static class StyleSheet
{
    /// <summary>The name of its file, at the root of the report.</summary>
    public const string FileName = "report.css";

    /// <summary>Its bytes, the same for every report of this version.</summary>
    public static byte[] Read() => [.. Read(FileName), .. Read(Answers)];

    // What answers first, on the pages of the collection and of a board.
    private const string Answers = "answers.css";

    private static byte[] Read(string name)
    {
        using var resource = typeof(StyleSheet).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The assembly was built without {name}.");
        var bytes = new byte[resource.Length];
        resource.ReadExactly(bytes);
        return bytes;
    }
}
