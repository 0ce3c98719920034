using System.CommandLine;
using Ohmstead.Collections;
using Ohmstead.Records.Binding;
using Ohmstead.Running;
using Ohmstead.Starting;

namespace Ohmstead.Commands;

/// <summary>Starts a collection: a folder that is ready to be committed.</summary>
internal sealed class StartCollectionCommand(Terminal terminal)
{
    private readonly Argument<string> folder = new("FOLDER")
    {
        Description = "Where it shall lie; this folder when not given.",
        DefaultValueFactory = _ => ".",
    };
    private readonly Option<string> name = new("--name")
    {
        Description = "The name of the collection.",
        HelpName = "TEXT",
        Required = true,
    };
    private readonly Option<string?> board = new("--board")
    {
        Description = "The number of the first board; the initials of the name and 0001 when not given.",
        HelpName = "NUMBER",
    };
    private readonly Option<string?> program = new("--program")
    {
        Description =
            "The repository of the program, from whose commit workflows build it; without it no workflow is written. A branch moves, "
            + "a commit stays.",
        HelpName = "OWNER/NAME@COMMIT",
    };
    private readonly Option<string?> release = new("--release")
    {
        Description = "A release of that repository, which workflows fetch instead of building the program.",
        HelpName = "TAG",
    };
    private readonly Option<string?> sha256 = new("--sha256")
    {
        Description =
            $"The SHA-256 of {ProgramRelease.Archive} of that release. Without it the sums beside the archive are believed, which tell "
            + "of a torn download and not of a release that was exchanged.",
        HelpName = "DIGITS",
    };
    private readonly Option<bool> pages = new("--pages")
    {
        Description = "Write a workflow that publishes the pages, too. The host must be told once that workflows publish.",
    };
    private readonly Option<bool> comments = new("--comments")
    {
        Description = "Write a workflow, too, that puts what a pull request changes under it, also where it comes from a fork.",
    };
    private readonly Option<bool> schemas = new("--schemas")
    {
        Description =
            "Put the schemas beside the records, some thousand lines that Git keeps with them, and name them to editors; else "
            + "'start schemas' puts them where all collections of a machine find them.",
    };
    private readonly SharedOptions shared = new();

    public Command Build()
    {
        var command = new Command(
            "collection",
            """
            Start a collection: its files with an example each, a first board, and what Git needs.
            A file that is there already is named and left alone.

            Examples:
              ohmstead start collection --name "Saltmarsh Point weather collection"
              ohmstead start collection lighthouse --name "Fog signal electronics" --board FS-001
              ohmstead start collection bells --name "Bell buoys" --program saltmarsh/ohmstead --pages
            """
        )
        {
            folder,
            name,
            board,
            program,
            release,
            sha256,
            pages,
            comments,
            schemas,
            shared.AsOf,
        };
        command.SetAction(parsed =>
            shared.Read(parsed, terminal.Error, parsed.GetValue(folder)) is { } run ? Start(parsed, run.Today) : ExitCode.Usage
        );
        return command;
    }

    private int Start(ParseResult parsed, DateOnly today)
    {
        var root = Path.GetFullPath(parsed.GetValue(folder)!);
        var called = parsed.GetValue(name)!.Trim();
        var first = parsed.GetValue(board) ?? CollectionFiles.FirstNumber(called);
        var fault =
            called.Length == 0 ? "the name of a collection is empty; write --name \"Saltmarsh Point weather collection\""
            : called.Any(char.IsControl) ? "the name of a collection has a control character; write it on one line"
            : NameRules.Fault(first) is { } problem ? $"'{first}' cannot be the number of a board: {problem}"
            : File.Exists(root) ? $"'{root}' is a file; name a folder"
            : null;
        if (fault is not null)
        {
            return Refuse(fault);
        }

        var (hasPages, hasComments) = (parsed.GetValue(pages), parsed.GetValue(comments));
        HostedCollection? hosted = null;
        if (parsed.GetValue(program) is { } named)
        {
            if (!ProgramSource.Read(named).Is(out var source, out var why))
            {
                return Refuse(why);
            }

            ProgramRelease? taken = null;
            if (parsed.GetValue(release) is { } tag && !ProgramRelease.Read(tag, parsed.GetValue(sha256)).Is(out taken, out why))
            {
                return Refuse(why);
            }

            if (taken is null && parsed.GetValue(sha256) is not null)
            {
                return Refuse("--sha256 is of an archive of a release, and nothing says of which; write --release v1.2.3");
            }

            hosted = new(source, BranchOf(root), hasPages, hasComments, taken);
        }
        else if (hasPages || hasComments || parsed.GetValue(release) is not null || parsed.GetValue(sha256) is not null)
        {
            return Refuse("nothing says where workflows have the program from; write --program OWNER/NAME@COMMIT");
        }

        var hasBoards = Directory.Exists(root) && CollectionFolder.Open(root).Boards.Count > 0;
        var above = RepositoryAbove(root);
        var files = CollectionFiles
            .List(called, hasBoards ? null : first, today, parsed.GetValue(schemas))
            .Concat(above is null ? CollectionFiles.OfRepository(hosted) : [])
            .ToArray();
        NewFiles.LookAt(root, files);
        var left = Write(terminal, root, files);
        Next(above, hosted);
        return left > 0 ? ExitCode.Incomplete : ExitCode.Clean;
    }

