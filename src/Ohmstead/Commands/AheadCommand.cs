using System.CommandLine;
using System.Globalization;
using Ohmstead.Assessment.Ahead;
using Ohmstead.Collections;
using Ohmstead.Disk;
using Ohmstead.Output;
using Ohmstead.Report.Html;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Tells what falls due in the year ahead, or writes it as a calendar.</summary>
internal sealed class AheadCommand(Terminal terminal)
{
    public Command Build()
    {
        var folder = new Argument<string>("FOLDER")
        {
            Description = "The collection's folder; this folder or records when not given.",
            DefaultValueFactory = _ => SharedOptions.UsualFolder(),
        };
        var until = new Option<DateOnly?>("--until")
        {
            Description = "The last day to look at; a year from today when not given.",
            HelpName = "DATE",
            CustomParser = SharedOptions.Day,
        };
        var form = TextOrJson.Make();
        var calendar = new Option<string?>("--calendar")
        {
            Description = "Also write a calendar (iCalendar, RFC 5545) to a file.",
            HelpName = "FILE",
        };
        var over = OverOption.Make();
        var shared = new SharedOptions();
        var command = new Command(
            "ahead",
            """
            Tell what falls due: looks, lives, shelf lives, forming again, calibrations, waits to ask after.

            Examples:
              ohmstead ahead records
              ohmstead ahead records --until 2027-03-31
              ohmstead ahead records --calendar looks.ics
            """
        )
        {
            folder,
            until,
            form,
            calendar,
            over,
            shared.AsOf,
            shared.Thorough,
            shared.Workers,
        };
        command.SetAction(parsed =>
        {
            if (
                shared.Read(parsed, terminal.Error, parsed.GetValue(folder)) is not { } options
                || SharedOptions.Open(parsed.GetValue(folder)!, terminal.Error) is not { } files
            )
            {
                return ExitCode.Usage;
            }

            if (files.Boards.Count == 0 && files.Named("stock.yaml") is null && files.Named("instruments.yaml") is null)
            {
                terminal.Error.WriteLine(
                    $"no records in '{Printable.Escape(files.Root)}': a collection has boards/*.md, stock.yaml or instruments.yaml"
                );
                return ExitCode.Usage;
            }

            var target = parsed.GetValue(calendar) is { } file ? new OutputFile(file, AheadCalendar.Mark, files.Root) : null;
            if (target?.Refusal(parsed.GetValue(over)) is { } refusal)
            {
                terminal.Error.WriteLine(refusal);
                return ExitCode.Usage;
            }

            using var progress = new Progress(terminal, files.Boards.Count);
            var result = new CollectionRun(files, options).Run(progress.Report);
            progress.Dispose();
            var last = parsed.GetValue(until) ?? options.Today.AddYears(1);
            var items = YearAhead.List(result.Workshop, result.Boards, options.Today, last);
            var isIncomplete = result.Findings.Any(FileReader.IsPassedOver);
            if (target is not null && !isIncomplete)
            {
                using var written = new PageBuffer();
                AheadCalendar.Write(written, result.Workshop.Collection.Name, items, options.Today);
                target.Write(written.Written, parsed.GetValue(over));
            }

            Print(items, options.Today, last, parsed.IsJson(form));
            var exit = result.Exit(isStrict: false);
            if (exit != ExitCode.Clean)
            {
                terminal.Error.WriteLine("some records have errors, so something may be missing here; see ohmstead check");
            }

            if (target is not null && isIncomplete)
            {
                terminal.Error.WriteLine("the calendar would lack what cannot be read, so it was not written");
            }

            return exit;
        });
        return command;
    }

    private void Print(IReadOnlyList<DueItem> items, DateOnly today, DateOnly until, bool isJson)
    {
        if (isJson)
        {
            JsonAhead.Write(terminal.Out, items, today, until);
            return;
        }

        var (when, kind, at) = (
            Width(items, item => item.When),
            Width(items, item => DueKinds.Words(item.Kind)),
            Width(items, item => item.At)
        );
        var overdue = items.TakeWhile(item => item.First < today).Count(item => item.IsOverdueOn(today));
        foreach (var item in items)
        {
            terminal.Out.WriteLine(
                Printable.Escape(
                    $"{item.When.PadRight(when)}  {DueKinds.Words(item.Kind).PadRight(kind)}  {item.At.PadRight(at)}  "
                        + $"{item.What}{(item.IsOverdueOn(today) ? " (overdue)" : string.Empty)}"
                )
            );
            terminal.Out.WriteLine(Printable.Escape($"    {item.Why}"));
        }

        terminal.Out.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{items.Count} {(items.Count == 1 ? "thing falls" : "things fall")} due by {until:yyyy-MM-dd}, {overdue} of them overdue"
            )
        );
    }

    private static int Width(IReadOnlyList<DueItem> items, Func<DueItem, string> text) =>
        items.Count == 0 ? 0 : items.Max(item => text(item).Length);
}
