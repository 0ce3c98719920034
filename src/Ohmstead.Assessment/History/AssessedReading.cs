using System.Collections.Immutable;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>A reading together with what it was taken of and what it says.</summary>
/// <param name="Visit">The visit to the bench.</param>
/// <param name="VisitOrder">The place of the visit in time, from 0.</param>
/// <param name="Reading">The reading as written.</param>
/// <param name="Place">The place it speaks of, or null when the part is not in the list or it is a reading of a lot alone.</param>
/// <param name="Lot">The lot it was taken of: named by the reading, or sitting in the place at that moment; null for the original
/// part.</param>
/// <param name="Verdicts">One verdict for each value.</param>
public sealed record AssessedReading(
    BenchVisit Visit,
    int VisitOrder,
    Reading Reading,
    Part? Place,
    Lot? Lot,
    ImmutableArray<Verdict> Verdicts
)
{
    /// <summary>When it was taken: where it is written; one taken as left, after the work of its visit at that place.</summary>
    public Moment At { get; init; } = Moment.At(VisitOrder, Reading.TakenAt);

    /// <summary>Since when it is known: since it was taken, and for a correction since that was written.</summary>
    public Moment KnownSince => Known ?? At;

    internal Moment? Known { get; init; }

    /// <summary>What was written wrongly and counts no more, with what it had said; null for nearly all.</summary>
    public AssessedReading? Corrects { get; init; }

    /// <summary>The test point it was taken at, or null when it was taken of a part or the point is not known.</summary>
    public TestPoint? Point { get; init; }

    /// <summary>The visit that had emptied the place, when nothing sat there as the reading was taken; then it is judged against nothing.
    /// Else null.</summary>
    public BenchVisit? EmptiedOn { get; init; }

    /// <summary>True when it was taken of a part before it was fitted: it says so, or it names a lot that does not sit there.</summary>
    public bool IsNew { get; init; } = Reading.State is { Value: ReadingState.New };

    /// <summary>What the reading as a whole says: outside if any value is, else undecided if any is, else the best that was
    /// proved.</summary>
    public VerdictOutcome Overall { get; } = Outcomes.Together(Verdicts, Reading.Result);
}

/// <summary>A proof entry together with what it says.</summary>
/// <param name="Visit">The visit to the bench.</param>
/// <param name="VisitOrder">The place of the visit in time, from 0.</param>
/// <param name="Proof">The entry as written.</param>
/// <param name="Point">The test point, or null when it is not known.</param>
/// <param name="Verdicts">One verdict for each value.</param>
public sealed record AssessedProof(BenchVisit Visit, int VisitOrder, Proof Proof, TestPoint? Point, ImmutableArray<Verdict> Verdicts)
{
    /// <summary>When it was proved.</summary>
    public Moment At { get; } = Moment.At(VisitOrder, Proof.TakenAt);

    /// <summary>What was written wrongly and counts no more, with what it had said; null for nearly all.</summary>
    public AssessedProof? Corrects { get; init; }

    /// <summary>What the entry as a whole says; inside means passed.</summary>
    public VerdictOutcome Outcome { get; } = Outcomes.Together(Verdicts, Proof.Result);
}
