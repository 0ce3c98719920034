using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Ohmstead.Devices;

/// <summary>The calls of Linux and macOS about terminals and serial ports.</summary>
internal static partial class DeviceCalls
{
    private const string Library = "libc";

    [LibraryImport(Library, EntryPoint = "isatty")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int IsTerminal(int file);

    [LibraryImport(Library, EntryPoint = "tcgetattr", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int GetModes(int file, Span<byte> modes);

    [LibraryImport(Library, EntryPoint = "tcsetattr", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int SetModes(int file, int when, ReadOnlySpan<byte> modes);

    [LibraryImport(Library, EntryPoint = "cfmakeraw")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial void MakeRaw(Span<byte> modes);

    [LibraryImport(Library, EntryPoint = "cfsetispeed", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int SetInputSpeed(Span<byte> modes, nuint speed);

    [LibraryImport(Library, EntryPoint = "cfsetospeed", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int SetOutputSpeed(Span<byte> modes, nuint speed);

    [LibraryImport(Library, EntryPoint = "tcflush", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int Drop(int file, int which);

    [LibraryImport(Library, EntryPoint = "poll", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int Poll(Span<PolledFile> files, nuint count, int milliseconds);

    [LibraryImport(Library, EntryPoint = "read", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial nint Read(int file, Span<byte> bytes, nint count);

    [LibraryImport(Library, EntryPoint = "write", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial nint Write(int file, ReadOnlySpan<byte> bytes, nint count);

    [LibraryImport(Library, EntryPoint = "open", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial SafeFileHandle Open(string path, int flags);

    [LibraryImport(Library, EntryPoint = "kill", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int Signal(int process, int signal);

    [LibraryImport(Library, EntryPoint = "ioctl", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int Ask(int file, nuint what, Span<ushort> answer);

    /// <summary>The same where what a function takes without naming it lies on the stack: the registers are filled first.</summary>
    [LibraryImport(Library, EntryPoint = "ioctl", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    internal static partial int AskByStack(
        int file,
        nuint what,
        nint third,
        nint fourth,
        nint fifth,
        nint sixth,
        nint seventh,
        nint eighth,
        Span<ushort> answer
    );
}

/// <summary>One file that is waited for, as poll takes it.</summary>
/// <param name="File">Its number.</param>
/// <param name="Wanted">What is waited for.</param>
/// <param name="Came">What came.</param>
[StructLayout(LayoutKind.Sequential)]
internal record struct PolledFile(int File, short Wanted, short Came)
{
    /// <summary>POLLIN: something to read.</summary>
    public const short Something = 1;

    /// <summary>POLLOUT: room to write.</summary>
    public const short Room = 4;
}
