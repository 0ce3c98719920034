using System.Buffers.Binary;
using System.Runtime.InteropServices;

namespace Ohmstead.Devices;

/// <summary>The modes of a terminal or a serial port, in the form that the system keeps them in.</summary>
/// <remarks>The form is asked for and given back as it is; of its inside only the few bits are known that are changed here: those of
/// <c>termios.h</c> on Linux (x86, Arm, RISC-V) and on macOS.</remarks>
internal sealed class LineModes
{
    // Larger than the form of any system.
    private const int Room = 256;

    private static readonly bool IsMac = OperatingSystem.IsMacOS();

    private readonly byte[] form;

    private LineModes(byte[] form) => this.form = form;

    /// <summary>Whether the form is known here at all.</summary>
    public static bool IsKnown =>
        IsMac
        || OperatingSystem.IsLinux()
            && RuntimeInformation.ProcessArchitecture
                is Architecture.X64
                    or Architecture.X86
                    or Architecture.Arm
                    or Architecture.Arm64
                    or Architecture.RiscV64;

    /// <summary>The modes of an open file; null where it is no terminal and no serial port.</summary>
    public static LineModes? From(int file)
    {
        var found = new byte[Room];
        return IsKnown && DeviceCalls.GetModes(file, found) == 0 ? new(found) : null;
    }

    /// <summary>Puts these modes in force, after what was written has gone out; what was typed stays.</summary>
    /// <returns>False where the system refuses.</returns>
    public bool Set(int file)
    {
        const int afterOutput = 1;
        return DeviceCalls.SetModes(file, afterOutput, form) == 0;
    }

    /// <summary>Whether both are the same.</summary>
    public bool IsAs(LineModes? other) => other is not null && form.AsSpan().SequenceEqual(other.form);

    /// <summary>Whether what is typed is handed over a line at a time.</summary>
    public bool TakesLines => (Read(form, IsMac ? 24 : 12) & (IsMac ? 0x100u : 2u)) != 0;

    /// <summary>Every byte as it comes, nothing echoed. What is printed is still treated as before, so that a line end is one.</summary>
    /// <param name="hasSignals">Whether Ctrl-C and its kin still send signals.</param>
    public LineModes ByteByByte(bool hasSignals)
    {
        var raw = Raw();
        Change(raw, IsMac ? 8 : 4, 0, Read(form, IsMac ? 8 : 4) & 1);
        var signals = IsMac ? 0x80u : 1u;
        Change(raw, IsMac ? 24 : 12, signals, hasSignals ? signals : 0);
        return new(raw);
    }

    /// <summary>A serial port: every byte as it comes, the receiver on, the lines of a modem not asked.</summary>
    /// <param name="port">What the person said of it.</param>
    /// <returns>Null where the system does not know such a speed.</returns>
    public LineModes? Serial(SerialSettings port)
    {
        var raw = Raw();
        var (size, seven, eight) = IsMac ? (0x300u, 0x200u, 0x300u) : (0x30u, 0x20u, 0x30u);
        var (two, parity, odd) = IsMac ? (0x400u, 0x1000u, 0x2000u) : (0x40u, 0x100u, 0x200u);
        var on = IsMac ? 0x8800u : 0x880u;
        var handshake = IsMac ? 0x30000u : 0x80000000u;
        Change(
            raw,
            IsMac ? 16 : 8,
            size | two | parity | odd | handshake,
            on
                | (port.DataBits == 7 ? seven : eight)
                | (port.StopBits == 2 ? two : 0)
                | (port.Parity == 'n' ? 0 : parity)
                | (port.Parity == 'o' ? odd : 0)
        );
        return SpeedOf(port.Speed) is { } speed && DeviceCalls.SetInputSpeed(raw, speed) == 0 && DeviceCalls.SetOutputSpeed(raw, speed) == 0
            ? new(raw)
            : null;
    }

    private byte[] Raw()
    {
        byte[] raw = [.. form];
        DeviceCalls.MakeRaw(raw);
        return raw;
    }

    // Linux numbers the speeds; elsewhere a speed is its own number.
    private static nuint? SpeedOf(int speed) =>
        IsMac
            ? (nuint)speed
            : speed switch
            {
                300 => 7,
                600 => 8,
                1200 => 9,
                2400 => 11,
                4800 => 12,
                9600 => 13,
                19200 => 14,
                38400 => 15,
                57600 => 0x1001,
                115200 => 0x1002,
                230400 => 0x1003,
                _ => null,
            };

    private static uint Read(byte[] of, int at) => BinaryPrimitives.ReadUInt32LittleEndian(of.AsSpan(at));

    private static void Change(byte[] of, int at, uint off, uint on) =>
        BinaryPrimitives.WriteUInt32LittleEndian(of.AsSpan(at), (Read(of, at) & ~off) | on);
}
