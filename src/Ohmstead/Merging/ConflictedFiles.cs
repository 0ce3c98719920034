using System.Text;
using Ohmstead.Records.Merging;
using Ohmstead.Running;

namespace Ohmstead.Merging;

/// <summary>Settles the records that a merge without the program left in conflict, out of what Git keeps of both sides; nothing must have
/// been set up before.</summary>
internal sealed class ConflictedFiles(Terminal terminal, string top)
{
    private readonly GitCalls git = new(top);

    /// <summary>Settles what can be.</summary>
    public int Settle()
    {
        var files = Stages();
        var (left, settled) = (0, 0);
        foreach (var (path, stages) in files)
        {
            if (SettledFile.Of(path, SettledFile.UsualSize) is { } file)
            {
                _ = Settle(file, stages) ? settled++ : left++;
            }
        }

        if (settled + left == 0)
        {
            terminal.Out.WriteLine(files.Count == 0 ? "nothing is in conflict" : "no record is in conflict");
        }

        return left > 0 ? ExitCode.Findings : ExitCode.Clean;
    }

    private bool Settle(MergedFile file, Dictionary<int, (string Mode, string Id)> stages)
    {
        if (!stages.TryGetValue(2, out var one) || !stages.TryGetValue(3, out var other))
        {
            return Left(
                file,
                "it was taken out on one side and changed on the other; keep it with 'git add', or take it out with 'git rm'"
            );
        }

        if (stages.Values.Any(stage => !stage.Mode.StartsWith("100", StringComparison.Ordinal)))
        {
            return Left(file, "it is a link on one side; a record is a file");
        }

        var before = stages.TryGetValue(1, out var old) ? Blob(old.Id) : null;
        var (first, second) = (Blob(one.Id), Blob(other.Id));
        var full = Path.Combine(top, file.Path);
        if (new FileInfo(full).LinkTarget is not null)
        {
            return Left(file, "a link lies in its place; a record is a file");
        }

        var now = File.Exists(full) ? SettledFile.Read(full) : [];
        if (!IsAsGitLeftIt(now, before ?? [], first, second))
        {
            return Left(
                file,
                $"somebody has worked on it since; go on by hand, or give up what was done with: git checkout -m -- \"{file.Path}\""
            );
        }

        if (RecordMerge.Merge(file, before is null ? null : before, first, second) is not { } outcome)
        {
            return Left(file, "one side is no text in UTF-8");
        }

        var content = HasTwo(now) && !HasTwo(first) ? WithTwo(outcome.Content.Span) : outcome.Content.ToArray();
        SettledFile.Write(full, top, content, () =>
        {
            string[] told = [.. SettledFile.Told(file, outcome)];
            terminal.Out.WriteLine(told[0]);
            foreach (var reason in told.Skip(1))
            {
                terminal.Error.WriteLine(reason);
            }
        });
        if (outcome.Conflicts > 0)
        {
            return false;
        }

        if (git.Call("add", "--", file.Path) is { Exit: not 0 } refused)
        {
            return Left(file, $"it is merged, and Git does not take it: {refused.Error.Trim()}");
        }

        return true;
    }

    private bool Left(MergedFile file, string reason)
    {
        terminal.Error.WriteLine(Printable.Escape($"{file.Path}: left alone: {reason}"));
        return false;
    }

    // Each file in conflict, with what the index holds of it: 1 what both began from, 2 and 3 the sides.
    private SortedDictionary<string, Dictionary<int, (string Mode, string Id)>> Stages()
    {
        var files = new SortedDictionary<string, Dictionary<int, (string, string)>>(StringComparer.Ordinal);
        var answer = git.Call("ls-files", "--unmerged", "-z", "--full-name");
        if (answer.Exit != 0)
        {
            throw new IOException($"git does not list what is in conflict: {answer.Error.Trim()}");
        }

        foreach (var line in answer.Text.Split('\0', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Split('\t', 2) is [var head, var path] && head.Split(' ') is [var mode, var id, [var stage]])
            {
                if (!files.TryGetValue(path, out var stages))
                {
                    files[path] = stages = [];
                }

                stages[stage - '0'] = (mode, id);
            }
        }

        return files;
    }

    private byte[] Blob(string id) =>
        git.Call("cat-file", "blob", id) is { Exit: 0 } answer ? answer.Bytes : throw new IOException($"git has no object {id}");

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
