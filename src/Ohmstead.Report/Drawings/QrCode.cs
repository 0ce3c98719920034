using System.Collections;
using System.Globalization;
using System.Text;
using Ohmstead.Report.Html;
using QRCoder;

namespace Ohmstead.Report.Drawings;

/// <summary>A code that a telephone reads (QR code, ISO/IEC 18004). The modules are worked out by a library; the drawing is one path, with
/// the quiet zone of four modules around it that the standard asks for.</summary>
/// <remarks>
/// Error correction is at level M, which mends about 15 % of the codewords: a label is rubbed and splashed at the bench, which L (7 %)
/// bears badly; Q and H make the modules of a small label so fine that a cheap printer runs them together.
/// </remarks>
public sealed class QrCode
{
    /// <summary>The smallest module that is printed, in millimetres: four dots of a printer of 300 dots an inch.</summary>
    public const decimal FinestModule = 0.33m;

    private readonly IReadOnlyList<BitArray> modules;

    private QrCode(IReadOnlyList<BitArray> modules) => this.modules = modules;

    /// <summary>How many modules it is wide and high, the quiet zone on both sides included.</summary>
    public int Side => modules.Count;

    /// <summary>The code of an address.</summary>
    public static QrCode Of(string address)
    {
        using var data = QRCodeGenerator.GenerateQrCode(address, QRCodeGenerator.ECCLevel.M);
        return new([.. data.ModuleMatrix.Select(row => new BitArray(row))]);
    }

    /// <summary>Whether a module is dark.</summary>
    public bool IsDark(int row, int column) => modules[row][column];

    /// <summary>Writes the drawing.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="leadsTo">Where it leads, for those who hear the page.</param>
    public void Write(HtmlWriter html, string leadsTo)
    {
        using var drawing = html.Open(Tag.Svg)
            .With(FixedAttribute.RoleImage)
            .With(TextAttribute.AriaLabel, leadsTo)
            .With(TextAttribute.ViewBox, string.Create(CultureInfo.InvariantCulture, $"0 0 {Side} {Side}"));
        html.Open(Tag.Path).With(TextAttribute.PathData, Outline()).Close();
    }

    /// <summary>Writes the drawing as a file of its own, dark on white whatever surrounds it.</summary>
    /// <param name="buffer">Where to; it is emptied first.</param>
    public void WriteFile(PageBuffer buffer)
    {
        buffer.Clear();
        buffer.Append(
            Encoding.ASCII.GetBytes(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {Side} {Side}\">"
                        + $"<path fill=\"#fff\" d=\"M0 0h{Side}v{Side}H0z\"/><path d=\"{Outline()}\"/></svg>\n"
                )
            )
        );
    }

    // Each run of dark modules of a row is one rectangle.
    private string Outline()
    {
        var path = new StringBuilder();
        for (var row = 0; row < Side; row++)
        {
            for (var at = 0; at < Side; at++)
            {
                var start = at;
                while (at < Side && modules[row][at])
                {
                    at++;
                }

                if (at > start)
                {
                    path.Append(CultureInfo.InvariantCulture, $"M{start} {row}h{at - start}v1H{start}z");
                }
            }
        }

        return path.ToString();
    }
}
