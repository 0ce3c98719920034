using Microsoft.Playwright;

namespace Ohmstead.Browser.Tests;

/// <summary>A window of the browser, which keeps account of everything that went wrong in it.</summary>
internal sealed class View(IBrowserContext context, IPage page) : IAsyncDisposable
{
    /// <summary>The page in the window.</summary>
    public IPage Page => page;

    /// <summary>Opens a page.</summary>
    /// <param name="wanted">The page.</param>
    /// <param name="fragment">What follows its address, from the hash on.</param>
    public Task OpenAsync(ReportPage wanted, string fragment = "") => page.GotoAsync(wanted.Address.AbsoluteUri + fragment, new() { WaitUntil = WaitUntilState.Load });

    /// <summary>Opens a page and tells what the browser complained of, and what was asked for beyond the report's folder.</summary>
    public async Task<IReadOnlyList<string>> ComplaintsAsync(ReportPage wanted, Uri folder)
    {
        var complaints = new List<string>();
        void Asked(object? sender, IRequest request)
        {
            if (!request.Url.StartsWith(folder.AbsoluteUri, StringComparison.Ordinal) && !request.Url.StartsWith("data:", StringComparison.Ordinal))
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
        page.Request -= Asked;
        page.Console -= Said;
        page.RequestFailed -= Missed;
        page.PageError -= Threw;
        return complaints;
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => context.DisposeAsync();
}
