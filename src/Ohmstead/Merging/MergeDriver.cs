using Ohmstead.Records.Merging;
using Ohmstead.Running;

namespace Ohmstead.Merging;

/// <summary>Merges one file for Git: three files come in, and the second is replaced by what comes of it.</summary>
/// <remarks>It ends with 0 for merged and 1 for marks written. However else it ends, nothing was written, and who called it merges by
/// lines.</remarks>
internal sealed class MergeDriver(Terminal terminal)
{
    /// <summary>Merges.</summary>
    /// <param name="before">The file that both began from.</param>
    /// <param name="one">The file of the first, which is replaced.</param>
    /// <param name="other">That of the second.</param>
    /// <param name="path">The path of the file in the repository.</param>
    /// <param name="size">How many signs a mark has.</param>
    public int Merge(string before, string one, string other, string path, int size)
    {
        if (SettledFile.Of(path, size) is not { } file)
        {
            terminal.Error.WriteLine(Printable.Escape($"'{path}' is the path of no record; nothing was written"));
            return ExitCode.Usage;
        }

        if (RecordMerge.Merge(file, SettledFile.Read(before), SettledFile.Read(one), SettledFile.Read(other)) is not { } outcome)
        {
            terminal.Error.WriteLine(Printable.Escape($"{path}: one of the three is no text in UTF-8; nothing was written"));
            return ExitCode.Incomplete;
        }

        // All is told before the rename: who cannot be told merges by lines, and then nothing may have been written.
        SettledFile.Write(one, null, outcome.Content.Span, () =>
        {
            foreach (var line in SettledFile.Told(file, outcome))
            {
                terminal.Error.WriteLine(line);
            }

            terminal.Error.Flush();
        });
        return outcome.Conflicts > 0 ? ExitCode.Findings : ExitCode.Clean;
    }
}
