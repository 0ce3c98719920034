using System.Buffers;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;

namespace Ohmstead.Records.Binding;

/// <summary>Which texts may be the address of the pages of a collection, or that at which its records are seen.</summary>
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

    private static readonly SearchValues<char> OfPattern = SearchValues.Create(
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~!$&'()*+,;=:@%/?"
    );

    /// <summary>Where records are seen, with the places for commit and path; or why it is none, as it follows "cannot be the
    /// repository:".</summary>
    public static Outcome<RecordAddress> ReadPattern(string text)
    {
        if (Fault(text, out var rest) is { } fault)
        {
            return Outcome<RecordAddress>.Refused(fault);
        }

        foreach (var open in new[] { RecordAddress.Commit, RecordAddress.Path })
        {
            if (rest.Split(open).Length != 2)
            {
                return Outcome<RecordAddress>.Refused($"{open} does not stand in it once, behind the host");
            }
        }

        var others = rest.Replace(RecordAddress.Commit, string.Empty, StringComparison.Ordinal)
            .Replace(RecordAddress.Path, string.Empty, StringComparison.Ordinal);
        return others.AsSpan().ContainsAnyExcept(OfPattern)
            ? Outcome<RecordAddress>.Refused("it holds a place in a page, a space or another character that no address has")
            : Outcome<RecordAddress>.From(new(text));
    }

    /// <summary>The address, with the slash of a folder at its end; or why it is none, as it follows "cannot be the site:".</summary>
    public static Outcome<Uri> Read(string text)
    {
        if (Fault(text, out var rest) is { } fault)
        {
            return Outcome<Uri>.Refused(fault);
        }

        if (rest.AsSpan().ContainsAnyExcept(OfPath))
        {
            return Outcome<Uri>.Refused("it holds a query, a place in a page, a space or another character that no folder has");
        }

        return Uri.TryCreate(text.EndsWith('/') ? text : text + "/", UriKind.Absolute, out var address)
            ? Outcome<Uri>.From(address)
            : Outcome<Uri>.Refused("it is no address");
    }

    // What is the same of all of them: its length, its scheme and its host. The rest is what follows the host.
    private static string? Fault(string text, out string rest)
    {
        rest = string.Empty;
        if (text.Length > Longest)
        {
            return $"it is longer than {Longest} characters";
        }

        if (!text.StartsWith(Scheme, StringComparison.Ordinal))
        {
            return "it does not begin with https://";
        }

        var slash = text.IndexOf('/', Scheme.Length);
        var host = slash < 0 ? text.AsSpan(Scheme.Length) : text.AsSpan(Scheme.Length..slash);
        rest = slash < 0 ? string.Empty : text[slash..];
        return host.IsEmpty || host.ContainsAnyExcept(OfHost) || host[0] is '.' or ':'
            ? "its host is not written in letters a to z, digits, dots and hyphens"
            : null;
    }
}
