using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tests.Html;

/// <summary>Writes something and reads it back with an HTML parser that is not ours.</summary>
internal static class Probe
{
    public static string Source(Action<HtmlWriter> write)
    {
        using var buffer = new PageBuffer(16);
        var html = new HtmlWriter(buffer);
        write(html);
        html.Finish();
        return Encoding.UTF8.GetString(buffer.Written);
    }

    public static IElement Body(string source) =>
        new HtmlParser().ParseDocument("<!DOCTYPE html><html><head></head><body>" + source + "</body></html>").Body!;

    public static IElement Body(Action<HtmlWriter> write) => Body(Source(write));
}
