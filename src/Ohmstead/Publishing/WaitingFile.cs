using Microsoft.Win32.SafeHandles;

namespace Ohmstead.Publishing;

/// <summary>A file of the report that is written piece by piece.</summary>
/// <param name="file">The file, let go with this.</param>
internal sealed class WaitingFile(SafeFileHandle file) : FileStream(file, FileAccess.ReadWrite, 1 << 16)
{
    // All that is written comes through here, since the class is derived.
    /// <inheritdoc/>
    public override void Write(byte[] array, int offset, int count)
    {
        try
        {
            base.Write(array, offset, count);
        }
        catch (ArgumentOutOfRangeException tooLong)
        {
            throw TooLong(tooLong);
        }
    }

    /// <inheritdoc/>
    public override void Flush(bool flushToDisk)
    {
        try
        {
            base.Flush(flushToDisk);
        }
        catch (ArgumentOutOfRangeException tooLong)
        {
            throw TooLong(tooLong);
        }
    }

    // A file that nobody puts by goes with its folder, whatever its last bytes come to.
    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        try
        {
            base.Dispose(disposing);
        }
        catch (Exception lost) when (lost is IOException or ArgumentOutOfRangeException or UnauthorizedAccessException) { }
    }

    // The library takes the file for a wrong argument when it would grow beyond what the disk or the account allows.
    private static IOException TooLong(ArgumentOutOfRangeException tooLong) =>
        new("a file would be longer than this disk or this account allows", tooLong);
}
