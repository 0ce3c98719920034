using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>Every major finding, and every one that can hurt, was answered by work that can close it; what cannot hurt also by a decision
/// with a reason.</summary>
public sealed class FindingAnswered : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "finding-answered";

    /// <inheritdoc/>
    public string Asks =>
        "each major or safety finding was answered by work that can close it, or, where nobody can be hurt, by a decision with a reason";

    /// <inheritdoc/>
    public bool CountsAsTold(BoardUnderObligation board, Obligation open) =>
        open.State == BoardState.MakeSafe
        || FindingWeight.TellsOfALeak(open.Text.Text, open.At is { } at ? board.Board.Place(at)?.Part.Values.Kind.Value : null);

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board) => [.. Found(board), .. Noted(board)];

    // What a note of a reading tells of the part that still sits there was seen as well.
    private IEnumerable<Obligation> Noted(BoardUnderObligation board)
    {
        var tubes = PictureTubes.Among(board.Board.Hazards.Select(hazard => hazard.Hazard));
        foreach (var place in board.Board.Places)
        {
            if (place.IsEmpty)
            {
                continue;
            }

            foreach (var reading in place.Counting)
            {
                if (
                    reading is { Reading.Note: { } note, Place: { } part, IsNew: false }
                    && FindingWeight.Weigh(part.Ref.Value, note.Value, ObservedSeverity.Note, part, tubes)
                        is var weight
                            and not ObservedSeverity.Note
                    && !(
                        weight == ObservedSeverity.Major
                        && place.Decision is { GivesAReason: true } decision
                        && decision.What.Value.LetsStay()
                        && place.DecidedAt > reading.At
                    )
                )
                {
                    yield return Obligation.Open(
                        Kind,
                        weight == ObservedSeverity.Safety ? BoardState.MakeSafe : BoardState.FaultStands,
                        part.Ref.Value,
                        $"noted beside the reading of {BoardUnderObligation.Day(reading.Visit)}: {note.Value}",
                        "replace it, or answer it by a decision with a reason where nobody can be hurt",
                        $"replace {part.Ref.Value}, or answer the note by a decision with a reason where nobody can be hurt"
                    );
                }
            }
        }

        // A test that passed while something smoked passed nothing; work after it, and the proof that follows, answer that.
        foreach (var proof in board.Board.Proofs)
        {
            if (
                proof.Proof.Note is { } note
                && proof.At > board.Board.LastWorkAt
                && FindingWeight.Weigh(proof.Proof.Point.Value, note.Value, ObservedSeverity.Note, null, tubes)
                    is var weight
                        and not ObservedSeverity.Note
            )
            {
                yield return Obligation.Open(
                    Kind,
                    weight == ObservedSeverity.Safety ? BoardState.MakeSafe : BoardState.FaultStands,
                    proof.Proof.Point.Value,
                    $"noted beside the proof of {BoardUnderObligation.Day(proof.Visit)}: {note.Value}",
                    "find the cause, mend it, and prove the board again"
                );
            }
        }
    }

    private IEnumerable<Obligation> Found(BoardUnderObligation board)
    {
        LastPassed? passed = null;
        foreach (var finding in board.Board.Findings.Where(finding => finding.MustBeAnswered))
        {
            var (at, what) = (finding.Finding.At.Value, WhatItIs(finding));
            var isSafety = finding.Weight == ObservedSeverity.Safety;
            if (finding.IsOpen)
            {
                yield return Obligation.Open(
                    Kind,
                    isSafety ? BoardState.MakeSafe : BoardState.FaultStands,
                    at,
                    finding.InVain is { } vain ? $"{what}; '{vain.Did.Text}' does not answer that" : what,
                    finding.MayBreakInwards ? "keep away from it, and leave it to somebody licensed to judge and handle the tube"
                        : isSafety ? "make it safe, and record the work there"
                        : "answer it by work or by a decision with a reason",
                    finding.MayBreakInwards ? $"keep away from {at} until somebody licensed has judged the tube"
                        : isSafety ? $"make {at} safe"
                        : $"answer what was found at {at}, by work or by a decision with a reason"
                );
            }
            else if (
                finding is { Trouble: Trouble.LiveMetal, Work: { } mended }
                && !(passed ??= new(board.Board)).IsTestedSince(finding.AnsweredAt, at)
            )
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.MakeSafe,
                    at,
                    $"{what}; {mended.Did.Text} on {BoardUnderObligation.Day(finding.On!)}, and nothing was tested there since",
                    $"test the insulation of {at} and record it; defer to local codes and licensed practice",
                    $"test the insulation of {at}; defer to local codes and licensed practice"
                );
            }
            else if (
                finding is { Trouble: Trouble.Other, Work: { Did.Value: not WorkKind.LeftAlone } done }
                && !(passed ??= new(board.Board)).IsProvedSince(finding.AnsweredAt, at)
            )
            {
                yield return Obligation.Open(
                    Kind,
                    isSafety ? BoardState.MakeSafe : BoardState.ProofDue,
                    at,
                    $"{what}; {done.Did.Text} on {BoardUnderObligation.Day(finding.On!)}, and nothing was proved since",
                    "prove the board, or answer it by a decision with a reason"
                );
            }
            else
            {
                yield return Obligation.Met(
                    Kind,
                    at,
                    what,
                    finding.Work is { } work ? board.By(work, finding.On!) : board.By(finding.Decision!, finding.On!.Date.Value)
                );
            }
        }
    }

    // What was written as little and is never little says so.
    private static string WhatItIs(AnsweredFinding finding) =>
        finding.Weight == finding.Finding.Severity.Value
            ? finding.Finding.What.Value
            : $"{finding.Finding.What.Value} (written as {finding.Finding.Severity.Text}, which that never is)";
}