    private int Refuse(string problem)
    {
        terminal.Error.WriteLine(Printable.Escape(problem));
        return ExitCode.Usage;
    }

    /// <summary>Writes files that are not there yet, and says what became of each.</summary>
    /// <returns>How many were left alone.</returns>
    internal static int Write(Terminal terminal, string root, IEnumerable<StartingFile> files)
    {
        var left = 0;
        foreach (var file in files)
        {
            var fate = NewFiles.Write(root, file);
            left += fate == FileFate.LeftAlone ? 1 : 0;
            var to = fate == FileFate.LeftAlone ? terminal.Error : terminal.Out;
            var words = fate switch
            {
                FileFate.Written => "written",
                FileFate.Same => "there already, the same",
                _ => "there already, left alone",
            };
            to.WriteLine(Printable.Escape($"{file.Path}: {words}"));
        }

        return left;
    }

    private void Next(string? above, HostedCollection? hosted)
    {
        if (above is not null)
        {
            terminal.Out.WriteLine(
                Printable.Escape($"no hook and no workflow: the folder lies in the repository {above}, which looks for its own")
            );
            return;
        }

        terminal.Out.WriteLine("to check every commit: git config core.hooksPath .githooks");
        terminal.Out.WriteLine("to merge what two people enter by what it says: ohmstead settle --set-up");
        if (hosted is null)
        {
            terminal.Out.WriteLine(
                "no workflow: nothing says where the host has the program from; once that is known, the same again with "
                    + "--program OWNER/NAME@COMMIT"
            );
        }
        else if (!hosted.Program.IsCommit)
        {
            terminal.Out.WriteLine(
                $"the workflows follow '{hosted.Program.Revision}' of {hosted.Program.Repository}, which may move; --program "
                    + $"{hosted.Program.Repository}@COMMIT stays with one"
            );
        }

        if (hosted is { Release: { Sha256: null } believed })
        {
            terminal.Out.WriteLine(
                $"the workflows believe the sums that lie beside {believed.Tag}; --sha256 with that of {ProgramRelease.Archive} keeps "
                    + "out a release that was exchanged"
            );
        }

        if (hosted is { HasPages: true })
        {
            terminal.Out.WriteLine("for the pages: choose GitHub Actions as their source in the repository's settings");
        }
    }

    // The folder of a repository that lies further up; a repository of the collection's own is not one.
    /// <summary>The branch that a repository stands on, also before its first commit; main where there is none yet.</summary>
    private static string BranchOf(string root)
    {
        const string Reference = "ref: refs/heads/";
        const string Usual = "main";
        try
        {
            var head = File.ReadLines(Path.Combine(root, ".git", "HEAD")).FirstOrDefault() ?? string.Empty;
            return head.StartsWith(Reference, StringComparison.Ordinal) ? head[Reference.Length..].Trim() : Usual;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return Usual;
        }
    }

    private static string? RepositoryAbove(string root)
    {
        if (Path.Exists(Path.Combine(root, ".git")))
        {
            return null;
        }

        for (var above = Path.GetDirectoryName(root); above is not null; above = Path.GetDirectoryName(above))
        {
            if (Path.Exists(Path.Combine(above, ".git")))
            {
                return above;
            }
        }

        return null;
    }
}
