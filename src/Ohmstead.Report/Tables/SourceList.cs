using System.Globalization;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>The standards, handbooks and practices that a page leans on: each stands once at its end, and what leans on it leads there by
/// number.</summary>
internal sealed class SourceList
{
    private readonly Dictionary<string, (string Words, ElementId Id)> numbers = new(StringComparer.Ordinal);
    private readonly List<string> sources = [];

    /// <summary>Writes a reference to a source: <c> (source 3)</c>, a link.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="source">The source in words.</param>
    public void Cite(HtmlWriter html, string source)
    {
        if (!numbers.TryGetValue(source, out var known))
        {
            sources.Add(source);
            var number = sources.Count.ToString(CultureInfo.InvariantCulture);
            known = ($"source {number}", ElementId.For(IdPrefix.Source, number));
            numbers.Add(source, known);
        }

        html.Text(" (");
        html.Open(Tag.A).To(known.Id).Text(known.Words);
        html.Text(")");
    }

    /// <summary>Writes the list; nothing where nothing was cited. Comes last.</summary>
    public void Write(HtmlWriter html)
    {
        if (sources.Count == 0)
        {
            return;
        }

        using var section = Section.Open(html, "sources", "Sources", "what limits and figures lean on");
        using var list = html.Open(Tag.Ol);
        for (var at = 0; at < sources.Count; at++)
        {
            html.Open(Tag.Li).With(ElementId.For(IdPrefix.Source, (at + 1).ToString(CultureInfo.InvariantCulture))).Text(sources[at]);
        }
    }
}
