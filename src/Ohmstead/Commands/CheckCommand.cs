using System.CommandLine;
using System.Text;
using Ohmstead.Collections;
using Ohmstead.Comparing;
using Ohmstead.Disk;
using Ohmstead.Electronics;
using Ohmstead.Output;
using Ohmstead.Output.Changes;
using Ohmstead.Records.Findings;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Checks a collection, or single files of it.</summary>
internal sealed class CheckCommand(Terminal terminal)
{
    private const int MostPerFile = 50;
    private const int MostInAll = 1_000;

    private static readonly string[] Forms = ["text", "json", "annotations", "sarif", "gitlab"];

    public Command Build()
    {
        var paths = new Argument<string[]>("PATH")
        {
            Description = "A collection's folder, or files of one; this folder or records when not given.",
            DefaultValueFactory = _ => [SharedOptions.UsualFolder()],
        };
        var form = new Option<string>("--form")
        {
            Description =
                "text for people, json for programs, annotations for the lines of a pull request, sarif (2.1.0) and gitlab for hosts of "
                + "code.",
            DefaultValueFactory = _ => "text",
        };
        form.AcceptOnlyFromAmong(Forms);
        var also = new Option<string[]>("--also")
        {
            Description = "Write the result in another form to a file, too: sarif=findings.sarif; may be given several times.",
            HelpName = "FORM=FILE",
        };
        var keep = new Option<string?>("--keep")
        {
            Description = "Keep what is judged in a file, to hold a later program against it: changes --judged FILE.",
            HelpName = "FILE",
        };
        var over = OverOption.Make();
        var strict = new Option<bool>("--strict") { Description = "Count warnings as errors." };
        var since = new Option<string?>("--since")
        {
            Description = "Also hold the entries against this earlier state, a revision or a folder: what was committed is still there.",
            HelpName = "REVISION",
        };
        var allowEmpty = new Option<bool>("--allow-empty") { Description = "Find nothing wrong with a folder that has no records." };
        var shared = new SharedOptions();
        var past = new PastOptions(shared);
        var command = new Command(
            "check",
            """
            Read every record, recompute every verdict, and say what does not add up.

            Examples:
              ohmstead check records                                    a whole collection
              ohmstead check records/boards/SP-0007.md                  one board
              ohmstead check records --strict                           warnings count as errors: ends with 1
              ohmstead check records --form json                        for programs
              ohmstead check records --also sarif=findings.sarif        for the host of the code, beside the text
              ohmstead check records --since main                       what was committed is still there
              ohmstead check records --on 2026-05-01                    the bench as it was on that day
            """
        )
        {
            paths,
            form,
            also,
            keep,
            over,
            strict,
            allowEmpty,
            shared.AsOf,
            since,
            past.On,
            past.Known,
            shared.Thorough,
            shared.Workers,
        };
        command.SetAction(parsed =>
        {
            var wanted = parsed.GetValue(form)!;
            var isPast = (parsed.GetValue(past.On) ?? parsed.GetValue(past.Known)) is not null;
            if (parsed.GetValue(since) is not null && isPast)
            {
                return Refuse("--since looks at the files as they lie; leave --on and --known out");
            }

            // A later program is held against all that they say: what was left out now would be laid to it then.
            if (parsed.GetValue(keep) is not null && isPast)
            {
                return Refuse("--keep keeps what is judged of the files as they lie; leave --on and --known out");
            }

            var named = parsed.GetValue(paths) ?? ["."];
            var (opened, refused) = past.Open(parsed, named.FirstOrDefault() ?? ".", terminal.Error, () => Opened(named));
            if (opened is null)
            {
                return refused;
            }

            using var state = opened;
            var (folder, options) = (state.Files, state.Run);
            if (
                folder.Boards.Count == 0
                && folder.Designs.Count == 0
                && folder.Named("collection.yaml") is null
                && !parsed.GetValue(allowEmpty)
            )
            {
                return Refuse(
                    $"no records in '{folder.Root}': a collection has boards/*.md, or name a board file; --allow-empty if that is meant"
                );
            }

            if (!Others(parsed.GetValue(also) ?? [], folder, parsed.GetValue(over)).Is(out var others, out var wrong))
            {
                return Refuse(wrong);
            }

            var (kept, refusal) = Kept(parsed.GetValue(keep), folder, parsed.GetValue(over));
            if (refusal is not null)
            {
                return Refuse(refusal);
            }

            using var progress = new Progress(terminal, folder.Boards.Count);
            var keeper = kept is null ? null : new JudgementKeeper(folder, options);
            var result = new CollectionRun(folder, options with { ForPages = false }).Run(
                progress.Report,
                seen: keeper is null ? null : keeper.Add
            );
            progress.Dispose();
            if (parsed.GetValue(since) is { } earlier)
            {
                if (!Rewritten(earlier, folder, options).Is(out var rewritten, out var why))
                {
                    return Refuse(why);
                }

                result = result with { Findings = [.. result.Findings.Concat(rewritten).Order(FindingOrder.Instance)] };
            }

            var exit = result.Exit(parsed.GetValue(strict));
            WriterFor(wanted, folder, terminal.Colours).Write(terminal.Out, result, folder, exit);
            foreach (var (other, file) in others)
            {
                using var text = new StringWriter { NewLine = "\n" };
                WriterFor(other, folder, Palette.None).Write(text, result, folder, exit);
                file.Write(Encoding.UTF8.GetBytes(text.ToString()), parsed.GetValue(over));
            }

            kept?.Write(KeptJson.Write(keeper!.Finish()), parsed.GetValue(over));

            return exit;
        });
        return command;
    }

