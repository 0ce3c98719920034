using System.CommandLine;
using System.Globalization;
using Ohmstead.Assessment.Families;
using Ohmstead.Collections;
using Ohmstead.Output;
using Ohmstead.Records.Findings;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Tells which families of parts fail, how sure that is, and at what ages.</summary>
internal sealed class FailuresCommand(Terminal terminal)
{
    public Command Build()
    {
        var folder = new Argument<string>("FOLDER")
        {
            Description = "The collection's folder; this folder or records when not given.",
            DefaultValueFactory = _ => SharedOptions.UsualFolder(),
        };
        var form = TextOrJson.Make();
        var shared = new SharedOptions();
        var command = new Command(
            "failures",
            """
            Tell which families of parts fail: counts, shares with intervals, ages at failure.

            Examples:
              ohmstead failures records
              ohmstead failures records --form json
            """
        )
        {
            folder,
            form,
            shared.AsOf,
            shared.Workers,
        };
        command.SetAction(parsed =>
        {
            if (
                shared.Read(parsed, terminal.Error, parsed.GetValue(folder)) is not { } options
                || SharedOptions.OpenBoards(parsed.GetValue(folder)!, terminal.Error) is not { } files
            )
            {
                return ExitCode.Usage;
            }

            return Tell(files, options, parsed.IsJson(form));
        });
        return command;
    }

    private int Tell(CollectionFolder files, RunOptions options, bool asJson)
    {
        RunResult result;
        using (var progress = new Progress(terminal, files.Boards.Count))
        {
            result = new CollectionRun(files, options).Run(progress.Report);
        }

        var families = CollectionFamilies.Count(result.Boards);
        if (asJson)
        {
            FamiliesJson.Write(terminal.Out, families);
        }
        else
        {
            FamiliesText.Write(terminal.Out, families);
        }

        var errors = result.Findings.Where(finding => finding.Severity == Severity.Error).Sum(finding => 1 + finding.More);
        if (errors > 0)
        {
            terminal.Error.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{errors} {(errors == 1 ? "error" : "errors")} in the records: what could not be read is not counted; see ohmstead "
                        + $"check"
                )
            );
        }

        return result.Findings.Any(FileReader.IsPassedOver) ? ExitCode.Incomplete : ExitCode.Clean;
    }
}
