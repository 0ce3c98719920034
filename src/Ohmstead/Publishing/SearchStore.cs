using Ohmstead.Report.Html;
using Ohmstead.Report.Search;

namespace Ohmstead.Publishing;

/// <summary>Pages of the index that wait on the disk.</summary>
/// <param name="folder">Whose pages they are.</param>
internal sealed class SearchStore(ReportFolder folder) : ISearchStore
{
    private readonly Lock gate = new();
    private readonly List<HeldPiece> pieces = [];

    /// <inheritdoc/>
    public int Keep(ReadOnlySpan<byte> bytes)
    {
        var piece = folder.Keep(bytes);
        lock (gate)
        {
            pieces.Add(piece);
            return pieces.Count - 1;
        }
    }

    /// <inheritdoc/>
    public void Take(int kept, PageBuffer into)
    {
        HeldPiece piece;
        lock (gate)
        {
            piece = pieces[kept];
        }

        into.Clear();
        folder.TakeKept(piece, into);
    }
}
