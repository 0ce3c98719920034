using System.Runtime.InteropServices;

namespace Ohmstead.Devices;

/// <summary>One of the streams on which a process tells something.</summary>
/// <param name="file">1 for results, 2 for what is said about the run.</param>
/// <remarks>The framework's own puts the keypad of a terminal into another mode with the first word that is written, and leaves it
/// there: the
/// figures of the keypad are lost to whatever comes next.</remarks>
internal sealed class StandardOutput(int file) : Stream
{
    // Alike on Linux, macOS and the BSDs, the last apart.
    private const int Interrupted = 4;
    private const int NobodyReads = 32;

    private static readonly int Later = OperatingSystem.IsLinux() ? 11 : 35;

    /// <inheritdoc/>
    public override bool CanRead => false;

    /// <inheritdoc/>
    public override bool CanSeek => false;

    /// <inheritdoc/>
    public override bool CanWrite => true;

    /// <inheritdoc/>
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<byte> buffer)
    {
        while (buffer.Length > 0)
        {
            var count = DeviceCalls.Write(file, buffer, buffer.Length);
            if (count >= 0)
            {
                buffer = buffer[(int)count..];
                continue;
            }

            var error = Marshal.GetLastPInvokeError();
            if (error == NobodyReads)
            {
                // Whoever read it went away early and has what they wanted.
                return;
            }

            if (error == Later)
            {
                Span<PolledFile> wait = [new(file, PolledFile.Room, 0)];
                _ = DeviceCalls.Poll(wait, 1, -1);
            }
            else if (error != Interrupted)
            {
                throw new IOException($"the output: {Marshal.GetPInvokeErrorMessage(error)}");
            }
        }
    }

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public override void Flush() { }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();
}
