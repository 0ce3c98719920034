using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Boards;

/// <summary>
/// Which fitting has which piece of a lot. A piece that was read in the drawer serves one fitting: the earliest by day. Fittings of one
/// board keep the order of their record; of fittings of one day on several boards nobody knows which had the piece, and where there are not
/// enough for all of them none gets one.
/// </summary>
public sealed class PieceShares
{
    private readonly Dictionary<(string Path, Spot Spot), PieceShare> shares = [];

    private PieceShares() { }

    /// <summary>Nothing is shared out.</summary>
    public static PieceShares None { get; } = new();

    /// <summary>Whether nothing is shared out.</summary>
    public bool IsEmpty => shares.Count == 0;

    /// <summary>Shares the pieces of each lot out among all that claim one.</summary>
    /// <param name="workshop">The drawer.</param>
    /// <param name="claims">The claims, those of one board in order of time.</param>
    public static PieceShares ShareOut(Workshop workshop, IReadOnlyCollection<PieceClaim> claims) =>
        claims.Count == 0 ? None : ShareOut(claims, new LotPiecesMemo(workshop, new ReadingJudge(workshop)).Passed);

    /// <summary>Shares the pieces of each lot out among all that claim one.</summary>
    /// <param name="claims">The claims, those of one board in order of time.</param>
    /// <param name="piecesOf">The pieces of a lot that were read in the drawer and passed, in order of time.</param>
    internal static PieceShares ShareOut(IReadOnlyCollection<PieceClaim> claims, Func<string, IReadOnlyList<PassedPiece>> piecesOf)
    {
        var all = new PieceShares();
        foreach (var ofLot in claims.GroupBy(claim => claim.Lot, StringComparer.Ordinal))
        {
            PieceClaim[] inOrder = [.. ofLot.OrderBy(claim => claim.Day).ThenBy(claim => claim.Path, StringComparer.Ordinal)];
            HashSet<string> names = new(StringComparer.Ordinal);
            foreach (var ofPiece in inOrder.Where(claim => claim.Piece is not null).GroupBy(claim => claim.Piece!, StringComparer.Ordinal))
            {
                names.Add(ofPiece.Key);
                all.ShareNamed([.. ofPiece]);
            }

            all.ShareAny(
                [.. inOrder.Where(claim => claim.Piece is null)],
                [.. piecesOf(ofLot.Key).Where(piece => piece.Name is null || !names.Contains(piece.Name))]
            );
        }

        return all;
    }

    /// <summary>What a claim gets; null when it was not among those that were asked about.</summary>
    public PieceShare? For(PieceClaim claim) => shares.GetValueOrDefault((claim.Path, claim.Spot));

    // A piece that had left one place may sit in the next.
    private void ShareNamed(PieceClaim[] claims)
    {
        var holder = claims[0];
        Give(holder, new(null, null, IsTied: false));
        foreach (var claim in claims.AsSpan(1))
        {
            if (holder.Gone is { } gone && gone <= claim.Day)
            {
                holder = claim;
                Give(holder, new(null, null, IsTied: false));
            }
            else
            {
                var isTied = holder.Day == claim.Day && holder.Path != claim.Path;
                Give(claim, new(null, holder, isTied));
                if (isTied)
                {
                    Give(holder, new(null, claim, IsTied: true));
                }
            }
        }
    }

    private void ShareAny(PieceClaim[] claims, PassedPiece[] pieces)
    {
        var (taken, first) = (0, (PieceClaim?)null);
        foreach (var ofDay in claims.GroupBy(claim => claim.Day))
        {
            PieceClaim[] askers = [.. ofDay];
            PassedPiece[] left = [.. pieces.Skip(taken).TakeWhile(piece => piece.By.Visit.Date.Value <= ofDay.Key)];
            var isKnown =
                left.Length == 0 || left.Length >= askers.Length || Array.TrueForAll(askers, asker => asker.Path == askers[0].Path);
            for (var at = 0; at < askers.Length; at++)
            {
                Give(
                    askers[at],
                    !isKnown ? new(null, Array.Find(askers, other => other.Path != askers[at].Path), IsTied: true)
                        : at < left.Length ? new(left[at].By, null, IsTied: false)
                        : new(null, first ?? (left.Length > 0 ? askers[0] : null), IsTied: false)
                );
            }

            taken += Math.Min(left.Length, askers.Length);
            first ??= taken > 0 ? askers[0] : null;
        }
    }

    private void Give(PieceClaim claim, PieceShare share) => shares[(claim.Path, claim.Spot)] = share;
}
