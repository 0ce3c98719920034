using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>A finding and what answers it.</summary>
/// <param name="Visit">The visit at which it was seen.</param>
/// <param name="At">When it was seen.</param>
/// <param name="Finding">The finding as written.</param>
/// <param name="Part">The part that it was seen at, or null when its place is none.</param>
public sealed record AnsweredFinding(BenchVisit Visit, Moment At, Observation Finding, Part? Part)
{
    /// <summary>The work that answered it, or null.</summary>
    public WorkEntry? Work { get; init; }

    /// <summary>The decision that answered it, or null.</summary>
    public Decision? Decision { get; init; }

    /// <summary>The visit of the work or decision that answered it, or null.</summary>
    public BenchVisit? On { get; init; }

    /// <summary>When that work was done or that decision made; before the first visit while nothing answers it.</summary>
    internal Moment AnsweredAt { get; init; } = Moment.AsItCame;

    /// <summary>The last work there that could not answer it, or null: it is told, so that nobody thinks it was overlooked.</summary>
    public WorkEntry? InVain { get; init; }

    /// <summary>True while nothing answers it.</summary>
    public bool IsOpen => On is null;

    /// <summary>True when a board is not fit to run before it is answered.</summary>
    public bool MustBeAnswered => Weight is ObservedSeverity.Major or ObservedSeverity.Safety;

    /// <summary>How much it matters: as written, or more where its words are never little (<see cref="FindingWeight"/>).</summary>
    public ObservedSeverity Weight { get; init; } = Finding.Severity.Value;

    /// <summary>Whether it is glass that may break inwards: of a picture tube, chipped or cracked.</summary>
    internal bool MayBreakInwards { get; init; }

    /// <summary>What sort of trouble it is. Nothing makes broken glass whole.</summary>
    internal Trouble Trouble => MayBreakInwards ? Trouble.SpentPart : Troubles.Find(Finding, Part);

    /// <summary>
    /// All findings of a board, oldest first. Work answers a finding at its own part or place, or at the place it names under 'clears',
    /// when it was done after the finding and is such that it can close it (<see cref="ClosingWork"/>); a decision with a reason answers
    /// what cannot hurt.
    /// </summary>
    internal static ImmutableArray<AnsweredFinding> Collect(
        ImmutableArray<BenchVisit> visits,
        Timeline timeline,
        IReadOnlyDictionary<string, Part> parts,
        PictureTubes tubes
    )
    {
        var found = new List<AnsweredFinding>();
        var open = new Dictionary<string, List<int>>(StringComparer.Ordinal);
        for (var order = 0; order < visits.Length; order++)
        {
            foreach (var finding in visits[order].Found)
            {
                var part = parts.GetValueOrDefault(finding.At.Value);
                var weight = FindingWeight.Weigh(finding, part, tubes);
                OpenAt(open, finding.At.Value).Add(found.Count);
                found.Add(
                    new(visits[order], Moment.At(order, finding.Spot), finding, part)
                    {
                        Weight = weight,
                        MayBreakInwards =
                            weight == ObservedSeverity.Safety
                            && FindingWeight.MayBreakInwards(finding.What.Value, finding.At.Value, part, tubes),
                    }
                );
            }

            if (found.Count == 0)
            {
                continue;
            }

            foreach (var work in visits[order].Work)
            {
                foreach (var place in PlacesOf(work.Part, work.At, work.Clears))
                {
                    Answer(found, OpenAt(open, place), work, visits[order], Moment.At(order, work.Spot), timeline);
                }
            }

            foreach (var decision in visits[order].Decided)
            {
                foreach (var place in PlacesOf(decision.Part, decision.At, null))
                {
                    Answer(found, OpenAt(open, place), decision, visits[order], Moment.At(order, decision.Spot));
                }
            }
        }

        return [.. found];
    }

    private static List<int> OpenAt(Dictionary<string, List<int>> open, string place)
    {
        if (!open.TryGetValue(place, out var there))
        {
            open[place] = there = [];
        }

        return there;
    }

