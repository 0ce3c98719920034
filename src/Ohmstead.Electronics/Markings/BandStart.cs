namespace Ohmstead.Electronics.Markings;

/// <summary>Whether it is known at which end the bands start.</summary>
public enum BandStart
{
    /// <summary>Not known: worn, evenly spaced, or seen in a photograph. Both directions are read.</summary>
    Unknown,

    /// <summary>The first colour given is known to be the first band (nearer to an end, or the gap is before the last one).</summary>
    Known,
}
