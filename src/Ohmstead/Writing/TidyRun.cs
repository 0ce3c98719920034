using Ohmstead.Collections;
using Ohmstead.Output;
using Ohmstead.Records.Nodes;
using Ohmstead.Running;

namespace Ohmstead.Writing;

/// <summary>Goes through files and tidies each, or tells what would change.</summary>
/// <param name="terminal">Where it is told.</param>
/// <param name="isTrial">True to write nothing.</param>
/// <param name="showsDiff">True to show the changes themselves.</param>
internal sealed class TidyRun(Terminal terminal, bool isTrial, bool showsDiff)
{
    private readonly Lock writing = new();
    private int exit;
    private int looked;
    private int changed;

    /// <summary>Waits for the file that is being written and lets no other begin.</summary>
    public void Stop() => writing.Enter();

    /// <summary>Goes through files of a collection. One that cannot be tidied is told and the rest goes on.</summary>
    /// <param name="files">The files.</param>
    /// <param name="reader">Reads them.</param>
    /// <param name="judging">How verdicts are computed, or null to leave them alone.</param>
    public void Over(NamedFiles files, INodeReader reader, RunOptions? judging)
    {
        var verdicts = judging is null
            ? null
            : new VerdictWriter(
                new CollectionRun(files.Folder.Only([]), judging).Run().Workshop,
                judging.Today,
                new FolderPictures(files.Folder.Root),
                reader
            );
        var tidy = new TidyText(reader, verdicts);
        foreach (var path in files.Paths)
        {
            looked++;
            try
            {
                One(files.Folder.Root, path, RecordKind.Find(path)!, tidy);
            }
            catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
            {
                Tell(ExitCode.Incomplete, $"{path}: {problem.Message}", null);
            }
        }
    }

    /// <summary>Tells how many files there were.</summary>
    /// <returns>The exit code of the run.</returns>
    public int End(bool isCheck)
    {
        // A diff is for a program as much as for a person; nothing else stands beside it.
        var said = isTrial ? "not tidy" : "tidied";
        (showsDiff ? terminal.Error : terminal.Out).WriteLine($"{looked} files, {changed} {said}");
        return Math.Max(exit, isCheck && changed > 0 ? ExitCode.Findings : ExitCode.Clean);
    }

    private void One(string root, string path, RecordKind kind, TidyText tidy)
    {
        // Most files are tidy: they are read, and nothing is locked.
        var text = RecordFile.Read(root, path);
        var result = tidy.Tidy(path, kind, text);
        if (result.Text is { } first && first != text && !isTrial)
        {
            lock (writing)
            {
                result = RecordFile.Change(root, path, terminal.Error, again =>
                    tidy.Tidy(path, kind, again) is var anew && anew.Text == again ? (null, anew) : (anew.Text, anew)
                );
            }
        }

        if (result.Text is not { } after)
        {
            Tell(result.Exit, result.Problem!, result.NextStep);
            return;
        }

        if (after != text)
        {
            changed++;
            Tell(path, text, after, result.Changes);
        }
    }

    private void Tell(string path, string before, string after, IReadOnlyList<string> changes)
    {
        if (showsDiff)
        {
            UnifiedDiff.Write(terminal.Out, path, before, after);
            return;
        }

        foreach (var change in changes)
        {
            terminal.Out.WriteLine(Printable.Escape(change));
        }

        var line = before.AsSpan(0, before.AsSpan().CommonPrefixLength(after)).Count('\n') + 1;
        terminal.Out.WriteLine(Printable.Escape(isTrial ? $"{path}:{line}: not tidy from here on" : $"{path}: tidied"));
    }

    private void Tell(int code, string problem, string? nextStep)
    {
        exit = Math.Max(exit, code);
        terminal.Error.WriteLine(Printable.Escape(problem));
        if (nextStep is not null)
        {
            terminal.Error.WriteLine(Printable.Escape($"  = {nextStep}"));
        }
    }
}
