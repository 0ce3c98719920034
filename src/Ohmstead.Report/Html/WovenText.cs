using System.Runtime.CompilerServices;
using Ohmstead.Electronics;

namespace Ohmstead.Report.Html;

/// <summary>Text with figures and words woven in, written piece by piece where it goes: no string is made in between.</summary>
/// <remarks>The compiler makes one of <c>html.Text($"room: {words}")</c>. Every piece is escaped like any text.</remarks>
[InterpolatedStringHandler]
public readonly ref struct WovenText
{
    private readonly HtmlWriter html;

    /// <summary>Text on a page.</summary>
    public WovenText(int literalLength, int formattedCount, HtmlWriter html) => this.html = html;

    /// <summary>Text in an element.</summary>
    public WovenText(int literalLength, int formattedCount, Element element)
        : this(literalLength, formattedCount, element.Writer) { }

    /// <summary>Writes what stands in the program.</summary>
    public void AppendLiteral(string text) => html.Text(text.AsSpan());

    /// <summary>Writes a character: as such, and not as its number.</summary>
    public void AppendFormatted(char character) => html.Text([character]);

    /// <summary>Writes words.</summary>
    public void AppendFormatted(string? words) => html.Text(words.AsSpan());

    /// <summary>Writes words that are made only now.</summary>
    public void AppendFormatted(LazyText? words) => html.Text((words?.Text).AsSpan());

    /// <summary>Writes a number, with a full stop as decimal sign and no separators.</summary>
    public void AppendFormatted(int number) => html.Text(number);

    /// <summary>Writes a number, with a full stop as decimal sign and no separators.</summary>
    public void AppendFormatted(decimal number) => html.Text(number);
}
