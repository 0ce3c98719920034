namespace Ohmstead.Browser.Tests;

/// <summary>The report of the demo collection grown sevenfold, so that its boards need two pages: the records again under other
/// numbers.</summary>
public sealed class GrownReport : IAsyncLifetime
{
    private const int Times = 7;
    private IReadOnlyList<ReportPage> pages = [];
    private string folder = string.Empty;

    /// <summary>The folder of the report.</summary>
    public string Folder => Chromium.Wanted(Path.Combine(folder, "report"));

    /// <summary>All pages, the index first.</summary>
    public IReadOnlyList<ReportPage> Pages => Chromium.Wanted(pages);

    /// <summary>The pages of the table of all boards.</summary>
    public IReadOnlyList<ReportPage> Boards => [Page("boards.html"), Page("boards~2.html")];

    /// <summary>A page by its name.</summary>
    public ReportPage Page(string name) => Pages.Single(page => page.Name == name);

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        if (!Chromium.IsWanted)
        {
            return;
        }

        folder = Directory.CreateTempSubdirectory("ohmstead-grown-").FullName;
        var records = Path.Combine(Repository.Root, "records");
        foreach (var file in Directory.EnumerateFiles(records, "*", SearchOption.AllDirectories))
        {
            var path = Path.GetRelativePath(records, file);
            Directory.CreateDirectory(Path.Combine(folder, Path.GetDirectoryName(path)!));
            File.Copy(file, Path.Combine(folder, path));
            for (var time = 1; path.StartsWith("boards", StringComparison.Ordinal) && time < Times; time++)
            {
                var number = Path.GetFileNameWithoutExtension(file);
                var other = $"{number[..^4]}{time}{number[^3..]}";
                var text = await File.ReadAllTextAsync(file);
                await File.WriteAllTextAsync(
                    Path.Combine(folder, "boards", other + ".md"),
                    text.Replace($"board: {number}", $"board: {other}", StringComparison.Ordinal)
                );
            }
        }

        pages = await ReportPage.BuildAsync(folder, Folder);
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        if (folder.Length > 0)
        {
            Directory.Delete(folder, recursive: true);
        }

        return ValueTask.CompletedTask;
    }
}
