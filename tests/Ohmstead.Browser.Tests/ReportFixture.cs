using Microsoft.Playwright;

namespace Ohmstead.Browser.Tests;

/// <summary>The report of the demo collection, built once by the program itself, and a browser to look at it with.</summary>
/// <remarks>Where the variable OHMSTEAD_REPORT names a folder, the report found there is looked at instead.</remarks>
public sealed class ReportFixture : IAsyncLifetime
{
    // As many as there are cores on a small machine: while one window waits for its page, the other reckons.
    private const int Hands = 2;

    private readonly string? given = Environment.GetEnvironmentVariable("OHMSTEAD_REPORT");
    private readonly Lazy<Task<Walk>> withScripts;
    private readonly Lazy<Task<Walk>> withoutScripts;
    private string folder = string.Empty;
    private IReadOnlyList<ReportPage> pages = [];
    private IReadOnlyList<ReportPage> opened = [];
    private Windows? windows;

    /// <summary>Nothing is built or opened yet.</summary>
    public ReportFixture()
    {
        withScripts = new(() => Walk.ThroughAsync(this, scripts: true));
        withoutScripts = new(() => Walk.ThroughAsync(this, scripts: false));
    }

    /// <summary>All pages, the index first.</summary>
    public IReadOnlyList<ReportPage> Pages => Chromium.Wanted(pages);

    /// <summary>The pages that are opened one by one: all that there is one of, and of those that are made alike a choice on which
    /// everything is that is on any.</summary>
    public IReadOnlyList<ReportPage> Opened => Chromium.Wanted(opened);

    /// <summary>The folder of the report.</summary>
    public string Folder => Chromium.Wanted(folder);

    /// <summary>The index.</summary>
    public ReportPage Index => Pages[0];

    /// <summary>The pages of boards.</summary>
    public IReadOnlyList<ReportPage> Boards => [.. Pages.Where(page => page.Name.StartsWith("boards/", StringComparison.Ordinal))];

    /// <summary>The page of the board with the longest record.</summary>
    public ReportPage LongestBoard => Boards.MaxBy(page => page.Length)!;

    /// <summary>The pages of designs.</summary>
    public IReadOnlyList<ReportPage> Designs => [.. Pages.Where(page => page.Name.StartsWith("designs/", StringComparison.Ordinal))];

    /// <summary>The page of the design with the longest record.</summary>
    public ReportPage LongestDesign => Designs.MaxBy(page => page.Length)!;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        if (!Chromium.IsWanted)
        {
            return;
        }

        folder = given ?? Directory.CreateTempSubdirectory("ohmstead-report-").FullName;
        pages = given is null ? await ReportPage.BuildAsync("records", folder) : ReportPage.In(folder);
        opened = [.. pages.GroupBy(page => page.Name.Split('/')[0]).SelectMany(Variety.Choose)];
        windows = await Windows.OpenAsync();
    }

    /// <summary>A window, as a person with these settings has it.</summary>
    /// <param name="width">Width of the window in CSS pixels.</param>
    /// <param name="scripts">False for a browser with scripts switched off.</param>
    /// <param name="strict">True for a browser that keeps to the policy of the pages and may ask a server of the test.</param>
    /// <param name="motion">Whether the person wants less of it.</param>
    internal async Task<View> ViewAsync(
        int width = 1280,
        bool scripts = false,
        bool strict = false,
        ReducedMotion motion = ReducedMotion.NoPreference
    )
    {
        var view = await Chromium.Wanted(windows)!.TakeAsync(scripts, strict);
        await view.ShowAsync(new(ColorScheme.Light, width), motion);
        return view;
    }

    /// <summary>Looks at each page, several windows at a time; what was seen comes in the order of the pages.</summary>
    internal async Task<IReadOnlyList<T>> LookAsync<T>(
        IReadOnlyList<ReportPage> pages,
        Func<View, ReportPage, Task<T>> look,
        bool scripts = false,
        bool strict = false
    )
    {
        var seen = new T[pages.Count];
        var taken = -1;
        await Task.WhenAll(
            Enumerable
                .Range(0, Math.Min(Hands, pages.Count))
                .Select(async _ =>
                {
                    await using var view = await ViewAsync(scripts: scripts, strict: strict);
                    for (var next = Interlocked.Increment(ref taken); next < pages.Count; next = Interlocked.Increment(ref taken))
                    {
                        seen[next] = await look(view, pages[next]);
                    }
                })
        );
        return seen;
    }

    /// <summary>What was seen on the one walk through the pages that are opened, which several tests ask about.</summary>
    internal Task<Walk> WalkAsync(bool scripts) => (scripts ? withScripts : withoutScripts).Value;

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (windows is not null)
        {
            await windows.DisposeAsync();
        }

        if (given is null && folder.Length > 0)
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
