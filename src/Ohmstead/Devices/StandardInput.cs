using System.Runtime.InteropServices;

namespace Ohmstead.Devices;

/// <summary>What comes in on the first stream of a process, byte by byte as the system gives it.</summary>
internal sealed class StandardInput : Stream
{
    // EINTR, on every system.
    private const int Interrupted = 4;

    /// <inheritdoc/>
    public override bool CanRead => true;

    /// <inheritdoc/>
    public override bool CanSeek => false;

    /// <inheritdoc/>
    public override bool CanWrite => false;

    /// <inheritdoc/>
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer)
    {
        while (true)
        {
            var count = DeviceCalls.Read(0, buffer, buffer.Length);
            if (count >= 0)
            {
                return (int)count;
            }

            var error = Marshal.GetLastPInvokeError();
            if (error != Interrupted)
            {
                throw new IOException($"the input: {Marshal.GetPInvokeErrorMessage(error)}");
            }
        }
    }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public override void Flush() { }

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