    private static IEnumerable<string> PlacesOf(Written<string>? part, Written<string>? at, Written<string>? clears)
    {
        if (part is not null)
        {
            yield return part.Value;
        }

        if (at is not null && at.Value != part?.Value)
        {
            yield return at.Value;
        }

        if (clears is not null && clears.Value != part?.Value && clears.Value != at?.Value)
        {
            yield return clears.Value;
        }
    }

    private static void Answer(List<AnsweredFinding> found, List<int> there, WorkEntry work, BenchVisit visit, Moment at, Timeline timeline)
    {
        foreach (var i in there)
        {
            var finding = found[i];
            if (finding.IsOpen && IsAnsweredFrom(work, finding) && at > finding.At && !timeline.IsUndone(work))
            {
                found[i] = CanClose(work, finding)
                    ? finding with
                    {
                        Work = work,
                        On = visit,
                        AnsweredAt = at,
                    }
                    : finding with
                    {
                        InVain = work,
                    };
            }
        }

        there.RemoveAll(i => !found[i].IsOpen);
    }

    private static void Answer(List<AnsweredFinding> found, List<int> there, Decision decision, BenchVisit visit, Moment at)
    {
        if (!decision.What.Value.LetsStay() || !decision.GivesAReason)
        {
            return;
        }

        foreach (var i in there)
        {
            // A person may leave a fault alone with a reason, but not something that can hurt.
            if (
                found[i].IsOpen
                && found[i].Weight != ObservedSeverity.Safety
                && at > found[i].At
                && decision.Place?.Value == found[i].Finding.At.Value
            )
            {
                found[i] = found[i] with { Decision = decision, On = visit, AnsweredAt = at };
            }
        }
    }

    // Work elsewhere may answer a fault, but a part that is spent goes itself.
    private static bool IsAnsweredFrom(WorkEntry work, AnsweredFinding finding)
    {
        var at = finding.Finding.At.Value;
        // Work on one part that names another as its place is work on the first.
        var isThere = finding is { Part: not null, MustBeAnswered: true }
            ? (work.Part ?? work.At)?.Value == at
            : work.Part?.Value == at || work.At?.Value == at;
        return isThere || (work.Clears?.Value == at && (!finding.MustBeAnswered || MayBeElsewhere(work, finding)));
    }

    // What can hurt is made safe where it is; what makes metal live may sit anywhere, and a test follows. Dirt is wiped where it lies, or
    // goes with a wash of all.
    private static bool MayBeElsewhere(WorkEntry work, AnsweredFinding finding) =>
        finding.Trouble switch
        {
            Trouble.SpentPart => false,
            Trouble.LiveMetal => true,
            Trouble.Dirt => (work.Part ?? work.At) is null || work.Did.Value is not (WorkKind.Cleaned or WorkKind.Washed),
            _ => finding.Weight != ObservedSeverity.Safety,
        };

    // What need not be answered is answered by any work; a fault that is left alone wants the reason beside it.
    private static bool CanClose(WorkEntry work, AnsweredFinding finding) =>
        finding.Weight switch
        {
            ObservedSeverity.Note or ObservedSeverity.Minor => true,
            ObservedSeverity.Major when work.Did.Value == WorkKind.LeftAlone => work.Explanation is not null,
            ObservedSeverity.Major or ObservedSeverity.Safety => Closes(work.Did.Value, finding, finding.Trouble),
        };

    private static bool Closes(WorkKind work, AnsweredFinding finding, Trouble trouble) =>
        trouble == Trouble.Other && finding.Part is { } part && PartKind.IsSafetyRelevant(part.Values)
            ? ClosingWork.ClosesAtASafetyPart(work)
            : ClosingWork.Closes(work, trouble, finding.Weight, CanGo(finding, trouble));

    // A part that is listed can go. So can one that nobody listed, when its words say that it is one; what is named after a place stays
    // there.
    private static bool CanGo(AnsweredFinding finding, Trouble trouble) =>
        finding.Part is { } part
            ? part.Values.Kind.Value != PartKinds.Connector
            : trouble == Trouble.SpentPart && !Troubles.NamesAPlace(finding.Finding.At.Value);
}
