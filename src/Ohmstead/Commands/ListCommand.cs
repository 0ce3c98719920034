using System.CommandLine;
using Ohmstead.Collections;
using Ohmstead.Output;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Lists something that is computed over the whole collection: the drawer, the orders, what to buy.</summary>
/// <param name="terminal">Where it is told.</param>
/// <param name="name">The word of the command.</param>
/// <param name="about">What it lists.</param>
/// <param name="list">Makes the list out of a run.</param>
internal sealed class ListCommand(Terminal terminal, string name, string about, Func<RunResult, DateOnly, Listing> list)
{
    public Command Build()
    {
        var folder = new Argument<string>("FOLDER")
        {
            Description = "The collection's folder; this folder or records when not given.",
            DefaultValueFactory = _ => SharedOptions.UsualFolder(),
        };
        var form = ListForm.Option();
        var shared = new SharedOptions();
        var command = new Command(name, about) { folder, form, shared.AsOf, shared.Workers };
        command.SetAction(parsed =>
        {
            if (
                shared.Read(parsed, terminal.Error, parsed.GetValue(folder)) is not { } options
                || SharedOptions.Open(parsed.GetValue(folder)!, terminal.Error) is not { } files
            )
            {
                return ExitCode.Usage;
            }

            RunResult result;
            using (var progress = new Progress(terminal, files.Boards.Count))
            {
                result = new CollectionRun(files, options).Run(progress.Report);
            }

            list(result, options.Today).Write(terminal.Out, parsed.GetValue(form)!);
            return result.Findings.Any(FileReader.IsPassedOver) ? ExitCode.Incomplete : ExitCode.Clean;
        });
        return command;
    }
}
