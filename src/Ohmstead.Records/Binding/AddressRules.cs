using System.Buffers;
using Ohmstead.Electronics;

namespace Ohmstead.Records.Binding;

/// <summary>Which texts may be the address of the pages of a collection.</summary>
public static class AddressRules
{
    /// <summary>The longest address; a code of a longer one is too fine for a label.</summary>
    public const int Longest = 200;

    private const string Scheme = "https://";

    // What a browser takes for itself, drops or shows as another: such an address does not say where it leads. All else of RFC 3986.
    private static readonly SearchValues<char> OfPath = SearchValues.Create(
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~!$&'()*+,;=:@%/"
    );

    private static readonly SearchValues<char> OfHost = SearchValues.Create(
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-.:"
    );

    /// <summary>The address, with the slash of a folder at its end; or why it is none, as it follows "cannot be the site:".</summary>
    public static Outcome<Uri> Read(string text)
    {
        if (text.Length > Longest)
        {
            return Outcome<Uri>.Refused($"it is longer than {Longest} characters");
        }

        if (!text.StartsWith(Scheme, StringComparison.Ordinal))
        {
            return Outcome<Uri>.Refused("it does not begin with https://");
        }

        var rest = text.AsSpan(Scheme.Length);
        var slash = rest.IndexOf('/');
        var host = slash < 0 ? rest : rest[..slash];
        if (host.IsEmpty || host.ContainsAnyExcept(OfHost) || host[0] is '.' or ':')
        {
            return Outcome<Uri>.Refused("its host is not written in letters a to z, digits, dots and hyphens");
        }

        if (slash >= 0 && rest[slash..].ContainsAnyExcept(OfPath))
        {
            return Outcome<Uri>.Refused("it holds a query, a place in a page, a space or another character that no folder has");
        }

        return Uri.TryCreate(text.EndsWith('/') ? text : text + "/", UriKind.Absolute, out var address)
            ? Outcome<Uri>.From(address)
            : Outcome<Uri>.Refused("it is no address");
    }
}
