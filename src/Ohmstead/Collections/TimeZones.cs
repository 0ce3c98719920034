using System.Buffers;
using Ohmstead.Records.Findings;

namespace Ohmstead.Collections;

/// <summary>The time zones that this machine knows by the names of the IANA time zone database, region and place.</summary>
/// <remarks>On Linux and macOS the system's files are read (/usr/share/zoneinfo), which a bare container may lack; UTC is known
/// everywhere.</remarks>
internal static class TimeZones
{
    private const string Utc = "UTC";
    private const int Longest = 60;

    private static readonly SearchValues<char> Letters = SearchValues.Create(
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_+-"
    );

    // Names of a stranger's record become names of files: nothing but a region and a place gets as far. "posix" and "right" hold the same
    // zones once more, the latter with leap seconds in them.
    private static readonly string[] NoRegions = ["posix", "right"];

    /// <summary>The zone of that name, or null where this machine has none.</summary>
    public static TimeZoneInfo? Named(string name) =>
        name is Utc or "Etc/UTC" ? TimeZoneInfo.Utc
        : IsName(name) && TimeZoneInfo.TryFindSystemTimeZoneById(name, out var zone) ? zone
        : null;

    /// <summary>Why a name is that of no zone, with the nearest that is one; null where it is one, or where this machine knows no zones at
    /// all and cannot tell.</summary>
    public static string? WhyNot(string name)
    {
        if (Named(name) is not null)
        {
            return null;
        }

        string[] known = [.. TimeZoneInfo.GetSystemTimeZones().Select(zone => zone.Id).Where(IsName).Append(Utc)];
        if (known.Length == 1 && IsName(name))
        {
            return null;
        }

        var place = name[(name.LastIndexOf('/') + 1)..].Replace(' ', '_');
        var near = known.FirstOrDefault(one => one.EndsWith("/" + place, StringComparison.OrdinalIgnoreCase)) ?? Nearest.To(name, known);
        return Nearest.Told($"'{name}' is no time zone", near, "; zones are named by region and place, such as Europe/Lisbon");
    }

    // Two or three pieces of letters, figures and _ + -, and never a dot.
    private static bool IsName(string name)
    {
        var pieces = name.Split('/');
        return name.Length <= Longest
            && pieces.Length is 2 or 3
            && Array.TrueForAll(pieces, piece => piece.Length > 0 && !piece.AsSpan().ContainsAnyExcept(Letters))
            && !NoRegions.Contains(pieces[0], StringComparer.Ordinal);
    }
}
