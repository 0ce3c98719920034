using System.Diagnostics.CodeAnalysis;
using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>A link out of the report: http, https or mailto. It is shown as a link and never loaded.</summary>
public sealed class ExternalLink : Link
{
    /// <summary>The longest address that is accepted, in UTF-16 units.</summary>
    public const int LongestAddress = 2048;

    private ExternalLink(string encoded, string host)
        : base(encoded) => Host = host;

    /// <summary>The host that the link leads to, in lower case; for mailto what follows the @.</summary>
    public string Host { get; }

    /// <summary>Reads an address as written in a record.</summary>
    /// <param name="written">The address.</param>
    /// <param name="link">The link, when it is acceptable.</param>
    /// <param name="fault">Why it is not: one line for people, in lower case.</param>
    public static bool TryRead(string written, [NotNullWhen(true)] out ExternalLink? link, [NotNullWhen(false)] out string? fault)
    {
        link = null;
        fault = null;
        if (written.Length > LongestAddress)
        {
            fault = $"an address of {Invariant.Text(written.Length)} characters, at most {Invariant.Text(LongestAddress)} are accepted";
        }
        else if (written.AsSpan().ContainsAny(AddressCharacters.Refused) || written.Any(c => char.IsControl(c) || char.IsWhiteSpace(c)))
        {
            fault = "an address with a space, a backslash or a control character in it";
        }
        else if (After(written, "https:") is { } secure)
        {
            link = Web("https:", secure, ref fault);
        }
        else if (After(written, "http:") is { } plain)
        {
            link = Web("http:", plain, ref fault);
        }
        else if (After(written, "mailto:") is { } mail)
        {
            link = Mail(mail, ref fault);
        }
        else
        {
            fault = "an address that is neither http, https nor mailto";
        }

        return link is not null;
    }

    private static string? After(string written, string scheme) =>
        written.StartsWith(scheme, StringComparison.OrdinalIgnoreCase) ? written[scheme.Length..] : null;

    private static ExternalLink? Web(string scheme, string rest, ref string? fault)
    {
        if (!rest.StartsWith("//", StringComparison.Ordinal))
        {
            fault = $"an address without // after {scheme}";
            return null;
        }

        var end = rest.AsSpan(2).IndexOfAny('/', '?', '#') is var slash and >= 0 ? slash + 2 : rest.Length;
        var authority = rest[2..end];
        if (authority.Contains('@', StringComparison.Ordinal))
        {
            fault = "an address with a user name before its host";
            return null;
        }

        var colon = authority.IndexOf(':', StringComparison.Ordinal);
        var host = colon < 0 ? authority : authority[..colon];
        var port = colon < 0 ? "" : authority[(colon + 1)..];
        if (!IsHost(host) || !port.All(char.IsAsciiDigit) || port.Length > 5)
        {
            fault = $"an address whose host '{host}' is not written in letters a to z, digits, dots and hyphens";
            return null;
        }

        host = Invariant.LowerCase(host);
        var encoded = new StringBuilder(scheme).Append("//").Append(host);
        if (port.Length > 0)
        {
            encoded.Append(':').Append(port);
        }

        return new ExternalLink(PercentEncoding.EncodeAddress(encoded, rest[end..]).ToString(), host);
    }

    private static ExternalLink? Mail(string rest, ref string? fault)
    {
        var query = rest.IndexOf('?', StringComparison.Ordinal);
        var address = query < 0 ? rest : rest[..query];
        var at = address.IndexOf('@', StringComparison.Ordinal);
        var host = address[(at + 1)..];
        if (at <= 0 || !IsHost(host))
        {
            fault = "a mailto address that is not name@host";
            return null;
        }

        return new ExternalLink(PercentEncoding.EncodeAddress(new StringBuilder("mailto:"), rest).ToString(), Invariant.LowerCase(host));
    }

    private static bool IsHost(string host) =>
        host.Length is > 0 and <= 253
        && host.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '.')
        && !host.StartsWith('.')
        && !host.Contains("..", StringComparison.Ordinal);
}
