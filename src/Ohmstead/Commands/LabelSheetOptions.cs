using System.CommandLine;
using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Report.Labels;
using PrintedPaper = Ohmstead.Report.Sheets.Paper;

namespace Ohmstead.Commands;

/// <summary>Which sheet of labels is printed on, in millimetres.</summary>
internal sealed class LabelSheetOptions
{
    public Option<string?> Size { get; } =
        new("--size")
        {
            Description =
                "Width and height of a label in mm. What is common needs no more than that: "
                + string.Join("; ", PrintedPaper.All.Select(paper => $"on {paper.Name} {string.Join(", ", Sizes(paper))}"))
                + ". The first is taken when none is given.",
            HelpName = "WxH",
        };

    public Option<string> Paper { get; } =
        new("--paper") { Description = "The paper of the sheet: A4 or Letter.", DefaultValueFactory = _ => PrintedPaper.A4.Name };

    public Option<string?> Grid { get; } =
        new("--grid") { Description = "Columns and rows of a sheet that is not among the common ones.", HelpName = "CxR" };

    public Option<string?> Gap { get; } =
        new("--gap") { Description = "Gaps between columns and between rows in mm, with --grid.", HelpName = "AxD" };

    public Option<string?> Margin { get; } =
        new("--margin")
        {
            Description = "Margins to the left of and above the labels in mm; the same on both sides when not said.",
            HelpName = "LxT",
        };

    public LabelSheetOptions() => Paper.AcceptOnlyFromAmong([.. PrintedPaper.All.Select(size => size.Name)]);

    /// <summary>The sheet, or why there is none such.</summary>
    public Outcome<LabelSheet> Read(ParseResult parsed)
    {
        var paper = PrintedPaper.All.First(size => size.Name == parsed.GetValue(Paper));
        var common = LabelSheet.Common.Where(sheet => sheet.Paper == paper).ToArray();
        foreach (var option in new[] { Size, Grid, Gap, Margin })
        {
            if (parsed.GetValue(option) is { } text && Pair(text) is null)
            {
                return Outcome<LabelSheet>.Refused($"{option.Name} {text}: give two numbers with an x between, such as 63.5x38.1");
            }
        }

        var size = Pair(parsed.GetValue(Size));
        var sheet = common.FirstOrDefault(one => size is null || (one.Width, one.Height) == size);
        if (Pair(parsed.GetValue(Grid)) is { } grid)
        {
            if (size is null)
            {
                return Outcome<LabelSheet>.Refused("--grid needs the size of a label: give --size, such as --size 60x30");
            }

            if (grid.First != Math.Floor(grid.First) || grid.Second != Math.Floor(grid.Second) || grid.First > 100 || grid.Second > 100)
            {
                return Outcome<LabelSheet>.Refused("--grid: give whole columns and rows, such as 3x9");
            }

            sheet = new LabelSheet(paper, (int)grid.First, (int)grid.Second, size.Value.First, size.Value.Second);
            if (Pair(parsed.GetValue(Gap)) is { } gap)
            {
                sheet = sheet with { GapAcross = gap.First, GapDown = gap.Second };
            }
        }
        else if (parsed.GetValue(Gap) is not null)
        {
            return Outcome<LabelSheet>.Refused("--gap is for a sheet of your own: give --grid with it");
        }

        return sheet is null
                ? Outcome<LabelSheet>.Refused(
                    $"no common sheet of {paper.Name} has labels of {parsed.GetValue(Size)} mm: it is one of "
                        + $"{string.Join(", ", Sizes(paper))}, or give --grid"
                )
            : Pair(parsed.GetValue(Margin)) is { } margin ? (sheet with { Left = margin.First, Top = margin.Second }).Checked()
            : sheet.Checked();
    }

    private static IEnumerable<string> Sizes(PrintedPaper paper) =>
        LabelSheet
            .Common.Where(sheet => sheet.Paper == paper)
            .Select(sheet => string.Create(CultureInfo.InvariantCulture, $"{sheet.Width}x{sheet.Height}"));

    private static (decimal First, decimal Second)? Pair(string? text)
    {
        var parts = text?.Split('x', 'X', '×');
        return
            parts is { Length: 2 }
            && decimal.TryParse(parts[0], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var first)
            && decimal.TryParse(parts[1], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var second)
            && first < 1000
            && second < 1000
            ? (first, second)
            : null;
    }
}
