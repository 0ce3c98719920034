using Ohmstead.Report.Html;

namespace Ohmstead.Report.Search;

/// <summary>Where pages of the index wait until all are known, so that memory does not grow with them.</summary>
public interface ISearchStore
{
    /// <summary>Keeps bytes. May be called from several threads.</summary>
    /// <returns>What to ask for them by.</returns>
    int Keep(ReadOnlySpan<byte> bytes);

    /// <summary>Gives bytes back, into a buffer that is emptied first.</summary>
    void Take(int kept, PageBuffer into);
}
