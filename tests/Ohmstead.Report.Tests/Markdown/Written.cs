using AngleSharp.Dom;
using Ohmstead.Report.Markdown;
using Ohmstead.Report.Tests.Html;

namespace Ohmstead.Report.Tests.Markdown;

/// <summary>A text written into a page and read back by an HTML parser that is not ours; always checked to be harmless.</summary>
internal sealed record Written(string Source, IElement Box, IReadOnlyList<StoryNote> Notes)
{
    public string Inner => Box.InnerHtml.Trim();

    public static Written From(string body)
    {
        IReadOnlyList<StoryNote> notes = [];
        var source = Probe.Source(html => notes = StoryWriter.Write(html, new Story(body, "boards", new InventedTargets())));
        var root = Probe.Body(source);
        Harmless.Check(root);
        var box = Assert.Single(root.Children);
        Assert.Equal("story", box.ClassName);
        return new Written(source, box, notes);
    }
}
