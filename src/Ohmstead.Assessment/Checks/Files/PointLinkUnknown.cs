using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Files;

/// <summary>A point names a reservoir or an input that is not there: without it nothing can be computed, and nobody would notice.</summary>
public sealed class PointLinkUnknown : IFileCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "point-link-unknown",
            Severity.Error,
            "a point names a reservoir or an input that is not there",
            CheckEffect.HoldsBack,
            "what a point belongs to is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(FileUnderCheck file)
    {
        if (!file.Points.Any(static point => point.Reservoir is not null || point.Input is not null))
        {
            yield break;
        }

        var parts = new KnownNames(file.PartNames);
        var points = new KnownNames(file.PointNames);
        foreach (var point in file.Points)
        {
            if (point.Reservoir is { } reservoir && !parts.Holds(reservoir.Value) && !file.MayBeUnread(reservoir.Value))
            {
                yield return Unknown(file, point, reservoir, ("reservoir", "part"), parts);
            }

            if (point.Input is { } input && !points.Holds(input.Value) && !file.MayBeUnread(input.Value))
            {
                yield return Unknown(file, point, input, ("input", "point"), points);
            }
        }
    }

    private Finding Unknown(FileUnderCheck file, TestPoint point, Written<string> name, (string Key, string What) link, KnownNames known)
    {
        var near = known.NearestTo(name.Value);
        return file.Finding(
            Description,
            name.Spot,
            Nearest.Told($"the {link.Key} of {point.Name.Value} is the {link.What} '{name.Value}', which is not there", near),
            near is null
                ? $"add {name.Value} to {link.What}s, or leave {link.Key} out"
                : $"write {link.Key}: {near}, or leave {link.Key} out"
        );
    }
}
