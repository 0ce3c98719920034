using System.Runtime.InteropServices;
using System.Text;

namespace Ohmstead.Devices;

/// <summary>The terminal that a person sits at: its keys as bytes, its size, its modes. However the program ends, the modes are put
/// back.</summary>
/// <remarks>The framework's own console is not asked: it puts the keypad into a mode of its own as soon as it is, and leaves it
/// there.</remarks>
internal sealed class TerminalDevice : IDisposable
{
    private const int Keys = 0;
    private const int Screen = 1;
    private static readonly byte[] PasteTold = Encoding.ASCII.GetBytes("\e[?2004h");
    private static readonly byte[] PasteUntold = Encoding.ASCII.GetBytes("\e[?2004l");

    private readonly Lock gate = new();
    private readonly LineModes found;
    private readonly LineModes typing;
    private readonly LineModes working;
    private readonly bool hasPaste;
    private readonly List<PosixSignalRegistration> registrations = [];
    private LineModes inForce;
    private LineModes? asSet;
    private volatile bool isChanged;
    private bool isOver;

    private TerminalDevice(LineModes found, bool hasPaste)
    {
        this.found = found;
        inForce = found;
        this.hasPaste = hasPaste;
        typing = found.ByteByByte(hasSignals: false);
        working = found.ByteByByte(hasSignals: true);
        AppDomain.CurrentDomain.ProcessExit += AtExit;
        // The system's own answer follows, and ends it.
        registrations.Add(PosixSignalRegistration.Create(PosixSignal.SIGQUIT, _ => Put(found)));
        if (!OperatingSystem.IsWindows())
        {
            registrations.Add(PosixSignalRegistration.Create(PosixSignal.SIGWINCH, _ => isChanged = true));
        }
    }

    /// <summary>Whether keys and screen are a terminal whose cursor can be moved.</summary>
    /// <param name="kind">The kind of terminal, as the environment tells it.</param>
    public static bool IsThere(string? kind) =>
        LineModes.IsKnown && kind is not (null or "" or "dumb" or "unknown") && IsTerminal(Keys) && IsTerminal(Screen);

    /// <summary>Whether an open file is a terminal.</summary>
    public static bool IsTerminal(int file) => !OperatingSystem.IsWindows() && DeviceCalls.IsTerminal(file) == 1;

    /// <summary>Opens it; null where there is none.</summary>
    /// <param name="kind">The kind of terminal, as the environment tells it.</param>
    public static TerminalDevice? Open(string? kind) =>
        IsThere(kind) && LineModes.From(Keys) is { } modes
            // What a terminal of glass does not know it may print.
            ? new(modes, !kind!.StartsWith("vt", StringComparison.Ordinal))
            : null;

    /// <summary>Columns and rows; 80 and 24 where the terminal does not tell.</summary>
    public static (int Columns, int Rows) Size => SizeOf(Screen) ?? (80, 24);

    /// <summary>Columns and rows of the terminal that a file is, or null.</summary>
    public static (int Columns, int Rows)? SizeOf(int file)
    {
        if (OperatingSystem.IsWindows())
        {
            return null;
        }

        var what = OperatingSystem.IsMacOS() ? 0x40087468u : 0x5413u;
        Span<ushort> size = stackalloc ushort[4];
        var isTold =
            OperatingSystem.IsMacOS() && RuntimeInformation.ProcessArchitecture == Architecture.Arm64
                ? DeviceCalls.AskByStack(file, what, 0, 0, 0, 0, 0, 0, size) == 0
                : DeviceCalls.Ask(file, what, size) == 0;
        return isTold && size[1] > 0 ? (size[1], size[0] > 0 ? size[0] : 24) : null;
    }

    /// <summary>Takes every key from now on, Ctrl-C too.</summary>
    public void Type() => Put(typing);

    /// <summary>Something is worked at: keys wait, and Ctrl-C ends the program as everywhere.</summary>
    public void Work() => Put(working);

    /// <summary>Waits for keys.</summary>
    /// <param name="bytes">Where they are put.</param>
    /// <returns>How many; 0 when the terminal has changed and is to be drawn again, -1 when it is gone.</returns>
    public int Read(Span<byte> bytes)
    {
        while (true)
        {
            if (isChanged)
            {
                isChanged = false;
                return 0;
            }

            if (!IsWaiting(250))
            {
                LookAfter();
                continue;
            }

            var count = DeviceCalls.Read(Keys, bytes, bytes.Length);
            if (count < 0 && Marshal.GetLastPInvokeError() is 4 or 11 or 35)
            {
                continue;
            }

            return count > 0 ? (int)count : -1;
        }
    }

    /// <summary>Takes what was typed so far, and looks whether Ctrl-C was among it; everything else is dropped.</summary>
    public static bool IsStopped()
    {
        Span<byte> bytes = stackalloc byte[256];
        var isStopped = false;
        while (IsWaiting(0) && DeviceCalls.Read(Keys, bytes, bytes.Length) is > 0 and var count)
        {
            isStopped |= bytes[..(int)count].Contains((byte)3);
        }

        return isStopped;
    }

    /// <summary>Stops the program as Ctrl-Z does, with the modes that were found; returns when it goes on.</summary>
    public void Suspend()
    {
        Put(found);
        // The whole group, as the terminal does it: whoever started the program stops as well.
        _ = DeviceCalls.Signal(0, OperatingSystem.IsMacOS() ? 18 : 20);
        Put(typing);
        isChanged = true;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Put(found);
        lock (gate)
        {
            isOver = true;
        }

        AppDomain.CurrentDomain.ProcessExit -= AtExit;
        registrations.ForEach(registration => registration.Dispose());
    }

    private static bool IsWaiting(int milliseconds)
    {
        Span<PolledFile> file = [new(Keys, PolledFile.Something, 0)];
        return DeviceCalls.Poll(file, 1, milliseconds) > 0;
    }

    private void AtExit(object? sender, EventArgs e) => Dispose();

    // Somebody stopped the program from outside, or another program has been at the terminal: it is looked at while nothing is typed, since
    // the framework's own answer to being continued is to change the terminal too.
    private void LookAfter()
    {
        lock (gate)
        {
            if (isOver || ReferenceEquals(inForce, found) || LineModes.From(Keys) is not { } now || now.IsAs(asSet))
            {
                return;
            }

            var wanted = inForce;
            inForce = found;
            Put(wanted);
            isChanged = true;
        }
    }

    private void Put(LineModes modes)
    {
        lock (gate)
        {
            if (isOver || ReferenceEquals(inForce, modes))
            {
                return;
            }

            _ = modes.Set(Keys);
            if (hasPaste && (ReferenceEquals(modes, found) || ReferenceEquals(inForce, found)))
            {
                var told = ReferenceEquals(modes, found) ? PasteUntold : PasteTold;
                _ = DeviceCalls.Write(Screen, told, told.Length);
            }

            inForce = modes;
            // Where the framework has changed them in between, they are not what was set: then they are set again while nothing is typed.
            asSet = LineModes.From(Keys) is { } now && now.TakesLines == modes.TakesLines ? now : null;
        }
    }
}
