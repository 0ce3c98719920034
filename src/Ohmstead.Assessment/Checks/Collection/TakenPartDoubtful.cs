using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Electronics;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A part is said to have gone from one board to another, and the two boards do not agree.</summary>
public sealed class TakenPartDoubtful : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "taken-part-doubtful",
            Severity.Error,
            "a part is said to have gone from one board to another, and the two boards do not agree",
            CheckEffect.HoldsBack,
            "what sits in one of the two places is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        var claims = new List<Claim>();
        foreach (var (board, parts) in collection.Transfers)
        {
            foreach (var taken in parts.Taken)
            {
                if (BoardPlace.Parse(taken.From.Value) is not { } from)
                {
                    yield return Unread(board, taken.From);
                }
                else if (!taken.PutsIn)
                {
                    yield return At(
                        board,
                        taken.From,
                        $"nothing was put in that could have come from {from}",
                        "write did: fitted or replaced, or take taken_from out"
                    );
                }
                else
                {
                    claims.Add(new(board, taken, from));
                }
            }
        }

        var byGiver = claims.ToLookup(claim => claim.From);
        var numbers = collection.Boards.ToLookup(board => board.Id.Value, StringComparer.Ordinal);
        var given = collection.Transfers.ToLookup(board => board.Board.Id.Value, board => board.Parts.Given, StringComparer.Ordinal);
        foreach (var ofPlace in byGiver)
        {
            GivenPart[] left = [.. given[ofPlace.Key.Board].SelectMany(all => all).Where(one => one is { TakesOut: true, IsBack: false })];
            foreach (
                var finding in OfPlace(
                    ofPlace.Key,
                    [.. ofPlace.OrderBy(claim => claim.Taken.Day)],
                    [.. left.Where(one => one.Place == ofPlace.Key.Place)],
                    numbers[ofPlace.Key.Board].FirstOrDefault()
                )
            )
            {
                yield return finding;
            }
        }

        foreach (var (board, parts) in collection.Transfers)
        {
            foreach (var one in parts.Given)
            {
                if (one.To is { } to && Ungrasped(board, one, to, byGiver) is { } finding)
                {
                    yield return finding;
                }
            }
        }
    }

    // Each piece that left the place went to one other, and to none before it left.
    private IEnumerable<Finding> OfPlace(BoardPlace from, Claim[] claims, GivenPart[] left, BoardNumber? giver)
    {
        if (giver is null)
        {
            foreach (var claim in claims)
            {
                yield return At(claim.Board, claim.Taken.From, $"there is no board '{from.Board}'", "mend the number of the board");
            }

            yield break;
        }

        // A piece of which it is said where it went is no other's.
        List<GivenPart> free = [.. left];
        var holder = (Claim?)null;
        foreach (var claim in claims)
        {
            var named = free.FindIndex(one => one.To is { } to && BoardPlace.Parse(to.Value) == claim.At && one.Day <= claim.Taken.Day);
            var own = named >= 0 ? named : free.FindIndex(one => one.To is null && one.Day <= claim.Taken.Day);
            if (own >= 0)
            {
                free.RemoveAt(own);
                holder = claim;
            }
            else if (left.Any(one => one.Day <= claim.Taken.Day))
            {
                yield return At(
                    claim.Board,
                    claim.Taken.From,
                    $"{from} gave its part to {Other(holder, left)}, so it cannot be here too",
                    "mend the board or the place that it came from, or take one of the two entries out"
                );

                // Of one day nobody knows who had it first.
                if (holder is { } first && first.Taken.Day == claim.Taken.Day && first.Board.Path != claim.Board.Path)
                {
                    yield return At(
                        first.Board,
                        first.Taken.From,
                        $"{claim.At} took the part of {from} on the same day",
                        "mend the board or the place that it came from, or take one of the two entries out"
                    );
                }
            }
            else
            {
                yield return At(
                    claim.Board,
                    claim.Taken.From,
                    $"{from} still has its part on {IsoDate.Text(claim.Taken.Day)}",
                    $"enter on {from.Board} that it was removed: {{ part: {from.Place}, did: removed, went_to: {claim.At} }}"
                );
                yield return At(
                    giver,
                    giver.Id,
                    $"{from.Place} is said to sit in {claim.At} since {IsoDate.Text(claim.Taken.Day)}, and here it was not removed",
                    $"enter that it was removed: {{ part: {from.Place}, did: removed, went_to: {claim.At} }}"
                );
            }
        }
    }

    private Finding? Ungrasped(BoardNumber board, GivenPart one, Written<string> to, ILookup<BoardPlace, Claim> byGiver)
    {
        if (BoardPlace.Parse(to.Value) is not { } target)
        {
            return Unread(board, to);
        }

        if (!one.TakesOut)
        {
            return At(board, to, $"nothing was taken off that could have gone to {target}", "write did: removed, or take went_to out");
        }

        return byGiver[new(board.Id.Value, one.Place)].Any(claim => claim.At == target)
            ? null
            : At(
                board,
                to,
                $"{one.Place} is said to have gone to {target}, where it did not arrive",
                $"enter there what was fitted, with taken_from: {board.Id.Value} {one.Place}, or take went_to out"
            );
    }

    private static string Other(Claim? holder, GivenPart[] left) =>
        holder?.At.ToString() ?? left.Select(one => one.To?.Value).FirstOrDefault(to => to is not null) ?? "another place";

    private Finding Unread(BoardNumber board, Written<string> text) =>
        At(board, text, $"'{text.Value}' is no board and place", $"write the number and the place, such as {BoardPlace.Example}");

    private Finding At(BoardNumber board, Written<string> at, string message, string next) =>
        new(Description.Name, Description.Severity, at.Spot.In(board.Path), message, next);

    private sealed record Claim(BoardNumber Board, TakenPart Taken, BoardPlace From)
    {
        public BoardPlace At => new(Board.Id.Value, Taken.Place);
    }
}
