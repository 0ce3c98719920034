using System.Net;
using System.Net.Sockets;
using System.Text;
using Ohmstead.Publishing;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Publishing;

/// <summary>The server of the preview, asked by a client that sends exactly what it is told to send.</summary>
public sealed class PagesServerTests : IDisposable
{
    private readonly CollectionCopy copy = CollectionCopy.Empty();
    private readonly PagesServer server;
    private readonly int port;

    /// <summary>A report of two files, and one beside it that nobody may see.</summary>
    public PagesServerTests()
    {
        copy.Write("secret.html", "secret");
        copy.Write("pages/mine.html", "secret");
        copy.Write("pages/index.html", "<p>tide</p>");
        copy.Write("pages/boards/SP 1.html", "<p>board</p>");
        copy.Write("pages/.ohmstead-report", "index.html\nboards/SP 1.html\ngone.html\n");
        port = FreePort();
        server = PagesServer.Start(copy.At("pages"), port);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        server.Dispose();
        copy.Dispose();
    }

    [Theory]
    [InlineData("/", "<p>tide</p>")]
    [InlineData("/index.html", "<p>tide</p>")]
    [InlineData("/boards/SP%201.html?x=1", "<p>board</p>")]
    public void A_page_of_the_report_is_served_with_strict_headers(string path, string text)
    {
        var answer = Ask("GET", path);
        Assert.StartsWith("HTTP/1.1 200", answer, StringComparison.Ordinal);
        Assert.EndsWith(text, answer, StringComparison.Ordinal);
        Assert.All(
            [
                "Content-Security-Policy: default-src 'none'; img-src 'self'; style-src 'self'; script-src 'self'; frame-ancestors 'none'",
                "X-Content-Type-Options: nosniff",
                "Referrer-Policy: no-referrer",
                "Cache-Control: no-store",
                "Content-Type: text/html; charset=utf-8",
            ],
            header => Assert.Contains(header, answer, StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("/../secret.html")]
    [InlineData("/%2e%2e/secret.html")]
    [InlineData("/..%2fsecret.html")]
    [InlineData("/boards/../../secret.html")]
    [InlineData("//secret.html")]
    [InlineData("/mine.html")]
    [InlineData("/.ohmstead-report")]
    [InlineData("/gone.html")]
    [InlineData("/boards")]
    [InlineData("/boards\\SP 1.html")]
    public void Whatever_is_no_file_of_the_report_is_not_there(string path)
    {
        var answer = Ask("GET", path);
        Assert.Matches("^HTTP/1.1 (400|404)", answer);
        Assert.DoesNotContain("secret", answer.Split("\r\n\r\n")[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_from_elsewhere_that_names_this_machine_otherwise_gets_nothing()
    {
        var answer = Ask("GET", "/", "tide.example");
        Assert.Matches("^HTTP/1.1 (400|404)", answer);
        Assert.DoesNotContain("tide</p>", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("POST")]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    public void Nothing_can_be_written(string method) => Assert.StartsWith("HTTP/1.1 405", Ask(method, "/"), StringComparison.Ordinal);

    [Fact]
    public void It_listens_on_this_machine_alone() =>
        Assert.All(
            System.Net.NetworkInformation.IPGlobalProperties.GetIPGlobalProperties().GetActiveTcpListeners().Where(end => end.Port == port),
            end => Assert.True(IPAddress.IsLoopback(end.Address), end.ToString())
        );

    [Fact]
    public void A_port_that_is_taken_is_told()
    {
        var taken = Assert.Throws<IOException>(() => PagesServer.Start(copy.At("pages"), port));
        Assert.Contains("give another with --serve", taken.Message, StringComparison.Ordinal);
    }

    private string Ask(string method, string path, string host = "localhost")
    {
        using var client = new TcpClient("localhost", port);
        using var stream = client.GetStream();
        stream.Write(
            Encoding.ASCII.GetBytes($"{method} {path} HTTP/1.1\r\nHost: {host}:{port}\r\nConnection: close\r\nContent-Length: 0\r\n\r\n")
        );
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }
}
