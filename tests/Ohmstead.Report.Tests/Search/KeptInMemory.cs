using Ohmstead.Report.Html;
using Ohmstead.Report.Search;

namespace Ohmstead.Report.Tests.Search;

/// <summary>Pages of the index that wait in memory.</summary>
internal sealed class KeptInMemory : ISearchStore
{
    private readonly List<byte[]> pages = [];

    /// <inheritdoc/>
    public int Keep(ReadOnlySpan<byte> bytes)
    {
        pages.Add(bytes.ToArray());
        return pages.Count - 1;
    }

    /// <inheritdoc/>
    public void Take(int kept, PageBuffer into)
    {
        into.Clear();
        into.Append(pages[kept]);
    }
}