    private static (OutputFile? File, string? Refusal) Kept(string? path, CollectionFolder folder, bool isOver)
    {
        if (path is null)
        {
            return (null, null);
        }

        var file = new OutputFile(path, KeptJson.Mark.ToArray(), folder.Root);
        return folder.Beside is not null
            ? (null, "--keep keeps what is judged of a whole collection: give its folder")
            : (file, file.Refusal(isOver));
    }

    // Held against the whole collection, also where only some files of it are looked at.
    private static Outcome<IReadOnlyList<Finding>> Rewritten(string earlier, CollectionFolder folder, RunOptions options)
    {
        if (!new SideOpener(folder.Root).Open(earlier, null).Is(out var sides, out var why))
        {
            return Outcome<IReadOnlyList<Finding>>.Refused(why);
        }

        using (sides.Was)
        using (sides.Now)
        {
            return Outcome<IReadOnlyList<Finding>>.From(new CommittedEntries(sides.Was, sides.Now, options).Find());
        }
    }

    private CollectionFolder? Opened(string[] paths)
    {
        if (FolderOf(paths).Is(out var folder, out var problem))
        {
            return folder;
        }

        Refuse(problem);
        return null;
    }

    private int Refuse(string problem)
    {
        terminal.Error.WriteLine(Printable.Escape(problem));
        return ExitCode.Usage;
    }

    private static IFindingsWriter WriterFor(string form, CollectionFolder folder, Palette colours) =>
        form switch
        {
            "json" => new JsonFindings(),
            "annotations" => new AnnotationFindings(Prefix(folder)),
            "sarif" => new SarifFindings(Prefix(folder)),
            "gitlab" => new CodeQualityFindings(Prefix(folder)),
            _ => new TextFindings(MostPerFile, MostInAll, colours),
        };

    // What stands near the beginning of each file that is written in a form, where anything does.
    private static ReadOnlySpan<byte> MarkOf(string form) =>
        form switch
        {
            "json" => "{\n  \"version\": 1,\n  \"exit\": "u8,
            "sarif" => "\"name\": \"ohmstead\""u8,
            "gitlab" => "\"check_name\": "u8,
            _ => "\0"u8,
        };

    // Asked before the work: a run that cannot write what it is asked for need not begin.
    private static Outcome<List<(string Form, OutputFile File)>> Others(string[] said, CollectionFolder folder, bool isOver)
    {
        var others = new List<(string, OutputFile)>();
        foreach (var one in said)
        {
            var sign = one.IndexOf('=', StringComparison.Ordinal);
            if (sign <= 0 || sign == one.Length - 1 || !Forms.Contains(one[..sign], StringComparer.Ordinal))
            {
                return Outcome<List<(string, OutputFile)>>.Refused(
                    $"'{one}' is no form and file; write --also sarif=findings.sarif, the form one of {string.Join(", ", Forms)}"
                );
            }

            var file = new OutputFile(one[(sign + 1)..], MarkOf(one[..sign]).ToArray(), folder.Root);
            if (file.Refusal(isOver) is { } refusal)
            {
                return Outcome<List<(string, OutputFile)>>.Refused(refusal);
            }

            others.Add((one[..sign], file));
        }

        return Outcome<List<(string, OutputFile)>>.From(others);
    }

    // Annotations name files from the root of the repository, which is where a workflow runs.
    private static string Prefix(CollectionFolder folder)
    {
        var relative = Path.GetRelativePath(Environment.CurrentDirectory, folder.Root).Replace('\\', '/');
        return relative is "." || relative.StartsWith("..", StringComparison.Ordinal) ? string.Empty : relative + "/";
    }

    private static Outcome<CollectionFolder> FolderOf(string[] paths)
    {
        if (paths.Length == 1 && Directory.Exists(paths[0]))
        {
            return Outcome<CollectionFolder>.From(CollectionFolder.Open(paths[0]));
        }

        var boards = new List<string>();
        string? root = null;
        if (paths.FirstOrDefault(path => !Path.Exists(path)) is { } missing)
        {
            return Outcome<CollectionFolder>.Refused(NamedFiles.Missing(missing));
        }

        foreach (var path in paths)
        {
            if (Directory.Exists(path))
            {
                return Outcome<CollectionFolder>.Refused($"'{path}' is a folder: give one folder alone, or files");
            }

            var own = CollectionFolder.RootOf(path);
            if (root is not null && root != own)
            {
                return Outcome<CollectionFolder>.Refused(
                    "these files belong to different collections; check them one collection at a time"
                );
            }

            root = own;
            var relative = Path.GetRelativePath(own, Path.GetFullPath(path)).Replace('\\', '/');
            if (relative.EndsWith(".md", StringComparison.Ordinal) && !relative.StartsWith("designs/", StringComparison.Ordinal))
            {
                boards.Add(relative);
            }
        }

        boards.Sort(StringComparer.Ordinal);
        return Outcome<CollectionFolder>.From(CollectionFolder.Open(root!).Only(boards));
    }
}
