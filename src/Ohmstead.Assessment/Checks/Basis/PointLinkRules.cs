using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>Whether the parts and points that a test point names are there: without them nothing can be computed, and nobody would
/// notice.</summary>
internal static class PointLinkRules
{
    /// <summary>Each name that is not there, with the nearest one that is.</summary>
    /// <param name="points">The points whose names are looked at.</param>
    /// <param name="parts">All parts they may name.</param>
    /// <param name="known">All points they may name.</param>
    internal static IEnumerable<(Written<string> Name, string Message, string NextStep)> Unknown(
        IEnumerable<TestPoint> points,
        KnownNames parts,
        KnownNames known
    )
    {
        foreach (var point in points)
        {
            if (point.Reservoir is { } reservoir && !parts.Holds(reservoir.Value))
            {
                yield return Told(point, reservoir, "reservoir", "part", parts);
            }

            if (point.Input is { } input && !known.Holds(input.Value))
            {
                yield return Told(point, input, "input", "point", known);
            }
        }
    }

    private static (Written<string> Name, string Message, string NextStep) Told(
        TestPoint point,
        Written<string> name,
        string key,
        string what,
        KnownNames known
    )
    {
        var near = known.NearestTo(name.Value);
        return (
            name,
            Nearest.Told($"the {key} of {point.Name.Value} is the {what} '{name.Value}', which is not there", near),
            near is null ? $"add {name.Value} to {what}s, or leave {key} out" : $"write {key}: {near}, or leave {key} out"
        );
    }
}
