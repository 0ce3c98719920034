using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Electronics;

namespace Ohmstead.Commands;

/// <summary>Why a board may be switched on, entry by entry: what is met and by what, and what does not apply. What stands open was told
/// before and is never left out.</summary>
internal static class WhyEvidence
{
    // A board of forty parts would fill the screen with what is in order: of more than so many of a kind the places are named and no more.
    private const int MostOfAKind = 6;

    /// <summary>The lines about the whole board.</summary>
    /// <param name="board">The board.</param>
    /// <param name="isAll">True to tell each that is met, however many there are of a kind.</param>
    internal static IEnumerable<string> List(JudgedBoard board, bool isAll)
    {
        var groups = ObligationGroup.Group(board.Obligations);
        if (groups.Any(group => group.Met.Length > 0))
        {
            yield return board.State == BoardState.FitToRun ? "why it may be switched on, entry by entry:" : "what is met already:";
        }

        foreach (var group in groups.Where(group => group.Met.Length > 0))
        {
            yield return $"  {group.Rule.Asks}";
            foreach (var line in group.Met.Length > MostOfAKind && !isAll ? [InShort(group.Met)] : Met(group.Met))
            {
                yield return "    " + line;
            }
        }

        if (groups.Any(group => group.Excused.Length > 0))
        {
            yield return "what does not apply:";
        }

        foreach (var same in groups.SelectMany(group => group.Excused.GroupBy(one => one.Text.Text, StringComparer.Ordinal)))
        {
            yield return $"  {Places(same)}: {same.Key}";
        }
    }

    /// <summary>The lines about one part or point: what of the board's must be shown there, and how it stands.</summary>
    internal static IEnumerable<string> At(JudgedBoard board, string at)
    {
        foreach (var obligation in board.Obligations.Where(one => one.At == at))
        {
            yield return obligation.Standing switch
            {
                ObligationStanding.Open => $"open: {obligation.Text}",
                ObligationStanding.Met => $"met: {obligation.Shown}{Where([obligation])}",
                ObligationStanding.DoesNotApply => $"does not apply: {obligation.Text}",
            };
            if (obligation.Standing == ObligationStanding.Open)
            {
                yield return $"  = {obligation.NextStep}";
            }
        }
    }

    private static string InShort(ImmutableArray<Obligation> met)
    {
        var last = met.Max(one => one.MetBy!.Day);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{met.Length} met: {Places(met)}{(last is { } day ? $", the last on {IsoDate.Text(day)}" : string.Empty)}; --all tells each"
        );
    }

    // What meets several places in the same words on the same day is told once.
    private static IEnumerable<string> Met(ImmutableArray<Obligation> met) =>
        met.GroupBy(one => (one.Shown, one.MetBy!.Day, one.MetBy.Path)).Select(same => $"{Places(same)}: {same.Key.Shown}{Where(same)}");

    private static string Where(IEnumerable<Obligation> met)
    {
        Evidence[] all = [.. met.Select(one => one.MetBy!)];
        var lines = string.Join(
            ", ",
            all.Select(by => by.Spot.Line).Distinct().Select(line => line.ToString(CultureInfo.InvariantCulture))
        );
        return $"{(all[0].Day is { } day ? $", {IsoDate.Text(day)}" : string.Empty)}, {all[0].Path}:{lines}";
    }

    private static string Places(IEnumerable<Obligation> obligations) => PlaceRuns.Words([.. obligations.Select(one => one.At ?? "board")]);
}
