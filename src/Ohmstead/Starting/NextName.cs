using System.Globalization;

namespace Ohmstead.Starting;

/// <summary>The next name of a row such as L-001, L-002.</summary>
internal static class NextName
{
    private const int MostDigits = 9;

    /// <summary>The first one behind all that begin like a name; null where it ends in no number.</summary>
    /// <param name="name">The name that is taken.</param>
    /// <param name="taken">All names there are.</param>
    public static string? Behind(string name, IEnumerable<string> taken)
    {
        var stem = name.TrimEnd([.. "0123456789"]);
        var digits = name.Length - stem.Length;
        if (digits is 0 or > MostDigits)
        {
            return null;
        }

        var last = taken
            .Where(one => one.StartsWith(stem, StringComparison.Ordinal))
            .Select(one =>
                int.TryParse(one.AsSpan(stem.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0
            )
            .DefaultIfEmpty(0)
            .Max();
        return last == int.MaxValue ? null : stem + (last + 1).ToString(new string('0', digits), CultureInfo.InvariantCulture);
    }
}
