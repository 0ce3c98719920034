using System.Collections.Immutable;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>What was written as a draft and waits for its place.</summary>
/// <param name="Held">The pieces that wait on the disk.</param>
/// <param name="Rest">What comes behind them.</param>
internal sealed record Drafted(ImmutableArray<HeldPiece> Held, byte[] Rest)
{
    /// <summary>How many bytes it has.</summary>
    public long Length => Held.Sum(piece => (long)piece.Length) + Rest.Length;

    /// <summary>Hands all of it on, piece by piece.</summary>
    public void CopyTo(ReportFolder from, Action<ReadOnlySpan<byte>> to)
    {
        if (Held.Length > 0)
        {
            using var piece = new PageBuffer();
            foreach (var held in Held)
            {
                piece.Clear();
                from.TakeKept(held, piece);
                to(piece.Written);
            }
        }

        to(Rest);
    }

    /// <summary>Puts it by as a file of the report.</summary>
    public void Put(ReportFolder target, string path)
    {
        using var file = target.Start(path);
        CopyTo(target, file.Write);
        target.Put(path, file);
    }
}
