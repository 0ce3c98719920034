using Microsoft.Playwright;

namespace Ohmstead.Browser.Tests;

/// <summary>The report of the demo collection, built once by the program itself, and a browser to look at it with.</summary>
/// <remarks>Where the variable OHMSTEAD_REPORT names a folder, the report found there is looked at instead.</remarks>
public sealed class ReportFixture : IAsyncLifetime
{
    // 25 November 2026, 00:00 UTC: the report must not change with the day of the test.
    private const string Day = "1795564800";
    private const float Patience = 120_000;

    private readonly string? given = Environment.GetEnvironmentVariable("OHMSTEAD_REPORT");
    private string folder = string.Empty;
    private IPlaywright? playwright;
    private IBrowser? browser;

    /// <summary>All pages, the index first.</summary>
    public IReadOnlyList<ReportPage> Pages { get; private set; } = [];

    /// <summary>The pages that are opened one by one: all that there is one of, and of those that are made alike the four longest and the shortest.</summary>
    public IReadOnlyList<ReportPage> Opened => [.. Pages.GroupBy(page => page.Name.Contains('/', StringComparison.Ordinal) ? page.Name[..page.Name.IndexOf('/', StringComparison.Ordinal)] : page.Name).SelectMany(Some)];

    /// <summary>The folder of the report.</summary>
    public string Folder => folder;

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

    /// <summary>The page of a board on which something must be made safe first.</summary>
    public ReportPage UnsafeBoard => Boards.First(page => File.ReadAllText(page.Address.LocalPath).Contains("class=\"danger\"", StringComparison.Ordinal));

    private static IEnumerable<ReportPage> Some(IEnumerable<ReportPage> alike)
    {
        ReportPage[] sorted = [.. alike.OrderByDescending(page => page.Length).ThenBy(page => page.Name, StringComparer.Ordinal)];
        return sorted.Length <= 5 ? sorted : [.. sorted[..4], sorted[^1]];
    }

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        folder = given ?? Directory.CreateTempSubdirectory("ohmstead-report-").FullName;
        if (given is null)
        {
            var built = await Command.RunAsync("dotnet", [Repository.Program, "report", "records", "--to", folder], new Dictionary<string, string> { ["SOURCE_DATE_EPOCH"] = Day }, Repository.Root);
            // 1 only says that the demo holds findings, which it does on purpose.
            if (built.ExitCode is not (0 or 1))
            {
                throw new InvalidOperationException($"the report could not be built, exit code {built.ExitCode}\n{built.Line}\n{built.Output}");
            }
        }

        Pages = ReportPage.In(folder);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = await Chromium.FindAsync(), Args = Chromium.Arguments, Timeout = Patience });
    }

    /// <summary>A fresh view of pages, as a person with this window and these settings has it.</summary>
    /// <param name="width">Width of the window in CSS pixels.</param>
    /// <param name="colours">Light or dark.</param>
    /// <param name="scripts">False for a browser with scripts switched off.</param>
    /// <param name="strict">True for a browser that keeps to the policy of the pages and may ask a server of the test.</param>
    /// <param name="motion">Whether the person wants less of it.</param>
    internal async Task<View> ViewAsync(int width = 1280, ColorScheme colours = ColorScheme.Light, bool scripts = false, bool strict = false, ReducedMotion motion = ReducedMotion.NoPreference)
    {
        var context = await browser!.NewContextAsync(new()
        {
            ViewportSize = new() { Width = width, Height = 800 },
            ColorScheme = colours,
            JavaScriptEnabled = scripts,
            // The tools of a test are scripts of its own, which a strict policy of the page would refuse.
            BypassCSP = scripts && !strict,
            Offline = !strict,
            ReducedMotion = motion,
        });
        context.SetDefaultTimeout(Patience);
        return new View(context, await context.NewPageAsync());
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
        if (given is null && folder.Length > 0)
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
