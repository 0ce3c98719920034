using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pages;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>The page of one board, from the text of its record.</summary>
internal static class OneBoard
{
    /// <summary>The bytes of the page.</summary>
    public static byte[] Bytes(string record, Workshop workshop, DateOnly? today = null, Drawer? drawer = null)
    {
        using var buffer = new PageBuffer();
        var context = new ReportContext(workshop, new HashSet<string>(StringComparer.Ordinal), today ?? Judged.Today, "0.0.0")
        {
            Pictures = new InventedPictures(),
            Drawer = drawer,
        };
        BoardPage.Write(buffer, context, Judged.Board(record, workshop, today));
        return buffer.Written.ToArray();
    }

    /// <summary>The page, read back with an HTML parser that is not ours.</summary>
    public static IDocument Page(string record, Workshop? workshop = null, DateOnly? today = null) =>
        Parsed(Bytes(record, workshop ?? Workshop.Empty, today));

    /// <summary>The bytes of a page, read back in the same way.</summary>
    public static IDocument Parsed(byte[] page) =>
        new HtmlParser(new HtmlParserOptions { IsStrictMode = true }).ParseDocument(Encoding.UTF8.GetString(page));
}
