using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Nodes;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pages;
using Ohmstead.Yaml;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>The page of one board, from the text of its record.</summary>
internal static class OneBoard
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    /// <summary>The bytes of the page.</summary>
    public static byte[] Bytes(string record, Workshop workshop)
    {
        var read = FileBinding.Board("boards/X-1.md", new YamlNodeReader().Read("boards/X-1.md", Encoding.UTF8.GetBytes(record), FileForm.Markdown, ReadingLimits.Usual));
        Assert.Empty(read.Findings);
        using var buffer = new PageBuffer();
        BoardPage.Write(buffer, new ReportContext(workshop, new HashSet<string>(StringComparer.Ordinal), Today, "0.0.0") { Pictures = new InventedPictures() }, new Assessor(workshop).Assess(read.File!));
        return buffer.Written.ToArray();
    }

    /// <summary>The page, read back with an HTML parser that is not ours.</summary>
    public static IDocument Page(string record) =>
        new HtmlParser(new HtmlParserOptions { IsStrictMode = true }).ParseDocument(Encoding.UTF8.GetString(Bytes(record, Workshop.Empty)));
}
