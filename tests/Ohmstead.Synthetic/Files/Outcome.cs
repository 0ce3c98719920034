namespace Ohmstead.Synthetic.Files;

/// <summary>How the history of a synthetic board ends.</summary>
public enum Outcome
{
    /// <summary>All done and proved.</summary>
    Proved,

    /// <summary>Proved, with readings that could not decide.</summary>
    Undecided,

    /// <summary>Work stopped, waiting for an order.</summary>
    Waiting,

    /// <summary>Worked on and never proved afterwards.</summary>
    Unproved,

    /// <summary>Proved, with a failed reading that nobody answered.</summary>
    FailedReading,

    /// <summary>Proved, with a major finding left open.</summary>
    OpenFinding,
}
