using Ohmstead.Report.Html;
using Ohmstead.Report.Markdown;

namespace Ohmstead.Report.Tests.Markdown;

/// <summary>An invented collection: parts C12, C13 and R4, boards SP-0007 and SP-0009, two files and one picture.</summary>
internal sealed class InventedTargets : IStoryTargets
{
    public Link? Reference(string name) =>
        name switch
        {
            "C12" or "C13" or "R4" => LocalLink.ToFragment(ElementId.For(IdPrefix.Part, name)),
            "SP-0007" or "SP-0009" => LocalLink.ToFile($"boards/{name}.html", 1),
            _ => null,
        };

    public LocalLink? File(string path, string? place) =>
        path switch
        {
            "boards/SP-0009.md" => LocalLink.ToFile("boards/SP-0009.html", 1, place is null ? null : ElementId.For(IdPrefix.Part, place)),
            "papers/servo drawing.pdf" => LocalLink.ToFile(path, 1),
            _ => null,
        };

    public LocalLink? Picture(string path) => path == "photos/SP-0007/front.jpg" ? LocalLink.ToFile(path, 1) : null;
}
