using System.Globalization;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>The limits of a page by what they are and where they come from: each is told once near its end with its source. A verdict names
/// its limit by number and tells its own arithmetic.</summary>
internal sealed class LimitList
{
    private readonly Dictionary<LimitKey, (string Words, ElementId Id)> numbers = [];
    private readonly List<(string Words, string Source)> limits = [];

    /// <summary>Names a limit: <c>Delivery limit 3</c>, a link.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="limit">The limit.</param>
    /// <param name="isFirst">True where the name begins a sentence.</param>
    public void Name(HtmlWriter html, LimitKey limit, bool isFirst = true)
    {
        if (!numbers.TryGetValue(limit, out var known))
        {
            var words = VerdictWords.Describe(limit.Kind);
            limits.Add(($"{words}, {limit.Origin}", limit.Source));
            var number = limits.Count.ToString(CultureInfo.InvariantCulture);
            known = ($"{words} {number}", ElementId.For(IdPrefix.Rule, number));
            numbers.Add(limit, known);
        }

        using var link = html.Open(Tag.A).To(known.Id);
        html.Text([isFirst ? char.ToUpperInvariant(known.Words[0]) : known.Words[0]]);
        html.Text(known.Words.AsSpan(1));
    }

    /// <summary>Writes the list; nothing where no limit was named.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="sources">The sources of the page, each told once.</param>
    public void Write(HtmlWriter html, SourceList sources)
    {
        if (limits.Count == 0)
        {
            return;
        }

        using var section = Section.Open(html, "limits", "Limits", "by the numbers that verdicts name");
        using var list = html.Open(Tag.Ol);
        for (var at = 0; at < limits.Count; at++)
        {
            using var item = html.Open(Tag.Li).With(ElementId.For(IdPrefix.Rule, (at + 1).ToString(CultureInfo.InvariantCulture)));
            html.Text(limits[at].Words);
            sources.Cite(html, limits[at].Source);
        }
    }
}
