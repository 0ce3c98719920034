using Ohmstead.Assessment.Workshops;
using Ohmstead.Collections;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;
using Ohmstead.Running;

namespace Ohmstead.Writing;

/// <summary>Puts one entry into a file that boards share: judged before it is written, whole or not at all.</summary>
/// <param name="terminal">Where it is told.</param>
/// <param name="run">How records are read and judged.</param>
/// <param name="files">The collection.</param>
/// <param name="path">The path of the file in its collection.</param>
/// <param name="empty">What stands in it before the first entry makes it.</param>
internal sealed class SharedFileEntry(Terminal terminal, RunOptions run, CollectionFolder files, string path, string empty)
{
    // What is typed wrong more often than it is so.
    private static readonly string[] Slips = ["incoming-far-from-marking", "accuracy-doubtful"];

    private readonly RunResult before = new CollectionRun(files.Only([]), run).Run();

    /// <summary>What boards share, as it is.</summary>
    public Workshop Workshop => before.Workshop;

    /// <summary>Changes the file by one splice.</summary>
    /// <param name="isSure">True to write what looks like a slip of the unit.</param>
    /// <param name="isTrial">True to show what would be written, and write nothing.</param>
    /// <param name="change">The splice, and the entry as one line.</param>
    /// <param name="tell">Told what the file says afterwards, and where the entry stands in it.</param>
    /// <returns>The exit code.</returns>
    public int Change(
        bool isSure,
        bool isTrial,
        Func<RecordEditor, (EditOutcome Outcome, string Line)> change,
        Action<Workshop, Spot>? tell = null
    )
    {
        (string Before, string After, string Line, Spot Entry, Workshop Workshop)? done = null;
        (string? Text, int Exit) Judged(string text)
        {
            if (Splice.Try(terminal, path, text, FileForm.Yaml, change) is not var (changed, line, entry))
            {
                return (null, ExitCode.Findings);
            }

            var after = new CollectionRun(
                files.With(path).Only([]),
                run with
                {
                    Instead = new Dictionary<string, string>(StringComparer.Ordinal) { [path] = changed },
                }
            ).Run();
            if (!JudgedFiles.AreSound(terminal, before, after, [path], run.Typed, AddedLines.Between(text, changed)))
            {
                return (null, ExitCode.Findings);
            }

            var slip = after.Findings.FirstOrDefault(finding =>
                Slips.Contains(finding.Check)
                && before.Findings.All(known => known.Check != finding.Check || known.Message != finding.Message)
            );
            if (slip is not null && !isSure)
            {
                terminal.Error.WriteLine(Printable.Escape($"{slip.Message} [{slip.Check}]"));
                if (slip.NextStep is { } next)
                {
                    terminal.Error.WriteLine(Printable.Escape($"  = {run.Typed?.Step(next) ?? next}"));
                }

                terminal.Error.WriteLine("nothing was written; --sure writes it all the same");
                return (null, ExitCode.Findings);
            }

            done = (text, changed, line, entry, after.Workshop);
            return (isTrial ? null : changed, ExitCode.Clean);
        }

        // The first entry makes the file, whole; one that is not written makes none.
        var isThere = files.Named(path) is not null;
        var (first, exit) = isThere ? (null, RecordFile.Change(files.Root, path, terminal.Error, Judged)) : Judged(empty);
        if (first is not null)
        {
            RecordFile.Create(files.Root, path, first);
        }

        if (done is var (old, now, line, place, workshop))
        {
            EntryTold.Tell(terminal, files.Root, path, isTrial ? null : (old, now), () =>
            {
                terminal.Out.WriteLine(Printable.Escape($"{path}: {(isTrial ? "would add" : "added")} {line}"));
                tell?.Invoke(workshop, place);
            });
        }

        return exit;
    }
}
