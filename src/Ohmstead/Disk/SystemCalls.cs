using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Ohmstead.Disk;

/// <summary>The calls of Linux and macOS that act on a name inside an open folder.</summary>
internal static partial class SystemCalls
{
    private const string Library = "libc";

    [LibraryImport(Library, EntryPoint = "open", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int Open(string path, int flags);

    [LibraryImport(Library, EntryPoint = "openat", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int OpenAt(SafeFileHandle folder, string name, int flags, uint mode);

    /// <summary>The same where what a function takes without naming it lies on the stack: the registers are filled first.</summary>
    [LibraryImport(Library, EntryPoint = "openat", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int OpenAtByStack(
        SafeFileHandle folder,
        string name,
        int flags,
        nint fourth,
        nint fifth,
        nint sixth,
        nint seventh,
        nint eighth,
        uint mode
    );

    [LibraryImport(Library, EntryPoint = "mkdirat", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int MakeAt(SafeFileHandle folder, string name, uint mode);

    [LibraryImport(Library, EntryPoint = "unlinkat", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int UnlinkAt(SafeFileHandle folder, string name, int flags);

    [LibraryImport(Library, EntryPoint = "renameat", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int RenameAt(SafeFileHandle folder, string name, SafeFileHandle to, string newName);

    [LibraryImport(Library, EntryPoint = "renameat2", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int RenameOnLinux(SafeFileHandle folder, string name, SafeFileHandle to, string newName, uint flags);

    [LibraryImport(Library, EntryPoint = "renameatx_np", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int RenameOnMac(SafeFileHandle folder, string name, SafeFileHandle to, string newName, uint flags);

    [LibraryImport(Library, EntryPoint = "linkat", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int LinkAt(SafeFileHandle folder, string name, SafeFileHandle to, string newName, int flags);

    [LibraryImport(Library, EntryPoint = "fsync", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int Sync(SafeFileHandle file);

    [LibraryImport(Library, EntryPoint = "syncfs", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int SyncDisk(SafeFileHandle file);

    [LibraryImport(Library, EntryPoint = "flock", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int Lock(SafeFileHandle file, int operation);

    [LibraryImport(Library, EntryPoint = "fchmod", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int SetMode(SafeFileHandle file, uint mode);

    [LibraryImport(Library, EntryPoint = "fchown", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int SetOwner(SafeFileHandle file, uint user, uint group);

    [LibraryImport(Library, EntryPoint = "geteuid")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial uint User();

    [LibraryImport(Library, EntryPoint = "statx", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int LookOnLinux(SafeFileHandle folder, string name, int flags, uint wanted, Span<byte> facts);

    [LibraryImport(Library, EntryPoint = "fstatat", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int LookOnMac(SafeFileHandle folder, string name, Span<byte> facts, int flags);

    /// <summary>The same on processors where an older form has the plain name.</summary>
    [LibraryImport(Library, EntryPoint = "fstatat$INODE64", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int LookOnOldMac(SafeFileHandle folder, string name, Span<byte> facts, int flags);

    [LibraryImport(Library, EntryPoint = "fstat", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int LookAtOpenOnMac(SafeFileHandle file, Span<byte> facts);

    /// <summary>The same on processors where an older form has the plain name.</summary>
    [LibraryImport(Library, EntryPoint = "fstat$INODE64", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int LookAtOpenOnOldMac(SafeFileHandle file, Span<byte> facts);
}
