using Ohmstead.Running;

namespace Ohmstead.Writing;

/// <summary>Tells what was written, once it is on the disk. An entry that nobody can be told of is taken back: the exit code then says what
/// is so.</summary>
internal static class EntryTold
{
    /// <summary>Tells.</summary>
    /// <param name="terminal">Where.</param>
    /// <param name="root">The collection's folder.</param>
    /// <param name="path">The record, from there.</param>
    /// <param name="change">The text before and after the entry; null when nothing was written.</param>
    /// <param name="tell">Writes the words.</param>
    /// <exception cref="IOException">The words could not be written. The record is as it was, unless somebody else changed it
    /// meanwhile.</exception>
    public static void Tell(Terminal terminal, string root, string path, (string Before, string After)? change, Action tell)
    {
        try
        {
            tell();
            terminal.Out.Flush();
        }
        catch (Exception problem) when (change is not null && problem is IOException or UnauthorizedAccessException)
        {
            var isBack = RecordFile.Change(root, path, null, text =>
                text == change?.After ? (change?.Before, true) : ((string?)null, false)
            );
            var fate = isBack
                ? "the entry was taken back, so give it again"
                : $"the entry stands in {path}, since somebody else changed the record";
            throw new IOException($"{problem.Message}; {fate}", problem);
        }
    }
}
