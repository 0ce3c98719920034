using Ohmstead.Assessment.Fit;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>A place that needs a part, on a page that was written before all boards were read: what is left in the drawer is known only
/// then.</summary>
/// <param name="At">How many bytes of the page come before what is still to be told.</param>
/// <param name="Place">What a part must fit.</param>
public readonly record struct OpenPlace(int At, FitPlace Place)
{
    /// <summary>Writes a page again with what would fit each of its open places.</summary>
    /// <param name="buffer">Where to; it is emptied first.</param>
    /// <param name="page">The page as it was written.</param>
    /// <param name="places">Its open places, in order.</param>
    /// <param name="wanted">What fits out of the drawer.</param>
    public static void Fill(PageBuffer buffer, ReadOnlySpan<byte> page, IReadOnlyList<OpenPlace> places, WantedFolds wanted)
    {
        buffer.Clear();
        var from = 0;
        foreach (var place in places)
        {
            buffer.Append(page[from..place.At]);
            wanted.Write(buffer, place.Place);
            from = place.At;
        }

        buffer.Append(page[from..]);
    }
}
