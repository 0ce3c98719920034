using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>Why readings of one visit decide nothing, where all that say so have one reason: it is told once, above their table.</summary>
internal readonly struct SharedReasons
{
    private readonly string? undecided;
    private readonly string? provesNothing;

    private SharedReasons(string? undecided, string? provesNothing) => (this.undecided, this.provesNothing) = (undecided, provesNothing);

    /// <summary>Looks at the verdicts that are told in full in the table of a visit.</summary>
    public static SharedReasons From(BoardAssessment board, ImmutableArray<AssessedReading> readings) =>
        new(OneReason(board, readings, VerdictOutcome.Undecided), OneReason(board, readings, VerdictOutcome.ProvesNothing));

    /// <summary>Whether the reason of a verdict is told above the table.</summary>
    public bool Tell(Verdict verdict) =>
        verdict.Outcome switch
        {
            VerdictOutcome.Undecided => undecided is not null,
            VerdictOutcome.ProvesNothing => provesNothing is not null,
            _ => false,
        };

    /// <summary>Writes the reasons; nothing where there are none.</summary>
    public void Write(HtmlWriter html)
    {
        if (provesNothing is not null)
        {
            html.Open(Tag.P, ClassName.Fine).Text($"Each that {VerdictWords.Describe(VerdictOutcome.ProvesNothing)}: {provesNothing}.");
        }

        if (undecided is not null)
        {
            html.Open(Tag.P, ClassName.Fine).Text($"Each that is {VerdictWords.Describe(VerdictOutcome.Undecided)}: {undecided}.");
        }
    }

    // The one reason of all verdicts with an outcome, where there are two of them or more.
    private static string? OneReason(BoardAssessment board, ImmutableArray<AssessedReading> readings, VerdictOutcome outcome)
    {
        string? shared = null;
        var count = 0;
        foreach (var reading in readings)
        {
            foreach (var verdict in reading.Verdicts)
            {
                if (verdict.Outcome != outcome || Stands(board, reading, verdict))
                {
                    continue;
                }

                if (verdict.Reason?.Text is not { } reason || (count > 0 && reason != shared))
                {
                    return null;
                }

                shared = reason;
                count++;
            }
        }

        return count > 1 ? shared : null;
    }

    /// <summary>Whether a verdict still stands, so that it is told in full in the row of its part.</summary>
    internal static bool Stands(BoardAssessment board, AssessedReading assessed, Verdict verdict)
    {
        if (assessed.Place is not { } place || board.Place(place.Ref.Value) is not { } history)
        {
            return false;
        }

        foreach (var standing in history.Standing)
        {
            if (ReferenceEquals(standing, verdict))
            {
                return true;
            }
        }

        return false;
    }
}
