namespace Ohmstead.Disk;

/// <summary>What stands at a name of a folder. A link is a link, whatever it leads to.</summary>
internal enum FileKind
{
    /// <summary>Nothing.</summary>
    Missing,

    /// <summary>An ordinary file.</summary>
    File,

    /// <summary>A folder.</summary>
    Folder,

    /// <summary>A symbolic link.</summary>
    Link,

    /// <summary>A pipe, a socket or a device.</summary>
    Other,
}

/// <summary>What the system says of a name of a folder, or of what is open.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Length">How many bytes it has.</param>
internal readonly record struct FileFacts(FileKind Kind, long Length)
{
    /// <summary>Nothing.</summary>
    public static FileFacts None => default;

    /// <summary>By what two names are known to be one thing: the disk, the mount and the number on it. Zeros where the system does not
    /// say.</summary>
    public (ulong Disk, ulong Mount, ulong Number) Identity { get; init; }

    /// <summary>How many names it has.</summary>
    public uint Names { get; init; }

    /// <summary>Its permissions, as the system numbers them.</summary>
    public uint Mode { get; init; }

    /// <summary>Whose it is.</summary>
    public (uint User, uint Group) Owner { get; init; }
}
