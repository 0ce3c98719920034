using System.Collections.Frozen;
using System.Net;

namespace Ohmstead.Publishing;

/// <summary>Serves a report to a browser on this machine, and to nobody else.</summary>
/// <remarks>
/// It listens on the loopback addresses alone and answers only to the name localhost, so that a page from elsewhere that claims another
/// name for this machine gets nothing. Only files on the report's own list are served: a path is looked up among them and never put
/// together from what was asked.
/// </remarks>
internal sealed class PagesServer : IDisposable
{
    private static readonly FrozenDictionary<string, string> Types = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [".html"] = "text/html; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".png"] = "image/png",
        [".jpg"] = "image/jpeg",
        [".js"] = "text/javascript; charset=utf-8",
        [".svg"] = "image/svg+xml; charset=utf-8",
        [".json"] = "application/json; charset=utf-8",
        [".csv"] = "text/csv; charset=utf-8",
        [".xml"] = "application/atom+xml; charset=utf-8",
        [".ics"] = "text/calendar; charset=utf-8",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private readonly HttpListener listener = new();
    private readonly string root;
    private readonly Thread thread;

    private PagesServer(string root, int port)
    {
        this.root = root;
        Address = FormattableString.Invariant($"http://localhost:{port}/");
        listener.Prefixes.Add(Address);
        thread = new Thread(Serve) { IsBackground = true };
    }

    /// <summary>Where the report can be looked at.</summary>
    public string Address { get; }

    /// <summary>Starts to serve.</summary>
    /// <param name="root">The folder of the report, absolute.</param>
    /// <param name="port">The port.</param>
    /// <exception cref="IOException">The port is taken, or may not be listened on.</exception>
    public static PagesServer Start(string root, int port)
    {
        var server = new PagesServer(root, port);
        try
        {
            server.listener.Start();
            server.thread.Start();
            return server;
        }
        catch (HttpListenerException taken)
        {
            server.Dispose();
            throw new IOException(
                FormattableString.Invariant($"nothing can be served on port {port}: it is taken or not allowed; give another with --serve"),
                taken
            );
        }
    }

    /// <inheritdoc/>
    public void Dispose() => listener.Close();

    private void Serve()
    {
        while (listener.IsListening)
        {
            try
            {
                Answer(listener.GetContext());
            }
            catch (Exception gone)
                when (gone is HttpListenerException or ObjectDisposedException or InvalidOperationException or IOException)
            {
                // The browser went away in the middle, or the server was closed: the loop's condition knows which.
            }
        }
    }

    private void Answer(HttpListenerContext context)
    {
        using var response = context.Response;
        response.Headers["Content-Security-Policy"] =
            "default-src 'none'; img-src 'self'; style-src 'self'; script-src 'self'; frame-ancestors 'none'; base-uri 'none'; "
            + "form-action 'none'";
        response.Headers["X-Content-Type-Options"] = "nosniff";
        response.Headers["X-Frame-Options"] = "DENY";
        response.Headers["Referrer-Policy"] = "no-referrer";
        response.Headers["Cross-Origin-Resource-Policy"] = "same-origin";
        response.Headers["Cross-Origin-Opener-Policy"] = "same-origin";
        response.Headers["Cache-Control"] = "no-store";
        if (context.Request.HttpMethod is not ("GET" or "HEAD"))
        {
            response.Headers["Allow"] = "GET, HEAD";
            response.StatusCode = (int)HttpStatusCode.MethodNotAllowed;
            return;
        }

        if (
            !IsLocal(context.Request)
            || Listed(context.Request.Url?.AbsolutePath) is not { } file
            || !Types.TryGetValue(Path.GetExtension(file), out var type)
        )
        {
            response.StatusCode = (int)HttpStatusCode.NotFound;
            return;
        }

        var bytes = File.ReadAllBytes(Path.Combine(root, file));
        response.ContentType = type;
        response.ContentLength64 = bytes.Length;
        if (context.Request.HttpMethod == "GET")
        {
            response.OutputStream.Write(bytes);
        }
    }

    private static bool IsLocal(HttpListenerRequest request) =>
        request.RemoteEndPoint is { } from
        && IPAddress.IsLoopback(from.Address)
        && request.UserHostName is { } host
        && host.Split(':')[0] == "localhost";

    private string? Listed(string? asked)
    {
        if (asked is null)
        {
            return null;
        }

        var wanted = asked == "/" ? "index.html" : Uri.UnescapeDataString(asked[1..]);
        return ReportPlace.FilesOf(root).FirstOrDefault(file => file == wanted && File.Exists(Path.Combine(root, file)));
    }
}
