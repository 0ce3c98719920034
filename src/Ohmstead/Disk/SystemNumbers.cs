using System.Runtime.InteropServices;

namespace Ohmstead.Disk;

/// <summary>The numbers that Linux and macOS give to what is asked of their calls, as their header files have them.</summary>
internal static class SystemNumbers
{
    // ELF machines of the Arm and Power families have two flags in each other's places.
    private static readonly bool HasArmFlags =
        RuntimeInformation.ProcessArchitecture is Architecture.Arm or Architecture.Arm64 or Architecture.Armv6 or Architecture.Ppc64le;

    /// <summary>Whether what a function takes without naming it lies on the stack.</summary>
    public static bool IsByStack { get; } = OperatingSystem.IsMacOS() && RuntimeInformation.ProcessArchitecture == Architecture.Arm64;

    /// <summary>Whether the plain names of the calls that look stand for an older form.</summary>
    public static bool IsOldMac { get; } = OperatingSystem.IsMacOS() && RuntimeInformation.ProcessArchitecture == Architecture.X64;

    /// <summary>open: no other program that is started gets it.</summary>
    public static int Close { get; } = OperatingSystem.IsLinux() ? 0x80000 : 0x1000000;

    /// <summary>open: a folder or nothing.</summary>
    public static int OnlyFolder { get; } =
        !OperatingSystem.IsLinux() ? 0x100000
        : HasArmFlags ? 0x4000
        : 0x10000;

    /// <summary>open: no link.</summary>
    public static int NoLink { get; } =
        !OperatingSystem.IsLinux() ? 0x100
        : HasArmFlags ? 0x8000
        : 0x20000;

    /// <summary>open: made, and it must be new.</summary>
    public static int New { get; } = OperatingSystem.IsLinux() ? 0xC0 : 0xA00;

    /// <summary>open: nobody is waited for.</summary>
    public static int AtOnce { get; } = OperatingSystem.IsLinux() ? 0x800 : 0x4;

    /// <summary>open: to read and to write.</summary>
    public const int ReadAndWrite = 2;

    /// <summary>unlinkat: a folder.</summary>
    public static int TakeFolder { get; } = OperatingSystem.IsLinux() ? 0x200 : 0x80;

    /// <summary>statx, fstatat: a link itself.</summary>
    public static int LinkItself { get; } = OperatingSystem.IsLinux() ? 0x100 : 0x20;

    /// <summary>statx: what is open, where no name is given.</summary>
    public const int WhatIsOpen = 0x1000;

    /// <summary>statx: what it always says, and the number of the mount.</summary>
    public const uint AllFacts = 0x17FF;

    /// <summary>renameat2: only where nothing has the new name.</summary>
    public static uint NoReplacing { get; } = OperatingSystem.IsLinux() ? 1u : 4u;

    /// <summary>renameat2: each gets the name of the other.</summary>
    public const uint Swap = 2;

    /// <summary>flock: alone, and told at once when another has it.</summary>
    public const int AloneAtOnce = 2 | 4;

    /// <summary>flock: no more.</summary>
    public const int NoMore = 8;

    /// <summary>ENOENT.</summary>
    public const int NotThere = 2;

    /// <summary>EINTR.</summary>
    public const int Interrupted = 4;

    /// <summary>EACCES.</summary>
    public const int NotAllowed = 13;

    /// <summary>EEXIST.</summary>
    public const int Exists = 17;

    /// <summary>EXDEV.</summary>
    public const int OtherDisk = 18;

    /// <summary>ENOTDIR.</summary>
    public const int NoFolder = 20;

    /// <summary>EINVAL.</summary>
    public const int Invalid = 22;

    /// <summary>EROFS.</summary>
    public const int ReadOnlyDisk = 30;

    /// <summary>EMLINK.</summary>
    public const int TooManyNames = 31;

    /// <summary>EPERM.</summary>
    public const int NotPermitted = 1;

    /// <summary>EAGAIN: another has the lock.</summary>
    public static int Taken { get; } = OperatingSystem.IsLinux() ? 11 : 35;

    /// <summary>ELOOP: a link, where none may be.</summary>
    public static int IsLink { get; } = OperatingSystem.IsLinux() ? 40 : 62;

    /// <summary>Whether a folder may not be written into at all.</summary>
    public static bool IsClosed(int error) => error is NotAllowed or NotPermitted or ReadOnlyDisk;

    /// <summary>Whether the system or the disk says that it does not know how to do a thing at all.</summary>
    public static bool IsUnknown(int error) =>
        error == Invalid || error == (OperatingSystem.IsLinux() ? 95 : 45) || error == (OperatingSystem.IsLinux() ? 38 : 78);
}
