using System.Collections.Concurrent;
using Ohmstead.Assessment.Fit;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>What would fit open places out of one drawer, ready for their pages. Places that ask for the same come by the dozen: the drawer
/// is looked through once for all of them.</summary>
/// <remarks>Used by several threads at once. Two that ask the same at the same time write the same.</remarks>
/// <param name="drawer">What is left in the drawer.</param>
/// <param name="most">How many answers it keeps; what is asked beyond them is worked out each time, so that memory stays as it is however
/// many places a collection has.</param>
public sealed class WantedFolds(Drawer drawer, int most = WantedFolds.Usual)
{
    // Some kilobytes each.
    private const int Usual = 512;

    private readonly ConcurrentDictionary<FitPlace, byte[]> known = new();
    private int count;

    /// <summary>Appends what would fit a place.</summary>
    public void Write(PageBuffer buffer, FitPlace place)
    {
        if (known.TryGetValue(place, out var ready))
        {
            buffer.Append(ready);
            return;
        }

        using var told = new PageBuffer(4 << 10);
        var html = new HtmlWriter(told);
        FitFold.Wanted(html, FitReport.For(place, drawer));
        html.Finish();
        buffer.Append(told.Written);
        if (Interlocked.Increment(ref count) <= most)
        {
            known.TryAdd(place, told.Written.ToArray());
        }
    }
}
