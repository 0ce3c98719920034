using Ohmstead.Writing;

namespace Ohmstead.MovingIn;

/// <summary>Writes many records, all or none: where one cannot be written, those that were are taken back.</summary>
internal static class WholeMovement
{
    /// <summary>Writes them.</summary>
    /// <param name="root">The collection's folder.</param>
    /// <param name="files">The records, in order.</param>
    /// <param name="error">Told what a person would not expect.</param>
    /// <exception cref="IOException">One could not be written. All are as they were, but for those that the message names.</exception>
    public static void Write(string root, IReadOnlyList<MovedFile> files, TextWriter error)
    {
        var placed = new Stack<RecordChange>();
        try
        {
            RecordFile.WriteAll(root, [.. files.Select(file => new RecordChange(file.Path, file.Before, file.After))], error, placed);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            var left = placed.Where(file => !IsBack(root, file)).Select(file => file.Path).ToArray();
            throw new IOException(
                $"{problem.Message}; "
                    + (
                        left.Length == 0
                            ? "nothing was written, the collection is as it was"
                            : $"these could not be taken back: {string.Join(", ", left)}; giving the same tables again goes on from there"
                    ),
                problem
            );
        }
    }

    private static bool IsBack(string root, RecordChange file)
    {
        try
        {
            return file.Before is null
                ? RecordFile.TakeBack(root, file.Path, file.After)
                : RecordFile.Change(root, file.Path, null, text => text == file.After ? (file.Before, true) : ((string?)null, false));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
