using Ohmstead.Report.Html;
using Ohmstead.Report.Search;

namespace Ohmstead.Report.Tests.Search;

/// <summary>Pages of the index that wait in memory.</summary>
internal sealed class KeptInMemory : ISearchStore
{
    private readonly List<byte[]> kept = [];

    /// <inheritdoc/>
    public int Keep(ReadOnlySpan<byte> bytes)
    {
        kept.Add(bytes.ToArray());
        return kept.Count - 1;
    }

    /// <inheritdoc/>
    public void Take(int kept, PageBuffer into)
    {
        into.Clear();
        into.Append(this.kept[kept]);
    }
}
