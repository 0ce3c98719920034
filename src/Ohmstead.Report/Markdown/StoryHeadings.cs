using System.Text;
using Markdig.Syntax;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Markdown;

/// <summary>The headings of a text: the rank each has in the page, with none skipped, and its id.</summary>
internal sealed class StoryHeadings
{
    private readonly Dictionary<HeadingBlock, (int Rank, ElementId Id)> headings = [];
    private readonly Dictionary<string, int> names = new(StringComparer.Ordinal);

    /// <summary>Numbers the headings of a text.</summary>
    /// <param name="tree">The text.</param>
    /// <param name="topRank">The rank of the first heading.</param>
    public StoryHeadings(MarkdownDocument tree, int topRank)
    {
        var outline = new Stack<int>();
        foreach (var heading in tree.Descendants<HeadingBlock>())
        {
            while (outline.TryPeek(out var above) && above >= heading.Level)
            {
                outline.Pop();
            }

            outline.Push(heading.Level);
            headings.Add(
                heading,
                (Math.Min(topRank + outline.Count - 1, 6), ElementId.For(IdPrefix.Story, Unused(Name(InlineText.Read(heading.Inline)))))
            );
        }
    }

    /// <summary>The element for a heading.</summary>
    public Tag Tag(HeadingBlock heading) =>
        headings[heading].Rank switch
        {
            2 => Html.Tag.H2,
            3 => Html.Tag.H3,
            4 => Html.Tag.H4,
            5 => Html.Tag.H5,
            _ => Html.Tag.H6,
        };

    /// <summary>The id of a heading.</summary>
    public ElementId Id(HeadingBlock heading) => headings[heading].Id;

    /// <summary>The id of the heading that a fragment written in the text means; null when there is none.</summary>
    public ElementId? Find(string fragment) =>
        Name(fragment) is var name && names.ContainsKey(name) ? ElementId.For(IdPrefix.Story, name) : null;

    private static string Name(string text)
    {
        var name = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(rune))
            {
                name.Append(Rune.ToLowerInvariant(rune).ToString());
            }
            else if (name.Length > 0 && name[^1] != '-')
            {
                name.Append('-');
            }
        }

        var trimmed = name.ToString().TrimEnd('-');
        return trimmed.Length == 0 ? "heading" : trimmed;
    }

    private string Unused(string name)
    {
        var number = names.GetValueOrDefault(name, 0);
        var unused = name;
        while (!names.TryAdd(unused, 1))
        {
            number++;
            unused = $"{name}-{Invariant.Text(number)}";
        }

        names[name] = Math.Max(number, 1);
        return unused;
    }
}
