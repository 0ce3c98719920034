using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>Where a board has a picture tube, as its record and its design say under their hazards: glass that breaks inwards and is thrown
/// when it is chipped or cracked.</summary>
internal sealed class PictureTubes
{
    private readonly HashSet<string> places = new(StringComparer.Ordinal);

    /// <summary>A board of which nobody says that it has one.</summary>
    internal static PictureTubes None { get; } = new();

    /// <summary>Whether there is one at all, at a place that is named or not.</summary>
    internal bool IsAny { get; private init; }

    /// <summary>Those that the hazards of a record and of its design tell of.</summary>
    internal static PictureTubes Among(IEnumerable<RecordedHazard> hazards)
    {
        PictureTubes? tubes = null;
        foreach (var hazard in hazards)
        {
            if (hazard.Kind.Value == HazardKind.PictureTube)
            {
                tubes ??= new() { IsAny = true };
                if (hazard.At is { } at)
                {
                    tubes.places.Add(at.Value);
                }
            }
        }

        return tubes ?? None;
    }

    /// <summary>Whether one sits at a place.</summary>
    internal bool SitsAt(string place) => places.Contains(place);
}
