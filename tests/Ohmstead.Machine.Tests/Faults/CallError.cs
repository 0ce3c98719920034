namespace Ohmstead.Machine.Tests.Faults;

/// <summary>What a call comes to: the numbers of Linux, and four of our own.</summary>
public enum CallError
{
    /// <summary>The call never comes back, as on a disk that is not there any more.</summary>
    Hangs = -4,

    /// <summary>The process is gone with the call done (kill -9).</summary>
    KilledAfter = -3,

    /// <summary>The process is gone before the call is done (kill -9).</summary>
    KilledBefore = -2,

    /// <summary>Half of what was given is written, and that is what the call says.</summary>
    Half = -1,

    /// <summary>It goes on untouched, which is of use where a link is put in its way.</summary>
    None = 0,

    /// <summary>ENOENT.</summary>
    NotThere = 2,

    /// <summary>EIO.</summary>
    InputOutput = 5,

    /// <summary>EACCES.</summary>
    NotAllowed = 13,

    /// <summary>EMFILE.</summary>
    TooManyOpen = 24,

    /// <summary>ENOSPC.</summary>
    NoSpace = 28,

    /// <summary>EROFS.</summary>
    ReadOnly = 30,
}
