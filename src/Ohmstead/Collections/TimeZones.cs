using System.Text.RegularExpressions;
using Ohmstead.Records.Findings;

namespace Ohmstead.Collections;

/// <summary>The time zones that this machine knows by the names of the IANA time zone database, region and place.</summary>
/// <remarks>On Linux and macOS the system's files are read (/usr/share/zoneinfo), which a bare container may lack; UTC is known
/// everywhere.</remarks>
internal static partial class TimeZones
{
    private const string Utc = "UTC";

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

    private static bool IsName(string name) =>
        RegionAndPlace().IsMatch(name) && !NoRegions.Contains(name[..name.IndexOf('/', StringComparison.Ordinal)], StringComparer.Ordinal);

    [GeneratedRegex("^[A-Za-z]{2,20}(/[A-Za-z0-9_+-]{1,40}){1,2}$", RegexOptions.CultureInvariant)]
    private static partial Regex RegionAndPlace();
}
