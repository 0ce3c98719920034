using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;
using Ohmstead.Devices;

namespace Ohmstead.Tests.Support;

/// <summary>A terminal without glass: what a program sends to it is read here, and keys are sent to it.</summary>
/// <remarks>Nothing here waits for a time: whoever types waits first for what the program shows.</remarks>
internal sealed partial class PseudoTerminal : IDisposable
{
    private const int ReadAndWrite = 2;
    private const int NoTerminal = 0x100;

    // What is started has no share in the other side, or the terminal would never be gone.
    private const int Close = 0x80000;

    private readonly SafeFileHandle master;
    private readonly FileStream stream;
    private readonly StringBuilder shown = new();
    private readonly Decoder decoder = Encoding.UTF8.GetDecoder();
    private int seen;

    private PseudoTerminal(SafeFileHandle master, string name)
    {
        this.master = master;
        Name = name;
        stream = new(master, FileAccess.ReadWrite, bufferSize: 0);
    }

    /// <summary>The path of the terminal, such as <c>/dev/pts/3</c>.</summary>
    public string Name { get; }

    /// <summary>All that was sent to it.</summary>
    public string Shown => shown.ToString();

    private static CancellationToken GivenUp => TestContext.Current.CancellationToken;

    /// <summary>Opens one of some size.</summary>
    public static PseudoTerminal Open(int columns = 80, int rows = 24)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "a pseudo terminal is opened as Linux does it");
        var number = OpenMaster(ReadAndWrite | NoTerminal | Close);
        Assert.Equal((0, 0), (Grant(number), Unlock(number)));
        var name = new byte[256];
        Assert.Equal(0, NameOf(number, name, name.Length));
        Span<ushort> size = [(ushort)rows, (ushort)columns, 0, 0];
        Assert.Equal(0, SetSize(number, 0x5414, size));
        return new(number, Encoding.ASCII.GetString(name, 0, Array.IndexOf(name, (byte)0)));
    }

    /// <summary>Starts a line of shell whose terminal it is, in which $ohmstead stands for the program. It has no colours unless a test
    /// asks for them with an empty NO_COLOR: what is shown is the same then whoever runs the tests, and stands together.</summary>
    public Process Start(string line, string folder, params (string Name, string Value)[] environment) =>
        Child.Start(
            $"exec setsid --ctty --wait sh -c 'exec sh -c \"$line\" < {Name} > {Name} 2>&1' < {Name}",
            folder,
            [("line", line), ("TERM", "xterm-256color"), ("HOME", "/nowhere"), ("NO_COLOR", "1"), .. environment]
        );

    /// <summary>Sends keys.</summary>
    public void Type(string keys) => stream.Write(Encoding.UTF8.GetBytes(keys));

    /// <summary>Waits until something is shown behind what was waited for before, and gives all that came until then.</summary>
    public async Task<string> UntilAsync(string text)
    {
        var bytes = new byte[4096];
        while (true)
        {
            var at = Shown.IndexOf(text, seen, StringComparison.Ordinal);
            if (at >= 0)
            {
                var came = Shown[seen..(at + text.Length)];
                seen = at + text.Length;
                return came;
            }

            var count = await Task.Run(() => Read(bytes), GivenUp);
            if (count == 0)
            {
                throw new InvalidOperationException($"'{text}' was never shown, but: {Shown[seen..].Replace('\e', '^')}");
            }

            var chars = new char[count];
            shown.Append(chars, 0, decoder.GetChars(bytes, 0, count, chars, 0));
        }
    }

    /// <summary>Waits until nobody has the terminal open any more, and gives all that came until then.</summary>
    public async Task<string> EndAsync()
    {
        var bytes = new byte[4096];
        while (await Task.Run(() => Read(bytes), GivenUp) is > 0 and var count)
        {
            var chars = new char[count];
            shown.Append(chars, 0, decoder.GetChars(bytes, 0, count, chars, 0));
        }

        return Shown[seen..];
    }

    /// <summary>Its modes.</summary>
    public LineModes Modes => Assert.IsType<LineModes>(LineModes.From(master.DangerousGetHandle().ToInt32()));

    /// <summary>Whether what is typed is echoed and comes line by line, as it was before anybody changed it.</summary>
    public bool IsAsItWas()
    {
        var modes = new byte[256];
        Assert.Equal(0, DeviceCalls.GetModes(master.DangerousGetHandle().ToInt32(), modes));
        var local = BitConverter.ToUInt32(modes, 12);
        // ISIG, ICANON, ECHO of Linux.
        return (local & 0xB) == 0xB;
    }

    /// <inheritdoc/>
    public void Dispose() => stream.Dispose();

    // The end of a terminal is an error to whoever reads its other side.
    private int Read(byte[] bytes)
    {
        try
        {
            return stream.Read(bytes);
        }
        catch (IOException)
        {
            return 0;
        }
    }

    [LibraryImport("libc", EntryPoint = "posix_openpt")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial SafeFileHandle OpenMaster(int flags);

    [LibraryImport("libc", EntryPoint = "grantpt")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Grant(SafeFileHandle master);

    [LibraryImport("libc", EntryPoint = "unlockpt")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Unlock(SafeFileHandle master);

    [LibraryImport("libc", EntryPoint = "ptsname_r")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int NameOf(SafeFileHandle master, byte[] name, nint length);

    [LibraryImport("libc", EntryPoint = "ioctl")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int SetSize(SafeFileHandle master, nuint what, Span<ushort> size);
}
