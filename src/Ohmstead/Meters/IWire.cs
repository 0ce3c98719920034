namespace Ohmstead.Meters;

/// <summary>The wire to a meter.</summary>
internal interface IWire : IDisposable
{
    /// <summary>Takes what has come, or waits a little for something to come.</summary>
    /// <param name="bytes">Where it is put.</param>
    /// <param name="milliseconds">How long to wait at most.</param>
    /// <returns>How many bytes; 0 where nothing came, -1 where nothing will come any more.</returns>
    int Read(Span<byte> bytes, int milliseconds);

    /// <summary>Sends.</summary>
    /// <exception cref="IOException">It could not be sent.</exception>
    void Write(ReadOnlySpan<byte> bytes);
}
