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

    // Words that are shorter are read sooner than the way to them is followed.
    private const int Long = 50;

    // By the arithmetic, in which nearly all of them differ.
    private readonly Dictionary<string, Told> told = new(StringComparer.Ordinal);
    private readonly Dictionary<string, PageAnchor> lines = new(StringComparer.Ordinal);
    private readonly Dictionary<string, PageAnchor> fits = new(StringComparer.Ordinal);
    private readonly LimitList limits = new();
    private UsualWorking? usual;

    /// <summary>The sources of the page.</summary>
    public SourceList Sources { get; } = new();

    /// <summary>Tells how a limit was reached; where a long working stands on the page already, the way there.</summary>
    /// <param name="sentences">Where to.</param>
    /// <param name="limit">The limit.</param>
    /// <param name="here">What this stands in, or null when it is nothing that one could be led to.</param>
    public void Limit(ref Sentences sentences, Limit limit, PageAnchor? here)
    {
        var arithmetic = limit.Arithmetic.Text;
        var key = LimitKey.Of(limit);
        if (WorkedOut(limit) is { } known)
        {
            // Where somebody stands already, as in a row whose head leads to the part, no second way leads there.
            if (here?.Name == known.Name && known.Day is null)
            {
                sentences.Next("limit worked out with the part");
            }
            else
            {
                known.Link(sentences.Next("limit worked out at "));
            }

            return;
        }

        var html = sentences.Next();
        if (key != usual?.Limit)
        {
            limits.Name(html, key);
            html.Text(": ");
        }

        html.Text(arithmetic.AsSpan(..^Range(arithmetic, limit)));
        if (arithmetic.Length >= Long && here is { } at)
        {
            told[arithmetic] = new(key, at, told.GetValueOrDefault(arithmetic));
        }
    }

    // How long the end of a working is that the line of its verdict has said: the values inside the limit.
    private static int Range(string arithmetic, Limit limit)
    {
        var allows = $" allows {limit.InWords.Text}";
        return arithmetic.EndsWith(allows, StringComparison.Ordinal) ? allows.Length : 0;
    }

    /// <summary>What speaks for a part that was fitted is told once in the same words: where it stands already; else null, and it stands
    /// here from now on.</summary>
    public PageAnchor? ToldOfFit(string words, PageAnchor here)
    {
        if (fits.TryGetValue(words, out var known))
        {
            return known;
        }

        fits.Add(words, here);
        return null;
    }

    /// <summary>Writes what the verdicts lean on: the limits of the page, then its sources. Comes last.</summary>
    public void WriteEnd(HtmlWriter html)
    {
        limits.Write(html, Sources);
        Sources.Write(html);
    }

    /// <summary>
    /// Writes how far a reading is from its limit, how probable it is inside where that is in doubt, and by which rule that was decided
    /// where it is not the rule for all.
    /// </summary>
    public void Decision(ref Sentences sentences, Verdict verdict)
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

        // The first of them begins the sentence.
        var html = sentences.Next();
        var words = new List<string>(3);
        if (nominal is not null)
        {
            words.Add($"nominal {nominal}");
        }

        if (verdict.Margin is { } margin)
        {
            words.Add(Room(margin));
        }

        if (probability is { } inside)
        {
            words.Add($"inside with probability {VerdictWords.Probability(inside)}");
        }

        if (ownRule is not null)
        {
            words.Add($"decided by {ownRule.Name}");
        }

        var joined = string.Join(", ", words);
        html.Text($"{char.ToUpperInvariant(joined[0])}{joined[1..]}");
        if (ownRule is not null)
        {
            Sources.Cite(html, ownRule.Source.Text);
        }
    }

    // Four places of what is nearer to certain would promise what no reading can.
    private static bool IsInDoubt(double probability) => probability is >= 0.00005 and < 0.99995;

    /// <summary>Tells a remark. The working of an uncertainty leaves out what <see cref="Rule"/> tells for all.</summary>
    public void Remark(ref Sentences sentences, string remark, Verdict verdict, PageAnchor? here)
    {
        if (UncertaintyWords.Of(remark, verdict) is { } words)
        {
            sentences.Next($"U = {words.Expanded}");
            if (usual?.Errors.GetValueOrDefault(verdict.Measured) != words.Error)
            {
                sentences.Go($", a = {words.Error}");
            }
        }
        else if (remark.EndsWith(ReadingUncertainty.RuleCited, StringComparison.Ordinal))
        {
            sentences.Next(remark.AsSpan(..^ReadingUncertainty.RuleCited.Length));
        }
        else
        {
            Once(ref sentences, remark, here);
        }
    }

    /// <summary>Tells a thing; where it is long and stands on the page already, the way there.</summary>
    public void Once(ref Sentences sentences, string words, PageAnchor? here)
    {
        if (words.Length < Long)
        {
            sentences.Next(words);
        }
        else if (lines.TryGetValue(words, out var known))
        {
            known.Link(sentences.Next("as told at "));
        }
        else
        {
            sentences.Next(words);
            if (here is { } place)
            {
                lines.Add(words, place);
            }
        }
    }

    /// <summary>Whether the whole working of a verdict is its distance from the limit and its uncertainty: its limit is worked out on the
    /// page already, and nothing else is to be told.</summary>
    public bool IsOnlyFigures(Verdict verdict) =>
        verdict is { Limit: { } limit, LimitInWords: not null, Margin: not null, Deviation: null, Remarks: [var remark] }
        && WorkedOut(limit) is not null
        && UncertaintyWords.Of(remark.Text, verdict) is not null
        && (verdict.Rule is null || verdict.Rule == rule)
        && !(verdict is { Rule: not null, Probability: { } share } && IsInDoubt(share));

    /// <summary>Where a limit is worked out on the page already; null where it is not, or in words that are told again sooner.</summary>
    public PageAnchor? WorkedOut(Limit limit)
    {
        var key = LimitKey.Of(limit);
        for (var known = told.GetValueOrDefault(limit.Arithmetic.Text); known is not null; known = known.Before)
        {
            if (known.Limit == key)
            {
                return known.At;
            }
        }

        return null;
    }

    /// <summary>How far a reading is from its limit, in words.</summary>
    internal static string Room(decimal margin) =>
        margin < 0 ? $"beyond by {VerdictWords.Share(margin)}"
        : margin == 0 ? "exactly on the limit, which is inside"
        : $"room {VerdictWords.Share(margin)}";

    /// <summary>Writes the rule for all readings whose uncertainty is known.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="levelsUp">How many folders below the root the page stands.</param>
    /// <param name="common">What most of the workings that follow have in common; null where that is not known.</param>
    public void Rule(HtmlWriter html, int levelsUp, UsualWorking? common = null)
    {
        usual = common;
        using var line = html.Open(Tag.P, ClassName.Fine);
        html.Text("Where the instrument is known, its expanded uncertainty U (k = 2) is drawn as a line through the reading and ");
        html.Text($"decides by {rule.Name}: {rule.Meaning}");
        Sources.Cite(html, rule.Source.Text);
        html.Text("; U = 2 x a / sqrt(3), a being the error that the instrument may have, its shares those of the reading");
        Sources.Cite(html, ReadingUncertainty.Rule);
        html.Text("; the probability of being inside, told where it is neither 1 nor 0 to four places");
        Sources.Cite(html, Probability);
        html.Text(". ");
        Usual(html);
        html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.About, levelsUp, SiteAddress.Drawings)).Text("How to read the drawings");
        html.Text(".");
    }

    private void Usual(HtmlWriter html)
    {
        if (usual is { Errors.Count: > 0 })
        {
            var errors = usual.Errors.Select(error => $"{VerdictWords.Describe(error.Key)} {error.Value}");
            html.Text($"Where a working names no a, it is: {string.Join("; ", errors)}. ");
        }

        if (usual is { Limit: { } limit })
        {
            html.Text("Where a working names no limit, it is ");
            limits.Name(html, limit, isFirst: false);
            html.Text($", {limit.Origin}. ");
        }
    }

    // A limit that stands on the page, and the one before it with the same arithmetic.
    private sealed record Told(LimitKey Limit, PageAnchor At, Told? Before);
}
