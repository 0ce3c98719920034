namespace Ohmstead.Records.Model;

/// <summary>What a part does in its place.</summary>
public enum PartRole
{
    /// <summary>The first capacitor after a rectifier.</summary>
    Reservoir,

    /// <summary>Across a supply rail.</summary>
    Decoupling,

    /// <summary>Passes a signal and blocks d.c.</summary>
    Coupling,

    /// <summary>Sets a time, a sweep or a tone.</summary>
    Timing,

    /// <summary>In a filter with a stated response.</summary>
    Filter,

    /// <summary>In a tuned circuit.</summary>
    Tuning,

    /// <summary>Takes up pulses at a switch or a flyback transformer.</summary>
    Snubber,

    /// <summary>On the mains, across the line or from line to earth.</summary>
    MainsSuppression,

    /// <summary>In the path that feeds an output back.</summary>
    Feedback,

    /// <summary>Sets a working point.</summary>
    Bias,

    /// <summary>Takes the current of a stage or a supply.</summary>
    Load,

    /// <summary>Lets a charge down.</summary>
    Bleeder,

    /// <summary>Something else.</summary>
    Other,
}

/// <summary>What follows from what a part does.</summary>
public static class PartRoles
{
    /// <summary>Whether the inductance of a winding matters there.</summary>
    public static bool MindsInductance(this PartRole role) =>
        role is PartRole.Coupling or PartRole.Tuning or PartRole.Snubber or PartRole.Feedback;
}
