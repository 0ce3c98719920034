using System.Text;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Drawings;

/// <summary>The small picture that stands for the pages in a browser: the name plate of the pages with its two holes, and the sign of the
/// ohm on it. A whole SVG file; the sign is a line, so that no font is needed.</summary>
/// <remarks>Its colours are those of the style sheet. Where a host lets no file hold a style, it stays the light one, which is seen on
/// dark, too: the plate is filled.</remarks>
public static class PlateIcon
{
    /// <summary>Its file, from the root of the report.</summary>
    public const string FileName = "icon.svg";

    private const string Drawing = """
        <svg xmlns="http://www.w3.org/2000/svg" width="32" height="32" viewBox="0 0 32 32" role="img">
        <title>Ohmstead</title>
        <style>@media (prefers-color-scheme: dark) {
        .plate { fill: #14191a; stroke: #e2e7e2 } .hole { fill: #7f8c88 } .sign { stroke: #e2e7e2 }
        }</style>
        <rect class="plate" x="1.5" y="2.5" width="29" height="27" rx="4" fill="#fafbf8" stroke="#1a2226" stroke-width="3"/>
        <circle class="hole" cx="5.6" cy="16" r="1.5" fill="#78847c"/>
        <circle class="hole" cx="26.4" cy="16" r="1.5" fill="#78847c"/>
        <path class="sign" d="M8.6 24.3h5.2v-3.4a6.8 6.8 0 1 1 4.4 0v3.4h5.2" fill="none" stroke="#1a2226" stroke-width="2.6"/>
        </svg>

        """;

    /// <summary>Writes it.</summary>
    /// <param name="buffer">Where to; it is emptied first.</param>
    public static void Write(PageBuffer buffer)
    {
        buffer.Clear();
        Encoding.UTF8.GetBytes(Drawing.ReplaceLineEndings("\n"), buffer);
    }
}
