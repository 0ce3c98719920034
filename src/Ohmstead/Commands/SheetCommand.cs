using System.CommandLine;
using Ohmstead.Collections;
using Ohmstead.Disk;
using Ohmstead.Report.Html;
using Ohmstead.Report.Sheets;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Writes a sheet to take to the bench on paper.</summary>
internal sealed class SheetCommand(Terminal terminal)
{
    public Command Build()
    {
        var board = new Argument<string>("BOARD") { Description = "The number of the board, such as SP-0007." };
        board.CompletionSources.Add(Completions.Boards);
        var paper = new Option<string>("--paper")
        {
            Description = "The paper it is printed on: A4 or Letter.",
            DefaultValueFactory = _ => Paper.A4.Name,
        };
        paper.AcceptOnlyFromAmong([.. Paper.All.Select(size => size.Name)]);
        var to = new Option<string?>("--to")
        {
            Description = "The file to write; otherwise BOARD-sheet.html in this folder.",
            HelpName = "FILE",
        };
        var over = OverOption.Make();
        var site = SiteOption.Make();
        var shared = new SharedOptions();
        var command = new Command(
            "sheet",
            """
            Write a sheet for the bench, one page file to print: cautions, limits worked out beforehand, room to write.

            Examples:
              ohmstead sheet SP-0007 --in records
              ohmstead sheet SP-0007 --paper Letter --to sheet.html
            """
        )
        {
            board,
            paper,
            to,
            over,
            site,
            shared.Folder,
            shared.AsOf,
        };
        command.SetAction(parsed =>
        {
            if (
                shared.Read(parsed, terminal.Error) is not { } options
                || SharedOptions.Open(parsed.GetValue(shared.Folder)!, terminal.Error) is null
                || BoardFinder.Find(parsed.GetValue(shared.Folder)!, parsed.GetValue(board)!, options, terminal.Error) is not { } found
            )
            {
                return ExitCode.Usage;
            }

            var file = parsed.GetValue(to) ?? Path.GetFileNameWithoutExtension(found.Board.Board.Path) + "-sheet.html";
            if (Path.GetExtension(file) is not (".html" or ".htm"))
            {
                terminal.Error.WriteLine($"'{Printable.Escape(file)}' does not end in .html; a sheet is a page file");
                return ExitCode.Usage;
            }

            var target = new OutputFile(file, "<title>Bench sheet "u8.ToArray(), parsed.GetValue(shared.Folder)!);
            if (target.Refusal(parsed.GetValue(over)) is { } refusal)
            {
                terminal.Error.WriteLine(refusal);
                return ExitCode.Usage;
            }

            if (WhyIncomplete(found) is { } incomplete)
            {
                terminal.Error.WriteLine(Printable.Escape(incomplete));
                return ExitCode.Incomplete;
            }

            using var buffer = new PageBuffer();
            BenchSheet.Write(
                buffer,
                found.Board,
                Paper.All.First(size => size.Name == parsed.GetValue(paper)),
                options.Today,
                found.Collection,
                SiteOption.Read(parsed, site, found.Collection)
            );
            target.Write(buffer.Written, parsed.GetValue(over));
            terminal.Out.WriteLine($"wrote {Printable.Escape(file)}, ready to print on {parsed.GetValue(paper)}");
            return ExitCode.Clean;
        });
        return command;
    }

    // A sheet that lacks parts sends somebody to the bench with half of the work.
    private static string? WhyIncomplete(FoundBoard found) =>
        found.Findings.FirstOrDefault(FileReader.IsPassedOver) is { } closed
            ? $"{closed.Place.Path}: {closed.Message}; the sheet would lack what stands there, so it was not written"
        : found.Board.Board.Design is { } design && !found.Workshop.Designs.ContainsKey(design.Value)
            ? $"the design '{design.Value}' of {found.Board.Board.Id.Value} was not read; the sheet would lack its parts, so it was not "
                + "written; "
                + "ohmstead check tells why"
        : null;
}
