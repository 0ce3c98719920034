namespace Ohmstead.Report.Html;

/// <summary>Takes the start of what is written, piece by piece, where all of it is too long to be held.</summary>
public interface IPieces
{
    /// <summary>Takes the next piece.</summary>
    /// <param name="piece">Valid during the call.</param>
    void Add(ReadOnlySpan<byte> piece);

    /// <summary>Forgets all pieces: something else is written from here on.</summary>
    void Clear();
}
