using System.Net;
using System.Net.Sockets;
using Ohmstead.Tests.Support;

namespace Ohmstead.Published.Tests;

/// <summary>A preview by the published program: it writes, serves, writes again when a record is saved, and goes when it is told
/// to.</summary>
public sealed class PreviewTests(PublishedProgram published)
{
    [Fact]
    public async Task It_shows_a_page_to_a_browser_and_again_when_a_record_was_saved()
    {
        var token = TestContext.Current.CancellationToken;
        using var copy = CollectionCopy.Make();
        var port = FreePort();
        using var process = Child.Start($"exec $ohmstead preview . --to pages --serve {port}", copy.Root, ("ohmstead", published.Path));
        await Child.ToldAsync(process, "files written");
        var page = new Uri($"http://localhost:{port}/boards/SP-0003.html");
        using var browser = new HttpClient();
        Assert.Equal(copy.Read("pages/boards/SP-0003.html"), await browser.GetStringAsync(page, token));

        copy.Write(
            "boards/SP-0003.md",
            copy.Read("boards/SP-0003.md").Replace("spare from the boat house", "spare out of the boat house", StringComparison.Ordinal)
        );
        await Child.ToldAsync(process, "files written");
        Assert.Contains("spare out of the boat house", await browser.GetStringAsync(page, token), StringComparison.Ordinal);

        await Child.ShellAsync($"kill -INT {process.Id}", copy.Root);
        var run = await Child.EndAsync(process);
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
    }

    [Theory]
    [InlineData("TERM", 143)]
    [InlineData("HUP", 129)]
    public async Task Any_other_signal_ends_it_with_its_own_number(string signal, int exit)
    {
        using var copy = CollectionCopy.Make();
        using var process = Child.Start("exec $ohmstead preview . --to pages", copy.Root, ("ohmstead", published.Path));
        await Child.ToldAsync(process, "files written");
        await Child.ShellAsync($"kill -{signal} {process.Id}", copy.Root);
        Assert.Equal(exit, (await Child.EndAsync(process)).Exit);
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
