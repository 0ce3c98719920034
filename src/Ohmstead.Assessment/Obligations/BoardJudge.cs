using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Obligations.Rules;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations;

/// <summary>
/// Judges boards: what their records say, what the checks find in it, and which obligations stand. There is no other way to a state, so
/// that none is told without what the checks found.
/// </summary>
/// <remarks>It keeps what is the same for many boards in mind, so an instance is used by one thread at a time; each worker has its
/// own.</remarks>
/// <param name="workshop">What boards refer to.</param>
/// <param name="shared">What was found in the files that boards share.</param>
/// <param name="today">The day of this run.</param>
/// <param name="pictures">The pictures of the collection.</param>
/// <param name="memo">What is known already; nothing where nobody else judges beside it.</param>
public sealed class BoardJudge(Workshop workshop, SharedFaults shared, DateOnly today, IPictures pictures, JudgeMemo? memo = null)
{
    private readonly Assessor assessor = new(workshop, memo ?? new());

    /// <summary>Which fitting has which piece of a lot, once all boards were compared; before that each board takes what it asks.</summary>
    public PieceShares Pieces { get; init; } = PieceShares.None;

    /// <summary>What becomes of stories; of none where nobody makes pages.</summary>
    public IStories Stories { get; init; } = NoStories.Instance;

    /// <summary>Judges one board.</summary>
    /// <param name="board">The record.</param>
    /// <param name="read">What reading it found.</param>
    public JudgedBoard Judge(BoardFile board, ImmutableArray<Finding> read)
    {
        var assessment = assessor.Assess(board, Pieces);
        var under = new BoardUnderCheck(assessment, workshop, today, pictures) { Stories = Stories };
        var findings = Checked(under, read);
        var obliged = new BoardUnderObligation(under, findings, shared);
        var told = obliged.ToldBefore;
        return new(assessment, findings, Obligations(obliged, told), told is null ? OpenWaits(assessment) : [], today)
        {
            ToldBefore = told,
            LookAgain = told is { } day ? Told(assessment, day) : assessment.LookAgain,
        };
    }

    // What was told falls due as if somebody had looked on that day.
    private DateOnly? Told(BoardAssessment board, DateOnly day) =>
        board.Whereabouts.IsKeptUp && workshop.Collection.LookEvery is { } every ? CalendarSpan.After(day, every.Value.Value) : null;

    // What could not be read would only be reported again by the checks that miss it.
    private static ImmutableArray<Finding> Checked(BoardUnderCheck under, ImmutableArray<Finding> read)
    {
        if (read.Any(finding => finding.Severity == Severity.Error))
        {
            return read;
        }

        var found = new FindingList();
        found.AddRange(CheckCatalogue.Look(under));
        return read.Length == 0 ? found.ToImmutable() : [.. read, .. found.ToImmutable()];
    }

    private static ImmutableArray<Obligation> Obligations(BoardUnderObligation board, DateOnly? told)
    {
        var obligations = ImmutableArray.CreateBuilder<Obligation>();
        var (quieted, asTold) = (new List<Obligation>(), -1);
        foreach (var rule in ObligationCatalogue.All)
        {
            foreach (var obligation in rule.Ask(board))
            {
                if (obligation is { Standing: ObligationStanding.Open, State: BoardState.AsTold })
                {
                    asTold = obligations.Count;
                }

                if (told is not { } day || obligation.Standing != ObligationStanding.Open || rule.CountsAsTold(board, obligation))
                {
                    obligations.Add(obligation);
                    continue;
                }

                quieted.Add(obligation);
                obligations.Add(NotMerelyTold.Quieted(obligation, day));
            }
        }

        if (told is { } before && asTold >= 0)
        {
            obligations[asTold] = NotMerelyTold.Open(before, quieted);
        }

        return obligations.DrainToImmutable();
    }

    // A wait whose end cannot be holds the board back like one without an end, and is listed with them.
    private ImmutableArray<Wait> OpenWaits(BoardAssessment board) =>
        board.Board.Waiting.Length == 0 || !board.Whereabouts.IsKeptUp
            ? []
            : [.. board.Board.Waiting.Where(wait => !WaitOver.IsOver(wait, today))];
}
