using System.Text;
using Ohmstead.Git;
using Ohmstead.Records.Merging;
using Ohmstead.Records.Nodes;
using Ohmstead.Running;

namespace Ohmstead.Merging;

/// <summary>Settles the records that a merge without the program left in conflict, out of what Git keeps of both sides; nothing must have
/// been set up before.</summary>
internal sealed class ConflictedFiles(Terminal terminal, string top)
{
    /// <summary>Settles what can be.</summary>
    public int Settle()
    {
        if (!GitRepository.Open(top).Is(out var git, out var why) || !git.Conflicts().Is(out var files, out why))
        {
            throw new IOException($"git does not list what is in conflict: {why}");
        }

        if (!git.Objects().Is(out var objects, out why))
        {
            throw new IOException(why);
        }

        using (objects)
        {
            var (left, settled) = (0, 0);
            foreach (var conflict in files)
            {
                if (SettledFile.Of(conflict.Path, SettledFile.UsualSize) is { } file)
                {
                    _ = Settle(file, conflict, git, objects) ? settled++ : left++;
                }
            }

            if (settled + left == 0)
            {
                terminal.Out.WriteLine(files.Count == 0 ? "nothing is in conflict" : "no record is in conflict");
            }

            return left > 0 ? ExitCode.Findings : ExitCode.Clean;
        }
    }

    private bool Settle(MergedFile file, GitConflict conflict, GitRepository git, GitObjects objects)
    {
        if (conflict is not { One: { } one, Other: { } other })
        {
            return Left(
                file,
                "it was taken out on one side and changed on the other; keep it with 'git add', or take it out with 'git rm'"
            );
        }

        if (new[] { conflict.Before, one, other }.Any(entry => entry is { Kind: not GitEntryKind.File }))
        {
            return Left(file, "it is a link on one side; a record is a file");
        }

        var before = conflict.Before is { } old ? Content(objects, old) : null;
        var (first, second) = (Content(objects, one), Content(objects, other));
        var full = Path.Combine(top, file.Path);
        if (new FileInfo(full).LinkTarget is not null)
        {
            return Left(file, "a link lies in its place; a record is a file");
        }

        var now = File.Exists(full) ? SettledFile.Read(full) : [];
        if (RecordMerge.Merge(file, before is null ? null : before, first, second) is not { } outcome)
        {
            return Left(file, "one side is no text in UTF-8");
        }

        // A run that was ended between its two acts left the merged record and did not hand it to Git.
        var content = HasTwo(now) && !HasTwo(first) ? WithTwo(outcome.Content.Span) : outcome.Content.ToArray();
        var isWritten = now.AsSpan().SequenceEqual(content);
        if (!isWritten && !IsAsGitLeftIt(now, before ?? [], first, second))
        {
            return Left(
                file,
                $"somebody has worked on it since; go on by hand, or give up what was done with: git checkout -m -- \"{file.Path}\""
            );
        }

        if (isWritten)
        {
            Tell(file, outcome);
        }
        else
        {
            SettledFile.Write(full, top, content, () => Tell(file, outcome));
        }

        return outcome.Conflicts == 0
            && (git.Add(file.Path).Is(out _, out var refused) || Left(file, $"it is merged, and Git does not take it: {refused}"));
    }

    private void Tell(MergedFile file, MergeOutcome outcome)
    {
        string[] told = [.. SettledFile.Told(file, outcome)];
        terminal.Out.WriteLine(told[0]);
        foreach (var reason in told.Skip(1))
        {
            terminal.Error.WriteLine(reason);
        }
    }

    private bool Left(MergedFile file, string reason)
    {
        terminal.Error.WriteLine(Printable.Escape($"{file.Path}: left alone: {reason}"));
        return false;
    }

    private static byte[] Content(GitObjects objects, GitEntry entry) =>
        objects.Read(entry.Id, ReadingLimits.Usual.FileBytes).Bytes
        ?? throw new IOException($"git has no content {entry.Id} of '{entry.Path}', or it is too large");

    // What somebody did by hand is not written over: each line must be of one of the three, and none that a side added may be gone.
    private static bool IsAsGitLeftIt(byte[] now, byte[] before, byte[] one, byte[] other)
    {
        var (lines, old, first, second) = (LinesOf(now), LinesOf(before), LinesOf(one), LinesOf(other));
        if (lines.SequenceEqual(first) || lines.SequenceEqual(second))
        {
            return true;
        }

        HashSet<string> known = [.. old, .. first, .. second];
        HashSet<string> there = [.. lines];
        return lines.Any(line => line.StartsWith("<<<<<<<", StringComparison.Ordinal))
            && lines.All(line => known.Contains(line) || IsMark(line))
            && first.Concat(second).Except(old, StringComparer.Ordinal).All(there.Contains);
    }

    private static bool IsMark(string line) =>
        line.Length >= SettledFile.UsualSize
        && line[0] is '<' or '|' or '=' or '>'
        && line[..SettledFile.UsualSize].All(letter => letter == line[0]);

    private static string[] LinesOf(byte[] bytes) =>
        Encoding.UTF8.GetString(bytes).Replace("\r\n", "\n", StringComparison.Ordinal).TrimEnd('\n').Split('\n');

    private static bool HasTwo(ReadOnlySpan<byte> bytes) => bytes.IndexOf("\r\n"u8) >= 0;

    // A clone whose files end their lines with CRLF keeps LF in its objects.
    private static byte[] WithTwo(ReadOnlySpan<byte> bytes) =>
        Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(bytes).Replace("\n", "\r\n", StringComparison.Ordinal));
}
