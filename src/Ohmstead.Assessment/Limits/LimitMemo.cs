using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>Keeps in mind the limits of marks that come again: the same mark read in the same way comes by the thousand, and its limits and
/// their words are the same.</summary>
/// <remarks>Used by one thread at a time. A table whose keys are values would be compiled anew at each start, so each mark has a list of
/// the few ways in which it is read.</remarks>
/// <param name="most">How many questions it keeps; at one more it starts anew, so that memory stays as it is however many marks a
/// collection has.</param>
public sealed class LimitMemo(int most = LimitMemo.Usual)
{
    // A collection of some thousand boards asks about 650 questions.
    private const int Usual = 1_024;

    private readonly Dictionary<IMarkedPart, List<Asked>> known = new(MarkingComparer.Instance);
    private int count;

    // The values of one reading are of one part.
    private IMarkedPart? lastPart;
    private List<Asked> lastAsked = [];

    /// <summary>The limits that apply, as <see cref="PartLimits"/> gives them.</summary>
    /// <param name="part">What the part is.</param>
    /// <param name="place">Where a circuit limit comes from, or null for a part that lies in the drawer.</param>
    /// <param name="measured">What was measured.</param>
    /// <param name="how">How it was measured.</param>
    public ImmutableArray<Limit> For(IMarkedPart part, string? place, Measured measured, ReadingConditions how)
    {
        var asked = ReferenceEquals(lastPart, part) ? lastAsked : AskedOf(part);
        for (var at = 0; at < asked.Count; at++)
        {
            if (asked[at].Measured == measured && asked[at].Place == place && asked[at].How.IsSameAs(how))
            {
                return asked[at].Limits;
            }
        }

        if (count == most)
        {
            known.Clear();
            count = 0;
            asked = AskedOf(part);
        }

        var limits = PartLimits.For(part, place, measured, how);
        asked.Add(new(place, measured, how, limits));
        count++;
        return limits;
    }

    private List<Asked> AskedOf(IMarkedPart part)
    {
        if (!known.TryGetValue(part, out var asked))
        {
            known.Add(part, asked = []);
        }

        (lastPart, lastAsked) = (part, asked);
        return asked;
    }

    private sealed record Asked(string? Place, Measured Measured, ReadingConditions How, ImmutableArray<Limit> Limits);
}
