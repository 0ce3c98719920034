using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Publishing.Tables;

/// <summary>Keys that several tables have, and how numbers and days stand in their cells.</summary>
internal static class SharedKeys
{
    /// <summary>The number of a board.</summary>
    public static Key Board { get; } = Key.Id("board", "The number of the board.", "SP-0007").Needed();

    /// <summary>A day at the bench.</summary>
    public static Key Date { get; } = Key.Date("date", "The day at the bench.", "2026-03-14").Needed();

    /// <summary>Initials.</summary>
    public static Key By { get; } = Key.Text("by", "Initials of who did it.", "RK");

    /// <summary>A page of the report.</summary>
    public static Key Page { get; } = Key.Text("page", "The page, from the folder of this file.", "boards/SP-0007.html").Needed();

    /// <summary>A key of a closed list of words. Rows are written and never read back, so no other word can stand there.</summary>
    public static Key Word(string name, IReadOnlyList<string> words, string description) =>
        Key.Word(name, words, "no other word", description);

    /// <summary>A number in a cell.</summary>
    public static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A day in a cell.</summary>
    public static string? Day(DateOnly? day) => day is { } there ? IsoDate.Text(there) : null;
}
