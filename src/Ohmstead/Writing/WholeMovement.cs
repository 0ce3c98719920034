namespace Ohmstead.Writing;

/// <summary>Writes many records, all or none: where one cannot be written, those that were are taken back.</summary>
internal static class WholeMovement
{
    /// <summary>Writes them, and tells it. What nobody can be told of is taken back: the exit code then says what is so.</summary>
    /// <param name="folders">The files of each folder, in order.</param>
    /// <param name="error">Told what a person would not expect.</param>
    /// <param name="tell">Tells that they are written.</param>
    /// <exception cref="IOException">One could not be written or told. All are as they were, but for those that the message
    /// names.</exception>
    public static void Write(IEnumerable<(string Root, IReadOnlyList<RecordChange> Files)> folders, TextWriter error, Action tell)
    {
        var done = new Stack<(string Root, Stack<RecordChange> Placed)>();
        try
        {
            foreach (var (root, files) in folders)
            {
                done.Push((root, new()));
                RecordFile.WriteAll(root, files, error, done.Peek().Placed);
            }

            tell();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            var left = done.SelectMany(folder => folder.Placed.Where(file => !IsBack(folder.Root, file)))
                .Select(file => file.Path)
                .ToArray();
            throw new IOException(
                $"{problem.Message}; "
                    + (
                        left.Length == 0
                            ? "nothing was written, the collection is as it was"
                            : $"these could not be taken back: {string.Join(", ", left)}; giving the same again goes on from there"
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
