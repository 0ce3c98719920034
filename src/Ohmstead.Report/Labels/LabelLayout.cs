using System.Globalization;
using System.Text;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Labels;

/// <summary>Where things stand on a label, in millimetres, and the style that puts them there.</summary>
/// <param name="sheet">The sheet.</param>
internal sealed class LabelLayout(LabelSheet sheet)
{
    /// <summary>The size of the words, in points.</summary>
    public const decimal Small = 7m;

    /// <summary>The size of what it is of.</summary>
    public const decimal Large = 8.5m;

    /// <summary>How high a line of words is.</summary>
    public const decimal SmallLine = 3m;

    /// <summary>How high a line of what it is of is.</summary>
    public const decimal LargeLine = 3.6m;

    /// <summary>The frame around what can hurt, above and below together.</summary>
    public const decimal Frame = 1.2m;

    private const decimal Gap = 1.5m;
    private const decimal LargestCode = 26m;

    // A sheet lies a millimetre off in many a printer.
    private decimal Edge => sheet.Height < 30 ? 1.2m : 2m;

    /// <summary>How high the row of the number is.</summary>
    public decimal NumberRow => sheet.Height < 30 ? 4.4m : 6m;

    /// <summary>The size of a usual number, in points.</summary>
    public decimal NumberPoints => sheet.Height < 30 ? 10m : 14m;

    /// <summary>How high the room above the number is.</summary>
    public decimal Room => sheet.Height - (2 * Edge) - NumberRow;

    /// <summary>How wide and high the code is, its quiet zone included.</summary>
    public decimal Code => Math.Min(Math.Min(Room, LargestCode), (sheet.Width - (2 * Edge)) * 0.5m);

    /// <summary>How wide the label is inside its edges.</summary>
    public decimal Inside => sheet.Width - (2 * Edge);

    /// <summary>How wide the words may be.</summary>
    public decimal Words(bool hasCode) => hasCode ? Inside - Code - Gap : Inside;

    /// <summary>The style of the sheet: figures of the program and of the command line alone.</summary>
    public InlineStyle Style()
    {
        var css = new StringBuilder();
        css.Append(
            CultureInfo.InvariantCulture,
            $$"""
            /* Labels: black on white, each where the sheet has it. */
            @page { size: {{sheet.Paper.Width}}mm {{sheet.Paper.Height}}mm; margin: 0; }
            * { box-sizing: border-box; }
            html, body { margin: 0; }
            html { color: #000; background: #fff; color-scheme: light;
              font: {{Small}}pt/{{SmallLine}}mm "Helvetica Neue", Arial, "Liberation Sans", sans-serif; }
            p { margin: 0; white-space: nowrap; unicode-bidi: plaintext; }
            .hint { padding: 4mm; font-size: 11pt; line-height: 1.4; white-space: normal; }
            .sheet { display: grid; grid-template-columns: repeat({{sheet.Columns}}, {{sheet.Width}}mm);
              grid-template-rows: repeat({{sheet.Rows}}, {{sheet.Height}}mm); gap: {{sheet.GapDown}}mm {{sheet.GapAcross}}mm;
              width: {{sheet.Paper.Width}}mm; height: {{sheet.Paper.Height - 0.5m}}mm;
              padding: {{sheet.FromTop}}mm 0 0 {{sheet.FromLeft}}mm; break-inside: avoid; }
            .sheet + .sheet { break-before: page; }
            .label { display: grid; overflow: hidden; padding: {{Edge}}mm; column-gap: {{Gap}}mm;
              grid-template: "code words" {{Room}}mm "number number" {{NumberRow}}mm / {{Code}}mm {{Words(hasCode: true)}}mm; }
            .plain { grid-template: "words" {{Room}}mm "number" {{NumberRow}}mm / {{Inside}}mm; }
            .code { grid-area: code; align-self: center; width: {{Code}}mm; height: {{Code}}mm; }
            .code svg { display: block; width: 100%; height: 100%; }
            .words { grid-area: words; overflow: hidden; }
            .name { font-size: {{Large}}pt; line-height: {{LargeLine}}mm; font-weight: 700; }
            .fine { font-size: {{Small}}pt; line-height: {{SmallLine}}mm; }
            .caution { margin-bottom: 0.3mm; padding: 0.1mm 0.6mm; border: 0.35mm solid #000; font-weight: 700; }
            .number { grid-area: number; overflow: hidden; font-size: {{NumberPoints}}pt; line-height: {{NumberRow}}mm; font-weight: 700; }
            .small { font-size: {{SmallNumber}}pt; line-height: {{NumberRow / 2}}mm; }
            @media screen { .sheet { outline: 1px solid #767676; margin-bottom: 4mm; } .label { outline: 1px dashed #767676; } }
            @media print { .hint { display: none; } }

            """
        );
        return new(Encoding.UTF8.GetBytes(css.ToString()));
    }

    /// <summary>The size of a long number, in points: two lines of it stand in the row.</summary>
    public decimal SmallNumber => sheet.Height < 30 ? 5.5m : 7.5m;
}
