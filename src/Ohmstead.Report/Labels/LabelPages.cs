using System.Globalization;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Labels;

/// <summary>Sheets of labels, a page that stands alone in one file.</summary>
public sealed class LabelPages
{
    private readonly LabelSheet sheet;
    private readonly LabelLayout layout;

    /// <summary>Pages of labels.</summary>
    /// <param name="sheet">The sheet that they are printed on.</param>
    public LabelPages(LabelSheet sheet) => (this.sheet, layout) = (sheet, new LabelLayout(sheet));

    /// <summary>Writes the pages.</summary>
    /// <param name="buffer">Where to.</param>
    /// <param name="labels">The labels.</param>
    /// <param name="first">On which label of the first sheet they begin, from 1: those before it were used up.</param>
    public void Write(PageBuffer buffer, IReadOnlyList<Label> labels, int first = 1) =>
        new LonePage("Labels", layout.Style()).Write(buffer, (this, labels, first), static (html, all) =>
            all.Item1.Content(html, all.labels, all.first)
        );

    /// <summary>Whether the code of a label is too fine for the sheet; it gets none then.</summary>
    public bool IsTooFine(Label label) => label.Address is { } address && IsTooFine(QrCode.Of(address));

    /// <summary>Whether the number of a label has no room: it is not printed then, since a number that is cut is another one.</summary>
    public bool LacksRoom(Label label) => NumberLines(label.Number) is null;

    private bool IsTooFine(QrCode code) => layout.Code / code.Side < QrCode.FinestModule;

    private void Content(HtmlWriter html, IReadOnlyList<Label> labels, int first)
    {
        html.Open(Tag.P, LabelClass.Hint)
            .Text(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Print on {sheet.Paper.Name} at 100 %, with no margins, heads or feet of the browser: {sheet.Columns} by {sheet.Rows} "
                        + $"labels of {sheet.Width} mm by {sheet.Height} mm. Try plain paper first and hold it against a sheet of labels."
                )
            );
        for (var from = 1 - first; from < labels.Count; from += sheet.Count)
        {
            using var page = html.Open(Tag.Section, LabelClass.Sheet);
            for (var at = from; at < Math.Min(from + sheet.Count, labels.Count); at++)
            {
                if (at < 0)
                {
                    html.Open(Tag.Div).Close();
                }
                else
                {
                    One(html, labels[at]);
                }
            }
        }
    }

    private void One(HtmlWriter html, Label label)
    {
        var code = label.Address is { } address && QrCode.Of(address) is var drawn && !IsTooFine(drawn) ? drawn : null;
        using var box = code is null ? html.Open(Tag.Div).With(LabelClass.Label, LabelClass.Plain) : html.Open(Tag.Div, LabelClass.Label);
        if (code is not null)
        {
            using var place = html.Open(Tag.Div, LabelClass.Code);
            code.Write(html, label.Address!);
        }

        using (html.Open(Tag.Div, LabelClass.Words))
        {
            Words(html, label, layout.Words(code is not null));
        }

        var (lines, isSmall) = NumberLines(label.Number)
            ?? throw new InvalidOperationException("A number that has no room was not refused.");
        using var number = isSmall ? html.Open(Tag.Div).With(LabelClass.Number, LabelClass.Small) : html.Open(Tag.Div, LabelClass.Number);
        foreach (var line in lines)
        {
            html.Open(Tag.P).Text(line);
        }
    }

    private (IReadOnlyList<string> Lines, bool IsSmall)? NumberLines(string number)
    {
        var lines = LineCutter.Lines(number, layout.Inside, layout.NumberPoints, 1, out var isCut);
        if (!isCut)
        {
            return (lines, false);
        }

        lines = LineCutter.Lines(number, layout.Inside, layout.SmallNumber, 2, out isCut);
        return isCut ? null : (lines, true);
    }

    private void Words(HtmlWriter html, Label label, decimal width)
    {
        var left = layout.Room;
        left -= Cautions(html, label, width);
        // Rather small letters than a word in two pieces or a text that is cut; and the first of the facts has its line whatever the title
        // takes: of a bag it is the day.
        left -= label.Facts.Length > 0 ? LabelLayout.SmallLine : 0;
        var isCut = !LineCutter.AreWhole(label.Title, width, LabelLayout.Large);
        var lines = LineCutter.Lines(label.Title, width, LabelLayout.Large, Fitting(left, LabelLayout.LargeLine), out var isCutLarge);
        var isLarge = !isCut && !isCutLarge;
        var high = isLarge ? LabelLayout.LargeLine : LabelLayout.SmallLine;
        foreach (
            var line in isLarge ? lines : LineCutter.Lines(label.Title, width, LabelLayout.Small, Math.Max(1, Fitting(left, high)), out _)
        )
        {
            (isLarge ? html.Open(Tag.P, LabelClass.Name) : html.Open(Tag.P).With(LabelClass.Name, LabelClass.Fine)).Text(line);
            left -= high;
        }

        left += label.Facts.Length > 0 ? LabelLayout.SmallLine : 0;
        foreach (var fact in label.Facts)
        {
            foreach (var line in LineCutter.Lines(fact, width, LabelLayout.Small, Fitting(left, LabelLayout.SmallLine), out _))
            {
                html.Open(Tag.P).Text(line);
                left -= LabelLayout.SmallLine;
            }
        }
    }

    private static int Fitting(decimal left, decimal line) => Math.Clamp((int)(left / line), 0, 2);

    // What can hurt is told whole, or it is told that there is more than the label holds: a list that ends early would be taken for all.
    private decimal Cautions(HtmlWriter html, Label label, decimal width)
    {
        if (label.Cautions.Length == 0)
        {
            return 0;
        }

        var most = Math.Max(
            1,
            (int)((layout.Room - LabelLayout.LargeLine - LabelLayout.SmallLine - LabelLayout.Frame) / LabelLayout.SmallLine)
        );
        var inside = width - 2m;
        var lines = LineCutter.Lines($"! {string.Join("; ", label.Cautions)}", inside, LabelLayout.Small, most, out var isCut);
        if (isCut)
        {
            var more = string.Create(CultureInfo.InvariantCulture, $"! {label.Cautions.Length} hazards: see record");
            lines = LineCutter.Lines(more, inside, LabelLayout.Small, most, out isCut);
            lines = isCut ? ["! see record"] : lines;
        }

        using var caution = html.Open(Tag.Div, LabelClass.Caution);
        foreach (var line in lines)
        {
            html.Open(Tag.P).Text(line);
        }

        return (lines.Count * LabelLayout.SmallLine) + LabelLayout.Frame;
    }
}
