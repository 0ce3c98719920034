using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Report.Sheets;

namespace Ohmstead.Report.Labels;

/// <summary>A sheet of labels, by its measures in millimetres.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="Columns">How many labels stand side by side.</param>
/// <param name="Rows">How many stand one below the other.</param>
/// <param name="Width">How wide a label is.</param>
/// <param name="Height">How high a label is.</param>
public sealed record LabelSheet(Paper Paper, int Columns, int Rows, decimal Width, decimal Height)
{
    /// <summary>The smallest label that holds a code and a number, in millimetres.</summary>
    public const decimal Narrowest = 30m;

    /// <summary>The lowest one.</summary>
    public const decimal Lowest = 19m;

    /// <summary>Between the columns.</summary>
    public decimal GapAcross { get; init; }

    /// <summary>Between the rows.</summary>
    public decimal GapDown { get; init; }

    /// <summary>The margin to the left of the first column; that of a sheet that is alike on both sides when not said.</summary>
    public decimal? Left { get; init; }

    /// <summary>The margin above the first row.</summary>
    public decimal? Top { get; init; }

    /// <summary>Sheets that are common, by their measures alone (from memory: hold yours against a ruler).</summary>
    public static IReadOnlyList<LabelSheet> Common { get; } =
    [
        new(Paper.A4, 3, 7, 63.5m, 38.1m) { GapAcross = 2.54m },
        new(Paper.A4, 3, 8, 70m, 37m),
        new(Paper.A4, 2, 7, 99.1m, 38.1m) { GapAcross = 2.54m },
        new(Paper.A4, 4, 10, 48.5m, 25.4m),
        new(Paper.A4, 5, 13, 38.1m, 21.2m) { GapAcross = 2.54m },
        new(Paper.Letter, 3, 10, 66.7m, 25.4m) { GapAcross = 3.18m },
        new(Paper.Letter, 2, 5, 101.6m, 50.8m) { GapAcross = 4.76m },
    ];

    /// <summary>How many labels are on a sheet.</summary>
    public int Count => Columns * Rows;

    /// <summary>Where the first column begins.</summary>
    public decimal FromLeft => Left ?? (Paper.Width - Across) / 2;

    /// <summary>Where the first row begins.</summary>
    public decimal FromTop => Top ?? (Paper.Height - Down) / 2;

    private decimal Across => (Columns * Width) + ((Columns - 1) * GapAcross);

    private decimal Down => (Rows * Height) + ((Rows - 1) * GapDown);

    /// <summary>The sheet; or why there is no such sheet, on one line.</summary>
    public Outcome<LabelSheet> Checked() =>
        Columns < 1 || Rows < 1 || Count > 1000 ? Refused($"{Columns} by {Rows} labels are no sheet: give 1 to 1000 labels")
        : GapAcross < 0 || GapDown < 0 || Left < 0 || Top < 0 ? Refused($"a gap or a margin is less than zero")
        : Width < Narrowest || Height < Lowest
            ? Refused($"a label of {Width} mm by {Height} mm has no room for a number: the least are {Narrowest} mm by {Lowest} mm")
        : FromLeft < 0 || FromLeft + Across > Paper.Width
            ? Refused($"the labels are {Across} mm across with {Math.Max(0, FromLeft)} mm before them, {Paper.Name} is {Paper.Width} mm")
        : FromTop < 0 || FromTop + Down > Paper.Height
            ? Refused($"the labels are {Down} mm down with {Math.Max(0, FromTop)} mm above them, {Paper.Name} is {Paper.Height} mm")
        : Outcome<LabelSheet>.From(this);

    private static Outcome<LabelSheet> Refused(FormattableString why) =>
        Outcome<LabelSheet>.Refused(why.ToString(CultureInfo.InvariantCulture));
}
