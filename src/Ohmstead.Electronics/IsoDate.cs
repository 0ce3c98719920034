using System.Globalization;

namespace Ohmstead.Electronics;

/// <summary>Dates as text, the one way in which they are read and written everywhere: ISO 8601, 2026-03-14.</summary>
public static class IsoDate
{
    /// <summary>A day: 2026-03-14.</summary>
    public static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
