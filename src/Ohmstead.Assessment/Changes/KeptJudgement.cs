using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;

namespace Ohmstead.Assessment.Changes;

/// <summary>What a program judged of a collection on a day, kept so that a later program can be held against it.</summary>
/// <param name="Program">The version of the program.</param>
/// <param name="On">The day.</param>
/// <param name="Shared">The names of the contents of the files that boards share, by path.</param>
/// <param name="Boards">The boards, in order of path.</param>
public sealed record KeptJudgement(
    string Program,
    DateOnly On,
    ImmutableSortedDictionary<string, string> Shared,
    ImmutableArray<KeptBoard> Boards
);

/// <summary>What was judged of one board.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Path">The path of its record.</param>
/// <param name="Content">The name of the content of its record.</param>
/// <param name="State">Its state as it is told.</param>
/// <param name="LookAgain">The day of the next look as it is told; null for none.</param>
/// <param name="Verdicts">What its readings and proofs say.</param>
/// <param name="Findings">What was found, without lines.</param>
public sealed record KeptBoard(
    string Number,
    string Path,
    string Content,
    string State,
    string? LookAgain,
    ImmutableArray<KeptVerdict> Verdicts,
    ImmutableArray<string> Findings
)
{
    /// <summary>The names of the contents of the photographs that its record names, by path; for one that is not there, what lies in its
    /// place. Null where they were not kept.</summary>
    public ImmutableSortedDictionary<string, string>? Photographs { get; init; }

    /// <summary>What is kept of a judged board.</summary>
    /// <param name="board">The board.</param>
    /// <param name="content">The name of the content of its record.</param>
    /// <param name="photograph">The name of the content of a photograph.</param>
    public static KeptBoard From(JudgedBoard board, string content, Func<string, string> photograph) =>
        new(
            board.Board.Id.Value,
            board.Board.Path,
            content,
            BoardStates.Told(board.State, board.OverdueSince),
            board.LookAgain is { } day ? IsoDate.Text(day) : null,
            [
                .. board.Readings.SelectMany(reading =>
                    reading.Verdicts.Select(verdict =>
                        Kept(
                            verdict,
                            (reading.Reading.Part ?? reading.Reading.Point ?? reading.Reading.Lot)?.Value ?? "board",
                            reading.Visit.Date.Text
                        )
                    )
                ),
                .. board.Proofs.SelectMany(proof =>
                    proof.Verdicts.Select(verdict => Kept(verdict, proof.Proof.Point.Value, proof.Visit.Date.Text))
                ),
            ],
            [.. board.Reported.Select(BoardComparer.Told)]
        )
        {
            Photographs = board
                .Board.Bench.SelectMany(visit => visit.Photos)
                .Select(photo => photo.File.Value)
                .Distinct(StringComparer.Ordinal)
                .ToImmutableSortedDictionary(path => path, photograph, StringComparer.Ordinal),
        };

    private static KeptVerdict Kept(Verdict verdict, string place, string day) =>
        new(place, VerdictComparer.About(place, verdict, day), VerdictWords.Describe(verdict.Outcome), VerdictComparer.Told(verdict));
}

/// <summary>What was judged of one figure.</summary>
/// <param name="Place">The part, point or lot that was read.</param>
/// <param name="Of">The figure with what it is and its day.</param>
/// <param name="Outcome">What it says.</param>
/// <param name="Limit">The limit that it is held against, in words; null for none.</param>
public sealed record KeptVerdict(string Place, string Of, string Outcome, string? Limit);
