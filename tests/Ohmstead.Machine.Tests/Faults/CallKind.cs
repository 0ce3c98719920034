namespace Ohmstead.Machine.Tests.Faults;

/// <summary>What a call of the system does, as faults.c names it.</summary>
public enum CallKind
{
    /// <summary>Any of them.</summary>
    Any,

    /// <summary>Opens a file or a folder.</summary>
    Open,

    /// <summary>Reads a file.</summary>
    Read,

    /// <summary>Takes the next name out of a folder.</summary>
    List,

    /// <summary>Asks what stands at a name (statx alone, not the older calls).</summary>
    Look,

    /// <summary>Writes a file, cuts it or makes room for it.</summary>
    Write,

    /// <summary>Waits until what was written is on the disk.</summary>
    Sync,

    /// <summary>Gives a file another name.</summary>
    Rename,

    /// <summary>Gives a file a second name, or makes a symbolic link.</summary>
    Link,

    /// <summary>Takes away a file or a folder.</summary>
    Unlink,

    /// <summary>Makes a folder.</summary>
    Mkdir,

    /// <summary>Sets permissions or an owner.</summary>
    Mode,

    /// <summary>Takes an advisory lock or gives it back.</summary>
    Lock,

    /// <summary>Closes what is open.</summary>
    Close,
}
