using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>What the verdicts of a page have in common, told once: the rule that decides, sources, long reasons, workings.</summary>
/// <param name="rule">The decision rule of the collection.</param>
internal sealed class SharedWorking(DecisionRule rule)
{
    private const string Probability = "JCGM 106:2012, clause 7 (from memory)";

    // A line that is shorter is read sooner than the way to it is followed.
    private const int Long = 80;

    // By the arithmetic, in which nearly all of them differ.
    private readonly Dictionary<string, Told> told = new(StringComparer.Ordinal);
    private readonly Dictionary<string, PageAnchor> lines = new(StringComparer.Ordinal);

    /// <summary>The sources of the page.</summary>
    public SourceList Sources { get; } = new();

    /// <summary>Writes how a limit was reached; where that stands on the page already, the way there.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="limit">The limit.</param>
    /// <param name="here">What this stands in, or null when it is nothing that one could be led to.</param>
    public void Limit(HtmlWriter html, Limit limit, PageAnchor? here)
    {
        using var line = html.Open(Tag.Li);
        html.Text(VerdictWords.Describe(limit.Kind));
        var arithmetic = limit.Arithmetic.Text;
        var (origin, source) = (limit.Origin.Text, limit.Source.Text);
        var before = told.GetValueOrDefault(arithmetic);
        for (var known = before; known is not null; known = known.Before)
        {
            if (known.Origin == origin && known.Source == source)
            {
                html.Text(", worked out at ");
                known.At.Link(html);
                return;
            }
        }

        html.Text($", {origin}: {arithmetic}");
        Sources.Cite(html, source);
        if (here is { } place)
        {
            told[arithmetic] = new(origin, source, place, before);
        }
    }

    /// <summary>
    /// Writes how far a reading is from its limit, how probable it is inside where that is in doubt, and by which rule that was decided
    /// where it is not the rule for all.
    /// </summary>
    public void Decision(HtmlWriter html, Verdict verdict)
    {
        var nominal = verdict.Deviation is null || verdict.Limit?.Nominal is not { } known ? null : QuantityText.Format(known);
        // Most workings begin with it.
        if (nominal is not null && verdict.Limit!.Arithmetic.Text.StartsWith(nominal, StringComparison.Ordinal))
        {
            nominal = null;
        }

        var ownRule = verdict.Rule is { } decided && decided != rule ? decided : null;
        var probability = verdict is { Rule: not null, Probability: { } share } && IsInDoubt(share) ? share : (double?)null;
        if (nominal is null && verdict.Margin is null && probability is null && ownRule is null)
        {
            return;
        }

        using var line = html.Open(Tag.Li);
        var commas = new Commas(html);
        if (nominal is { } wanted)
        {
            commas.Next().Text($"nominal {wanted}");
        }

        if (verdict.Margin is { } margin)
        {
            Room(commas.Next(), margin);
        }

        if (probability is { } inside)
        {
            commas.Next().Text($"inside with probability {VerdictWords.Probability(inside)}");
        }

        if (ownRule is not null)
        {
            commas.Next().Text($"decided by {ownRule.Name}");
            Sources.Cite(html, ownRule.Source.Text);
        }
    }

    // Four places of what is nearer to certain would promise what no reading can.
    private static bool IsInDoubt(double probability) => probability is >= 0.00005 and < 0.99995;

    /// <summary>Writes a remark. The working of an uncertainty leaves out its source, which <see cref="Rule"/> tells for all.</summary>
    public void Remark(HtmlWriter html, string remark, PageAnchor? here)
    {
        if (remark.EndsWith(ReadingUncertainty.RuleCited, StringComparison.Ordinal))
        {
            html.Open(Tag.Li).Text(remark.AsSpan(..^ReadingUncertainty.RuleCited.Length));
        }
        else
        {
            Once(html, remark, here);
        }
    }

    /// <summary>Writes a line; where a long one stands on the page already, the way there.</summary>
    public void Once(HtmlWriter html, string words, PageAnchor? here)
    {
        using var line = html.Open(Tag.Li);
        if (words.Length < Long)
        {
            html.Text(words);
        }
        else if (lines.TryGetValue(words, out var known))
        {
            html.Text("as told at ");
            known.Link(html);
        }
        else
        {
            html.Text(words);
            if (here is { } place)
            {
                lines.Add(words, place);
            }
        }
    }

    private static void Room(HtmlWriter html, decimal margin)
    {
        if (margin < 0)
        {
            html.Text($"beyond the limit by {VerdictWords.Share(margin)} of it");
        }
        else if (margin == 0)
        {
            html.Text("exactly on the limit, which is inside");
        }
        else
        {
            html.Text($"room to the limit: {VerdictWords.Share(margin)} of it");
        }
    }

    /// <summary>Writes the rule for all readings whose uncertainty is known.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="levelsUp">How many folders below the root the page stands.</param>
    public void Rule(HtmlWriter html, int levelsUp)
    {
        using var line = html.Open(Tag.P, ClassName.Fine);
        html.Text("Where the instrument is known, its expanded uncertainty U (k = 2) is drawn as a line through the reading and ");
        html.Text($"decides by {rule.Name}: {rule.Meaning}");
        Sources.Cite(html, rule.Source.Text);
        html.Text("; how U is reached");
        Sources.Cite(html, ReadingUncertainty.Rule);
        html.Text("; the probability of being inside, told where it is neither 1 nor 0 to four places");
        Sources.Cite(html, Probability);
        html.Text(". ");
        html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.About, levelsUp, SiteAddress.Drawings)).Text("How to read the drawings");
        html.Text(".");
    }

    // A limit that stands on the page, and the one before it with the same arithmetic.
    private sealed record Told(string Origin, string Source, PageAnchor At, Told? Before);
}
