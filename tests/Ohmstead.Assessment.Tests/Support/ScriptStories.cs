using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Tests.Support;

/// <summary>Stories of which every link to a script is dropped; what else is, and how links are found, is tested where pages are
/// written.</summary>
internal sealed class ScriptStories : IStories
{
    private const string Link = "](javascript:";

    public IEnumerable<DroppedLink> Dropped(string body, string folder)
    {
        var source = new SourceText(string.Empty, body);
        for (var at = body.IndexOf(Link, StringComparison.Ordinal); at >= 0; at = body.IndexOf(Link, at + 1, StringComparison.Ordinal))
        {
            yield return new(
                source.SpotAt(at, 2),
                body[(at + 2)..body.IndexOf(')', at)],
                "an address that is neither http, https nor mailto"
            );
        }
    }
}
