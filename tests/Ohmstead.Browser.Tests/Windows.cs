using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace Ohmstead.Browser.Tests;

/// <summary>One browser, and its windows: a window costs as much as five pages, so one that is given back is used again.</summary>
internal sealed class Windows(IPlaywright playwright, IBrowser browser) : IAsyncDisposable
{
    private const float Patience = 120_000;

    private readonly ConcurrentDictionary<(bool Scripts, bool KeepsPolicy), ConcurrentBag<View>> free = new();

    /// <summary>Starts the system's browser.</summary>
    public static async Task<Windows> OpenAsync()
    {
        // A slow machine does not run into time limits.
        Assertions.SetDefaultExpectTimeout(Patience);
        var playwright = await Playwright.CreateAsync();
        var browser = await playwright.Chromium.LaunchAsync(
            new()
            {
                ExecutablePath = await Chromium.FindAsync(),
                Args = Chromium.Arguments,
                Timeout = Patience,
            }
        );
        return new(playwright, browser);
    }

    /// <summary>A window, in which an earlier page may still be.</summary>
    /// <param name="scripts">False for a browser with scripts switched off.</param>
    /// <param name="strict">True for a browser that keeps to the policy of the pages and may ask a server of the test.</param>
    public async Task<View> TakeAsync(bool scripts, bool strict)
    {
        // The tools of a test are scripts of its own, which a strict policy of the page would refuse.
        var keepsPolicy = strict || !scripts;
        var alike = free.GetOrAdd((scripts, keepsPolicy), _ => []);
        if (!alike.TryTake(out var view))
        {
            var context = await browser.NewContextAsync(new() { JavaScriptEnabled = scripts, BypassCSP = !keepsPolicy });
            context.SetDefaultTimeout(Patience);
            view = new View(await context.NewPageAsync(), alike.Add);
        }

        await view.Page.Context.SetOfflineAsync(!strict);
        return view;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await browser.DisposeAsync();
        playwright.Dispose();
    }
}
