using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;
using Ohmstead.Devices;
using Ohmstead.Disk;

namespace Ohmstead.Meters;

/// <summary>A meter at a serial port.</summary>
internal sealed class SerialWire : IWire
{
    private readonly SafeFileHandle file;
    private readonly LineModes found;

    private SerialWire(SafeFileHandle file, LineModes found)
    {
        this.file = file;
        this.found = found;
    }

    /// <summary>Opens it.</summary>
    /// <param name="path">The port.</param>
    /// <param name="settings">How it is set.</param>
    /// <exception cref="IOException">It cannot be opened, or is no serial port.</exception>
    public static SerialWire Open(string path, SerialSettings settings)
    {
        if (!LineModes.IsKnown)
        {
            throw new IOException("serial ports are read on Linux and macOS only; tcp:HOST:PORT works here");
        }

        var noTerminal = OperatingSystem.IsMacOS() ? 0x20000 : 0x100;
        var port = DeviceCalls.Open(path, SystemNumbers.ReadAndWrite | noTerminal | SystemNumbers.AtOnce | SystemNumbers.Close);
        if (port.IsInvalid)
        {
            throw new IOException($"{path}: {Marshal.GetPInvokeErrorMessage(Marshal.GetLastPInvokeError())}");
        }

        var number = port.DangerousGetHandle().ToInt32();
        if (LineModes.From(number) is not { } found)
        {
            port.Dispose();
            throw new IOException($"{path} is no serial port");
        }

        if (found.Serial(settings)?.Set(number) is not true)
        {
            port.Dispose();
            throw new IOException($"{path} cannot be set to {settings.Speed} bits a second");
        }

        return new(port, found);
    }

    /// <inheritdoc/>
    public int Read(Span<byte> bytes, int milliseconds)
    {
        Span<PolledFile> wait = [new(Number, PolledFile.Something, 0)];
        if (DeviceCalls.Poll(wait, 1, milliseconds) <= 0)
        {
            return 0;
        }

        var count = DeviceCalls.Read(Number, bytes, bytes.Length);
        return count > 0 ? (int)count
            : count < 0 && Marshal.GetLastPInvokeError() is SystemNumbers.Interrupted or 11 or 35 ? 0
            : -1;
    }

    /// <inheritdoc/>
    public void Write(ReadOnlySpan<byte> bytes)
    {
        while (bytes.Length > 0)
        {
            Span<PolledFile> wait = [new(Number, PolledFile.Room, 0)];
            // A port whose other side holds everything back is not waited for.
            if (DeviceCalls.Poll(wait, 1, 5_000) <= 0)
            {
                throw new IOException("the port takes nothing");
            }

            var count = DeviceCalls.Write(Number, bytes, bytes.Length);
            if (count < 0)
            {
                throw new IOException(Marshal.GetPInvokeErrorMessage(Marshal.GetLastPInvokeError()));
            }

            bytes = bytes[(int)count..];
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _ = found.Set(Number);
        file.Dispose();
    }

    private int Number => file.DangerousGetHandle().ToInt32();
}
