namespace Ohmstead.Electronics.Substitution;

/// <summary>What a capacitor does in its place: the same part may be replaced freely in one and not at all in another.</summary>
public enum CapacitorRole
{
    /// <summary>First capacitor after a solid-state rectifier.</summary>
    Reservoir,

    /// <summary>First capacitor after a valve rectifier.</summary>
    ValveReservoir,

    /// <summary>Across a supply rail.</summary>
    Decoupling,

    /// <summary>Passes a signal and blocks d.c.</summary>
    Coupling,

    /// <summary>Sets a time, a sweep or a tone.</summary>
    Timing,

    /// <summary>In a filter with a stated response.</summary>
    Filter,

    /// <summary>In a tuned circuit.</summary>
    Tuned,

    /// <summary>On the output of a switching supply.</summary>
    SwitchingOutput,

    /// <summary>Takes up pulses at a switch or a flyback transformer.</summary>
    Snubber,

    /// <summary>Motor run, crossover: a.c. across it all the time.</summary>
    AlternatingCurrent,

    /// <summary>On the mains, across the line or from line to earth.</summary>
    Safety,

    /// <summary>Anything else, or not told: nothing but the original's own tolerance says how far the value may move.</summary>
    Other,
}
