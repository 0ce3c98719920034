using System.Text;
using AngleSharp.Html.Parser;
using Ohmstead.Report.Html;
using Ohmstead.Report.Markdown;

namespace Ohmstead.Fuzz.Targets;

/// <summary>A story, written into a page and read back by an HTML parser that is not ours: nothing in it can run, load or hide.</summary>
internal static class StoryTarget
{
    private static readonly string[] Schemes = ["http://", "https://", "mailto:"];

    public static void Try(byte[] input)
    {
        var text = Encoding.UTF8.GetString(input);
        using var buffer = new PageBuffer(16);
        var html = new HtmlWriter(buffer);
        StoryWriter.Write(html, new Story(text, "boards", new NoTargets()));
        html.Finish();
        var source = Encoding.UTF8.GetString(buffer.Written);
        Bytes.AreHarmless(source, "the page");
        var body = new HtmlParser().ParseDocument("<!DOCTYPE html><html><head></head><body>" + source + "</body></html>").Body!;
        FaultFoundException.Unless(body.ChildElementCount <= 1, "the story leaves its box");
        FaultFoundException.Unless(
            body.QuerySelector("script,iframe,object,embed,style,link,meta,base,form,input,img,svg,math,template") is null,
            "an element that can run or load"
        );
        foreach (var element in body.QuerySelectorAll("*"))
        {
            foreach (var attribute in element.Attributes)
            {
                FaultFoundException.Unless(!attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase), "an attribute that runs");
                FaultFoundException.Unless(
                    attribute.Name is not ("style" or "src" or "srcset" or "srcdoc" or "action" or "formaction" or "ping" or "background"),
                    "an attribute that loads"
                );
                FaultFoundException.Unless(
                    attribute.Name != "href" || IsAllowed(attribute.Value),
                    $"an address of another scheme: {attribute.Value}"
                );
            }
        }
    }

    private static bool IsAllowed(string address) =>
        Schemes.Any(scheme => address.StartsWith(scheme, StringComparison.Ordinal))
        || !address.Split('#')[0].Contains(':', StringComparison.Ordinal);

    private sealed class NoTargets : IStoryTargets
    {
        public Link? Reference(string name) => name == "C12" ? LocalLink.ToFragment(ElementId.For(IdPrefix.Part, name)) : null;

        public LocalLink? File(string path, string? place) => null;

        public LocalLink? Picture(string path) => null;
    }
}
