using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Obligations.Basis;

/// <summary>What a rule of obligations sees.</summary>
/// <param name="Under">The board as the checks see it.</param>
/// <param name="Findings">What reading and checking the board's record found.</param>
/// <param name="Shared">What was found in the files that boards share.</param>
public sealed record BoardUnderObligation(BoardUnderCheck Under, ImmutableArray<Finding> Findings, SharedFaults Shared)
{
    private EntriesInOrder? entries;
    private ILookup<string, DoneWork>? workAt;
    private ILookup<string, AssessedReading>? readingsOf;

    /// <summary>Everything computed about the board.</summary>
    public BoardAssessment Board => Under.Assessment;

    /// <summary>What boards refer to.</summary>
    public Workshop Workshop => Under.Workshop;

    /// <summary>The day of this run.</summary>
    public DateOnly Today => Under.Today;

    /// <summary>The day before which the board is taken as told; null when it is judged in full, as any is whose record holds an error:
    /// what it would have said of a danger is not known.</summary>
    public DateOnly? ToldBefore =>
        Findings.Any(static finding => finding.Severity == Severity.Error)
            ? null
            : History.ToldBefore.Day(Board.Board, Workshop.Collection, Today);

    /// <summary>The work on a part, or at a place where it names no part, in order of time.</summary>
    internal IEnumerable<DoneWork> WorkAt(string place) =>
        (
            workAt ??= Board
                .Visits.SelectMany((visit, order) => visit.Work.Select(work => new DoneWork(order, visit, work)))
                .Where(static done => (done.Work.Part ?? done.Work.At) is not null)
                .ToLookup(static done => (done.Work.Part ?? done.Work.At)!.Value, StringComparer.Ordinal)
        )[place];

    /// <summary>The readings that name a part, oldest first.</summary>
    internal IEnumerable<AssessedReading> ReadingsOf(string part) =>
        (
            readingsOf ??= Board
                .Readings.Where(static reading => reading.Reading.Part is not null)
                .ToLookup(static reading => reading.Reading.Part!.Value, StringComparer.Ordinal)
        )[part];

    /// <summary>The part or point that the entry is about in which something stands, or null when it is about none.</summary>
    internal string? PlaceAt(Place place)
    {
        if (place.Path != Board.Board.Path)
        {
            return null;
        }

        return (entries ??= new(Entries())).At(place);
    }

    /// <summary>What a reading shows, as evidence.</summary>
    internal Evidence By(AssessedReading reading, Verdicts.Verdict verdict) =>
        new(
            reading.Corrects is null ? LazyText.For(verdict, static one => one.Why) : CorrectionWords.Beside(verdict.Why, reading),
            reading.Visit.Date.Value,
            reading.Reading.Spot,
            PathOf(reading)
        )
        {
            Kind = EvidenceKind.Reading,
            Verdict = reading.Corrects is null ? verdict : null,
        };

    /// <summary>A reading as evidence.</summary>
    internal Evidence By(AssessedReading reading) =>
        new(LazyText.For(reading, Words), reading.Visit.Date.Value, reading.Reading.Spot, PathOf(reading)) { Kind = EvidenceKind.Reading };

    /// <summary>A proof as evidence.</summary>
    internal Evidence By(AssessedProof proof) => By(proof, LazyText.For(proof, Words));

    /// <summary>A proof as evidence of one thing that it shows.</summary>
    internal Evidence By(AssessedProof proof, LazyText words) =>
        new(words, proof.Visit.Date.Value, proof.Proof.Spot, Board.Board.Path) { Kind = EvidenceKind.Proof };

    /// <summary>Work as evidence.</summary>
    internal Evidence By(WorkEntry work, BenchVisit visit) => By(work, visit, LazyText.For(work, Words));

    /// <summary>Work as evidence of one thing that its entry says.</summary>
    internal Evidence By(WorkEntry work, BenchVisit visit, LazyText words) =>
        new(words, visit.Date.Value, work.Spot, Board.Board.Path) { Kind = EvidenceKind.Work };

