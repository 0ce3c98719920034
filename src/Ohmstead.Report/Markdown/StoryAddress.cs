using Ohmstead.Report.Html;

namespace Ohmstead.Report.Markdown;

/// <summary>What an address written in a text means: a place out of the report, a file of the collection, or nothing acceptable.</summary>
internal abstract record StoryAddress
{
    private StoryAddress() { }

    /// <summary>A place out of the report.</summary>
    public sealed record Elsewhere(ExternalLink Link) : StoryAddress;

    /// <summary>A file of the collection, with what is named after <c>#</c>.</summary>
    public sealed record Inside(string Path, string? Place) : StoryAddress;

    /// <summary>A place in the same text or record.</summary>
    public sealed record SamePage(string Place) : StoryAddress;

    /// <summary>Nothing acceptable.</summary>
    public sealed record Refused(string Reason) : StoryAddress;

    /// <summary>Reads an address.</summary>
    /// <param name="written">The address with its backslash escapes and character references resolved.</param>
    /// <param name="folder">The folder of the record, from the root of the collection.</param>
    public static StoryAddress Read(string written, string folder)
    {
        if (FaultIn(written) is { } fault)
        {
            return new Refused(fault);
        }

        if (written.AsSpan().IndexOfAny(":/?#") is var mark and >= 0 && written[mark] == ':')
        {
            return ExternalLink.TryRead(written, out var link, out var reason) ? new Elsewhere(link) : new Refused(reason);
        }

        var hash = written.IndexOf('#', StringComparison.Ordinal);
        var path = Uri.UnescapeDataString(hash < 0 ? written : written[..hash]);
        var place = hash < 0 ? null : Uri.UnescapeDataString(written[(hash + 1)..]);
        if ((FaultIn(path) ?? FaultIn(place ?? "")) is { } hidden)
        {
            return new Refused(hidden);
        }

        if (IsStillEncoded(path))
        {
            return new Refused("an address that is percent-encoded twice");
        }

        return path.Length > 0 ? File(path, place, folder)
            : place is null or "" ? new Refused("an empty address")
            : new SamePage(place);
    }

    private static string? FaultIn(string address) =>
        address.Length > ExternalLink.LongestAddress ? $"an address of more than {Invariant.Text(ExternalLink.LongestAddress)} characters"
        : address.Any(char.IsControl) || address.AsSpan().ContainsAny(AddressCharacters.Refused)
            ? "an address with a backslash, a control or an invisible character in it"
        : null;

    private static bool IsStillEncoded(string path)
    {
        for (var at = path.IndexOf('%', StringComparison.Ordinal); at >= 0 && at + 2 < path.Length; at = path.IndexOf('%', at + 1))
        {
            if (char.IsAsciiHexDigit(path[at + 1]) && char.IsAsciiHexDigit(path[at + 2]))
            {
                return true;
            }
        }

        return false;
    }

    private static StoryAddress File(string path, string? place, string folder)
    {
        if (path.StartsWith('/'))
        {
            return new Refused("an address outside the collection");
        }

        var names = folder.Split('/', StringSplitOptions.RemoveEmptyEntries).ToList();
        foreach (var name in path.Split('/'))
        {
            switch (name)
            {
                case "" or ".":
                    break;
                case ".." when names.Count == 0:
                    return new Refused("an address outside the collection");
                case "..":
                    names.RemoveAt(names.Count - 1);
                    break;
                default:
                    names.Add(name);
                    break;
            }
        }

        return names.Count == 0 ? new Refused("an address that names no file") : new Inside(string.Join('/', names), place);
    }
}
