using System.Net.Sockets;

namespace Ohmstead.Meters;

/// <summary>A meter at a socket.</summary>
internal sealed class SocketWire : IWire
{
    private readonly Socket socket;

    private SocketWire(Socket socket) => this.socket = socket;

    /// <summary>Connects.</summary>
    /// <param name="host">The host.</param>
    /// <param name="port">Its port.</param>
    /// <param name="patience">How long to wait for it.</param>
    /// <exception cref="IOException">Nobody answers there.</exception>
    public static SocketWire Connect(string host, int port, TimeSpan patience)
    {
        var opened = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        try
        {
            using var end = new CancellationTokenSource(patience);
            opened.ConnectAsync(host, port, end.Token).AsTask().GetAwaiter().GetResult();
            return new(opened);
        }
        catch (Exception problem) when (problem is SocketException or OperationCanceledException or ArgumentException)
        {
            opened.Dispose();
            throw new IOException(
                problem is OperationCanceledException ? $"{host}:{port} does not answer" : $"{host}:{port}: {problem.Message}",
                problem
            );
        }
    }

    /// <inheritdoc/>
    public int Read(Span<byte> bytes, int milliseconds)
    {
        try
        {
            return !socket.Poll(milliseconds * 1000, SelectMode.SelectRead) ? 0
                : socket.Receive(bytes) is > 0 and var count ? count
                : -1;
        }
        catch (SocketException)
        {
            return -1;
        }
    }

    /// <inheritdoc/>
    public void Write(ReadOnlySpan<byte> bytes)
    {
        try
        {
            _ = socket.Send(bytes);
        }
        catch (SocketException problem)
        {
            throw new IOException(problem.Message, problem);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => socket.Dispose();
}
