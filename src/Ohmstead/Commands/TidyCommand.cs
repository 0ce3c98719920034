using System.CommandLine;
using Ohmstead.Collections;
using Ohmstead.Running;
using Ohmstead.Writing;
using Ohmstead.Yaml;

namespace Ohmstead.Commands;

/// <summary>Brings records into the one layout, and writes their verdicts beside the readings when asked to.</summary>
internal sealed class TidyCommand(Terminal terminal, Interruption interruption)
{
    public Command Build()
    {
        var paths = new Argument<string[]>("PATH")
        {
            Description = "Collections' folders, or files of them; this folder or records when not given.",
            DefaultValueFactory = _ => [SharedOptions.UsualFolder()],
        };
        var check = new Option<bool>("--check")
        {
            Description = "Write nothing; list the files that are not tidy, and end with 1 when there is one.",
        };
        var diff = new Option<bool>("--diff") { Description = "Write nothing; show what would change." };
        var verdicts = new Option<bool>("--verdicts")
        {
            Description = "Also write the computed verdict beside each reading and proof that is judged, and mend those that disagree.",
        };
        var shared = new SharedOptions();
        var command = new Command(
            "tidy",
            """
            Bring records into the one layout. No word, no key and no remark changes, and the story below is not touched.

            Examples:
              ohmstead tidy records                      all files of a collection
              ohmstead tidy records/boards/SP-0007.md    one file
              ohmstead tidy records --check              only say which are not tidy
              ohmstead tidy records --diff               only show what would change
              ohmstead tidy records --verdicts           also write the verdicts, for readers without the program
            """
        )
        {
            paths,
            check,
            diff,
            verdicts,
            shared.AsOf,
        };
        command.SetAction(parsed =>
        {
            if (shared.Read(parsed, terminal.Error, (parsed.GetValue(paths) ?? []).FirstOrDefault()) is not { } options)
            {
                return ExitCode.Usage;
            }

            var (named, problem) = NamedFiles.Group(parsed.GetValue(paths) ?? ["."], path => RecordKind.Find(path) is not null);
            if (problem is not null)
            {
                terminal.Error.WriteLine(Printable.Escape(problem));
                return ExitCode.Usage;
            }

            var run = new TidyRun(terminal, isTrial: parsed.GetValue(check) || parsed.GetValue(diff), showsDiff: parsed.GetValue(diff));
            // A file that is being written is finished before the process ends.
            interruption.TakeBackBy(run.Stop);
            foreach (var files in named)
            {
                run.Over(files, new YamlNodeReader(), parsed.GetValue(verdicts) ? options : null);
            }

            return run.End(parsed.GetValue(check));
        });
        return command;
    }
}