    /// <summary>A decision as evidence.</summary>
    internal Evidence By(Decision decision, DateOnly day) =>
        new(
            LazyText.For(decision, static one => $"decided: {one.What.Text}, because {one.Because.Value}"),
            day,
            decision.Spot,
            Board.Board.Path
        )
        {
            Kind = EvidenceKind.Decision,
        };

    /// <summary>What the record says of the board itself, as evidence.</summary>
    internal Evidence ByTheRecord(LazyText words, Spot spot) => new(words, null, spot, Board.Board.Path);

    /// <summary>What the record or its design says of a part, as evidence.</summary>
    internal Evidence ByTheRecord(LazyText words, Part part) => new(words, null, part.Spot, part.FromDesign ?? Board.Board.Path);

    /// <summary>A day in a message.</summary>
    internal static string Day(BenchVisit visit) => IsoDate.Text(visit.Date.Value);

    // What begins an entry that is about no place ends what is about the place before it.
    private IEnumerable<(Spot Spot, string? Of)> Entries()
    {
        foreach (var part in Board.Board.Parts)
        {
            yield return (part.Spot, part.Ref.Value);
        }

        foreach (var point in Board.Board.Points)
        {
            yield return (point.Spot, point.Name.Value);
        }

        foreach (var wait in Board.Board.Waiting)
        {
            yield return (wait.Spot, null);
        }

        foreach (var visit in Board.Board.Bench)
        {
            yield return (visit.Spot, null);
            foreach (
                var entry in visit
                    .Found.Select(found => (found.Spot, (string?)found.At.Value))
                    .Concat(visit.Readings.Select(reading => (reading.Spot, (reading.Part ?? reading.Point)?.Value)))
                    .Concat(visit.Work.Select(work => (work.Spot, (work.Part ?? work.At)?.Value)))
                    .Concat(visit.Decided.Select(decision => (decision.Spot, decision.Place?.Value)))
                    .Concat(visit.Proofs.Select(proof => (proof.Spot, (string?)proof.Point.Value)))
            )
            {
                yield return entry;
            }
        }
    }

    // A reading of a lot in the drawer stands in the stock.
    private string PathOf(AssessedReading reading) =>
        reading.VisitOrder < 0 ? Workshop.StockFile?.Path ?? Board.Board.Path : Board.Board.Path;

    private static string Words(AssessedReading reading)
    {
        var of = (reading.Reading.Part ?? reading.Reading.Lot ?? reading.Reading.Point)?.Value;
        var values = string.Join(
            ", ",
            reading.Reading.Values.Select(value => value.Value.Text).Concat(reading.Reading.Result is { } result ? [result.Text] : [])
        );
        return CorrectionWords.Beside($"{of} {(reading.IsNew ? "new, " : string.Empty)}read: {values}", reading);
    }

    private static string Words(AssessedProof proof)
    {
        var values = proof.Proof.Values.Select(value => value.Measured == Measured.Hours ? value.Value.Text + " h" : value.Value.Text);
        var results = proof.Proof.Result is { } result ? values.Append(result.Text) : values;
        return CorrectionWords.Beside($"{proof.Proof.Point.Value} proved: {string.Join(", ", results)}", proof);
    }

    private static string Words(WorkEntry work) =>
        work.Did.Text
        + (work.Lot is { } lot ? " from lot " + lot.Value : string.Empty)
        + (
            work.Polarity.Length > 0
                ? ", way round by " + string.Join(" and ", work.Polarity.Select(evidence => evidence.Text))
                : string.Empty
        )
        + (work.With is { } with ? ", with " + with.Value : string.Empty);
}

/// <summary>Work, and when it was done.</summary>
/// <param name="Order">The place of its visit in time, from 0.</param>
/// <param name="Visit">Its visit.</param>
/// <param name="Work">The work.</param>
internal readonly record struct DoneWork(int Order, BenchVisit Visit, WorkEntry Work);
