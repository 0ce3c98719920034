using Microsoft.Playwright;

namespace Ohmstead.Browser.Tests;

/// <summary>A window of the browser for one test, which gives it back when it ends.</summary>
internal sealed class View(IPage page, Action<View> giveBack) : IAsyncDisposable
{
    /// <summary>The page in the window.</summary>
    public IPage Page => page;

    /// <summary>Shows whatever is in the window in another form, on a screen; what is printed is still printed as for paper.</summary>
    public async Task ShowAsync(Form form, ReducedMotion motion = ReducedMotion.NoPreference)
    {
        await page.EmulateMediaAsync(
            new()
            {
                Media = Media.Null,
                ColorScheme = form.Colours,
                ReducedMotion = motion,
            }
        );
        await page.SetViewportSizeAsync(form.Width, 800);
    }

    /// <summary>Opens a page.</summary>
    /// <param name="wanted">The page.</param>
    /// <param name="fragment">What follows its address, from the hash on.</param>
    public async Task OpenAsync(ReportPage wanted, string fragment = "")
    {
        if (fragment.Length > 0 && page.Url.Split('#')[0] == wanted.Address.AbsoluteUri)
        {
            // Else it would be the same page still, as an earlier test left it. Not done for other pages: it costs a process each time.
            await page.GotoAsync("about:blank");
        }

        await page.GotoAsync(wanted.Address.AbsoluteUri + fragment, new() { WaitUntil = WaitUntilState.Load });
    }

    /// <summary>Opens a page, looks at it, and tells what the browser complained of meanwhile, and what was asked for beyond the report's
    /// folder.</summary>
    public async Task<IReadOnlyList<string>> ComplaintsAsync(ReportPage wanted, Uri folder, Func<Task> look)
    {
        var complaints = new List<string>();
        void Asked(object? sender, IRequest request)
        {
            if (
                !request.Url.StartsWith(folder.AbsoluteUri, StringComparison.Ordinal)
                && !request.Url.StartsWith("data:", StringComparison.Ordinal)
            )
            {
                complaints.Add($"{wanted} asks for {request.Url}");
            }
        }

        void Said(object? sender, IConsoleMessage message)
        {
            if (message.Type is "error" or "warning")
            {
                complaints.Add($"{wanted} {message.Type}: {message.Text}");
            }
        }

        void Missed(object? sender, IRequest request) => complaints.Add($"{wanted} did not get {request.Url}: {request.Failure}");
        void Threw(object? sender, string problem) => complaints.Add($"{wanted} threw {problem}");

        page.Request += Asked;
        page.Console += Said;
        page.RequestFailed += Missed;
        page.PageError += Threw;
        await OpenAsync(wanted);
        await look();
        page.Request -= Asked;
        page.Console -= Said;
        page.RequestFailed -= Missed;
        page.PageError -= Threw;
        return complaints;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await page.UnrouteAllAsync();
        giveBack(this);
    }
}
