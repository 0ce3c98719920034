namespace Ohmstead.Browser.Tests;

/// <summary>A page of the report on disk.</summary>
/// <param name="Name">Its path from the report's folder, with forward slashes.</param>
/// <param name="Address">Its address, <c>file://</c>.</param>
/// <param name="Length">Its size in bytes.</param>
public sealed record ReportPage(string Name, Uri Address, long Length)
{
    // 25 November 2026, 00:00 UTC: the report must not change with the day of the test.
    private const string Day = "1795564800";

    /// <summary>The pages in a folder, the index first; a page of boards is there too, or the folder holds no report.</summary>
    internal static IReadOnlyList<ReportPage> In(string folder)
    {
        var pages = Directory
            .EnumerateFiles(folder, "*.html", SearchOption.AllDirectories)
            .Select(file => new ReportPage(Path.GetRelativePath(folder, file).Replace('\\', '/'), new Uri(file), new FileInfo(file).Length))
            .OrderBy(page => page.Name != "index.html")
            .ThenBy(page => page.Name, StringComparer.Ordinal)
            .ToArray();
        return
            pages.Length > 0
            && pages[0].Name == "index.html"
            && pages.Any(page => page.Name.StartsWith("boards/", StringComparison.Ordinal))
            ? pages
            : throw new InvalidOperationException(
                $"a report has index.html and boards/*.html, found: {string.Join(", ", pages.Select(page => page.Name))}"
            );
    }

    /// <summary>Builds a report with the program itself and finds its pages.</summary>
    internal static async Task<IReadOnlyList<ReportPage>> BuildAsync(string records, string folder)
    {
        var built = await Command.RunAsync(
            "dotnet",
            [Repository.Program, "report", records, "--to", folder],
            new Dictionary<string, string> { ["SOURCE_DATE_EPOCH"] = Day },
            Repository.Root
        );
        // 1 only says that the demo holds findings, which it does on purpose.
        return built.ExitCode is 0 or 1
            ? In(folder)
            : throw new InvalidOperationException(
                $"the report could not be built, exit code {built.ExitCode}\n{built.Line}\n{built.Output}"
            );
    }

    /// <summary>What is in the file.</summary>
    internal string Text => File.ReadAllText(Address.LocalPath);

    /// <summary>Whether these characters are in the file.</summary>
    internal bool Says(string characters) => Text.Contains(characters, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override string ToString() => Name;
}
