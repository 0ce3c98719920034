using System.Collections.Immutable;
using Ohmstead.Records.Nodes;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>A file of the report while it is written: what is longer than nearly all pages are waits on the disk, piece by piece, so that
/// memory does not grow with the page. A worker has its own and uses it again.</summary>
internal sealed class Draft : IPieces, IDisposable
{
    private const int PiecesAtOnce = 16;

    private readonly ReportFolder target;
    private readonly ImmutableArray<HeldPiece>.Builder held = ImmutableArray.CreateBuilder<HeldPiece>(0);

    /// <summary>An empty draft.</summary>
    /// <param name="target">Whose pages they are.</param>
    public Draft(ReportFolder target)
    {
        this.target = target;
        Buffer = new(start: this);
    }

    /// <summary>Where it is written to; emptying it begins another file.</summary>
    public PageBuffer Buffer { get; }

    /// <summary>Puts what was written by as a file of the report.</summary>
    public void Put(string path)
    {
        if (held.Count == 0)
        {
            target.Put(path, Buffer.Written);
            return;
        }

        var whole = Whole();
        Buffer.Clear();
        whole.Put(target, path);
    }

    /// <summary>What was written, its end in memory.</summary>
    public Drafted Taken() => new(held.ToImmutable(), Buffer.Written.ToArray());

    /// <summary>What was written, all of it on the disk.</summary>
    public Drafted Whole() => new([.. held, target.Keep(Buffer.Written)], []);

    /// <inheritdoc/>
    void IPieces.Add(ReadOnlySpan<byte> piece)
    {
        // What its words were made of is of no more use, and so is what was made before the first of them.
        if (held.Count % PiecesAtOnce == 0)
        {
            LargeFile.GiveBack((long)PiecesAtOnce * piece.Length);
        }

        held.Add(target.Keep(piece));
    }

    /// <inheritdoc/>
    void IPieces.Clear() => held.Clear();

    /// <inheritdoc/>
    public void Dispose() => Buffer.Dispose();
}
