using System.Net;

namespace Ohmstead.Browser.Tests;

/// <summary>Serves a folder below a path of its own, under the strictest policy that a host may put on pages.</summary>
internal sealed class StaticServer : IAsyncDisposable
{
    /// <summary>No inline style or script, nothing from elsewhere.</summary>
    public const string Strict =
        "default-src 'none'; img-src 'self'; style-src 'self'; script-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors "
        + "'none'";

    /// <summary>The same without any script.</summary>
    public const string NoScripts =
        "default-src 'none'; img-src 'self'; style-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private static readonly Dictionary<string, string> Types = new(StringComparer.Ordinal)
    {
        [".html"] = "text/html; charset=utf-8",
        [".css"] = "text/css",
        [".js"] = "text/javascript",
        [".svg"] = "image/svg+xml",
        [".png"] = "image/png",
        [".jpg"] = "image/jpeg",
        [".xml"] = "application/atom+xml",
        [".json"] = "application/json",
        [".csv"] = "text/csv",
        [".ics"] = "text/calendar",
    };

    private readonly HttpListener listener;
    private readonly string folder;
    private readonly string policy;
    private readonly Task serving;

    private StaticServer(HttpListener listener, string folder, string policy, Uri root)
    {
        this.listener = listener;
        this.folder = folder;
        this.policy = policy;
        Root = root;
        serving = ServeAsync();
    }

    /// <summary>Where the folder is found: below two folders, as a host may put it.</summary>
    public Uri Root { get; }

    /// <summary>Serves a folder from now on, at a free port of this machine.</summary>
    public static StaticServer Start(string folder, string policy)
    {
        for (var port = 41_000; ; port++)
        {
            var free = new HttpListener();
            var root = new Uri($"http://127.0.0.1:{port}/a/b/");
            free.Prefixes.Add($"http://127.0.0.1:{port}/");
            try
            {
                free.Start();
                return new(free, folder, policy, root);
            }
            catch (HttpListenerException) when (port < 42_000)
            {
                free.Close();
            }
        }
    }

    /// <summary>The address of a page of the report.</summary>
    public ReportPage At(ReportPage page) =>
        page with
        {
            Address = new Uri(Root, string.Join('/', page.Name.Split('/').Select(Uri.EscapeDataString))),
        };

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        listener.Stop();
        await serving;
        listener.Close();
    }

    private async Task ServeAsync()
    {
        while (listener.IsListening)
        {
            try
            {
                Answer(await listener.GetContextAsync());
            }
            catch (Exception stopped) when (stopped is HttpListenerException or ObjectDisposedException)
            {
                // Stopped, or the browser went away; the condition of the loop tells which.
            }
        }
    }

    private void Answer(HttpListenerContext context)
    {
        using var response = context.Response;
        var path = context.Request.Url!.AbsolutePath;
        if (path == "/favicon.ico")
        {
            // A browser asks the host for it of its own accord, at any moment; whether there is one is not the report's affair.
            response.StatusCode = 204;
            return;
        }

        var file = Path.GetFullPath(
            Path.Combine(
                folder,
                Uri.UnescapeDataString(
                    path.StartsWith(Root.AbsolutePath, StringComparison.Ordinal) ? path[Root.AbsolutePath.Length..] : ".."
                )
            )
        );
        if (!file.StartsWith(folder + Path.DirectorySeparatorChar, StringComparison.Ordinal) || !File.Exists(file))
        {
            response.StatusCode = 404;
            return;
        }

        response.ContentType = Types.GetValueOrDefault(Path.GetExtension(file), "application/octet-stream");
        response.AddHeader("Content-Security-Policy", policy);
        response.AddHeader("X-Content-Type-Options", "nosniff");
        response.OutputStream.Write(File.ReadAllBytes(file));
    }
}
