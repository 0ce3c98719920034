using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>Which findings no later work answered. Work answers a finding at its own part or place, or at the place it names under 'clears'.</summary>
public static class OpenFindings
{
    /// <summary>Findings still open, oldest first.</summary>
    public static ImmutableArray<Observation> Of(ImmutableArray<BenchVisit> visits)
    {
        var open = new List<Observation>();
        foreach (var visit in visits)
        {
            open.AddRange(visit.Found);
            foreach (var work in visit.Work)
            {
                // Leaving something alone answers a fault, but not something that can hurt.
                open.RemoveAll(finding => Answers(work, finding.At.Value) && (finding.Severity.Value != ObservedSeverity.Safety || work.Did.Value != WorkKind.LeftAlone));
            }

            foreach (var decision in visit.Decided.Where(decision => decision.What.Value is DecisionKind.Keep or DecisionKind.LeaveAlone or DecisionKind.Watch))
            {
                // A person may leave a fault alone with a reason, but not something that can hurt.
                open.RemoveAll(finding => finding.Severity.Value != ObservedSeverity.Safety && (decision.Part?.Value == finding.At.Value || decision.At?.Value == finding.At.Value));
            }
        }

        return [.. open];
    }

    private static bool Answers(WorkEntry work, string at) => work.Part?.Value == at || work.At?.Value == at || work.Clears?.Value == at;
}
