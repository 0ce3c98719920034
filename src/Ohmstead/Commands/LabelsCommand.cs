using System.CommandLine;
using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Collections;
using Ohmstead.Disk;
using Ohmstead.Records.Findings;
using Ohmstead.Report.Html;
using Ohmstead.Report.Labels;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Writes labels to print: for boards, for originals that are kept, for lots of the drawer.</summary>
internal sealed class LabelsCommand(Terminal terminal)
{
    private const string OfBoards = "boards";
    private const string OfOriginals = "originals";
    private const string OfLots = "lots";

    private readonly Argument<string[]> names = new("NAME")
    {
        Description = "The boards, or the lots with --of lots; all when none is given.",
        Arity = ArgumentArity.ZeroOrMore,
    };
    private readonly Option<string> of = new("--of")
    {
        Description = "What the labels are for: boards, the originals that were taken off them and are kept, or lots of the drawer.",
        DefaultValueFactory = _ => OfBoards,
    };
    private readonly Option<int> from = new("--from")
    {
        Description = "The label of the first sheet on which to begin, counted in rows from 1: what was used up before it stays free.",
        DefaultValueFactory = _ => 1,
        HelpName = "N",
    };
    private readonly Option<string?> to = new("--to")
    {
        Description = "The file to write; otherwise labels.html in this folder.",
        HelpName = "FILE",
    };
    private readonly Option<bool> over = OverOption.Make();
    private readonly Option<Uri?> site = SiteOption.Make();
    private readonly LabelSheetOptions sheet = new();
    private readonly SharedOptions shared = new();

    public Command Build()
    {
        of.AcceptOnlyFromAmong(OfBoards, OfOriginals, OfLots);
        var command = new Command(
            "labels",
            """
            Write labels, one page file to print: what the thing is, what can hurt, its number, and a code that leads to its record where
            the collection says its address. No label tells a state: it would still stand there when it is not true any more.

            Examples:
              ohmstead labels --in records
              ohmstead labels SP-0007 --of originals --in records --size 38.1x21.2 --from 4
              ohmstead labels --of lots --in records --paper Letter
              ohmstead labels SP-0007 --in records --size 60x30 --grid 3x9 --gap 3x0 --margin 10x12 --site https://boards.example/
            """
        )
        {
            names,
            of,
            sheet.Size,
            sheet.Paper,
            sheet.Grid,
            sheet.Gap,
            sheet.Margin,
            from,
            site,
            to,
            over,
            shared.Folder,
            shared.AsOf,
            shared.Workers,
        };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var folder = parsed.GetValue(shared.Folder)!;
        if (shared.Read(parsed, terminal.Error) is not { } options || SharedOptions.OpenBoards(folder, terminal.Error) is not { } files)
        {
            return ExitCode.Usage;
        }

        var file = parsed.GetValue(to) ?? "labels.html";
        var target = new OutputFile(file, "<title>Labels</title>"u8.ToArray(), folder);
        var first = parsed.GetValue(from);
        if (
            (
                Path.GetExtension(file) is not (".html" or ".htm")
                    ? $"'{file}' does not end in .html; labels are a page file"
                    : target.Refusal(parsed.GetValue(over))
            ) is
            { } refusal
        )
        {
            return Refused(refusal);
        }

        if (!sheet.Read(parsed).Is(out var format, out var why))
        {
            return Refused(why);
        }

        if (first < 1 || first > format.Count)
        {
            return Refused(string.Create(CultureInfo.InvariantCulture, $"--from {first}: the sheet has labels 1 to {format.Count}"));
        }

        var found = new Dictionary<string, IReadOnlyList<Label>>(StringComparer.Ordinal);
        var result = Collect(parsed, files, options, found);
        var asked = parsed.GetValue(names) ?? [];
        if (asked.FirstOrDefault(name => !found.ContainsKey(name)) is { } missing)
        {
            return Refused(
                parsed.GetValue(of) == OfLots
                    ? Nearest.Told($"there is no lot '{missing}'", Nearest.To(missing, found.Keys))
                    : BoardFinder.Missing(missing, result.Boards)
            );
        }

        // A label that is left out without a word is not missed before the board is.
        if (result.Findings.FirstOrDefault(FileReader.IsPassedOver) is { } closed)
        {
            terminal.Error.WriteLine(
                Printable.Escape($"{closed.Place.Path}: {closed.Message}; labels would be missing, so none were written")
            );
            return ExitCode.Incomplete;
        }

        var pages = new LabelPages(format);
        Label[] labels =
        [
            .. found
                .Where(one => asked.Length == 0 || asked.Contains(one.Key))
                .OrderBy(one => one.Key, StringComparer.Ordinal)
                .SelectMany(one => one.Value),
        ];
        if (labels.FirstOrDefault(pages.LacksRoom) is { } overlong)
        {
            return Refused($"the number '{overlong.Number}' has no room on a label of that size; choose a larger one with --size");
        }

        if (labels.Length == 0)
        {
            return Refused("there is nothing to label: no original that was taken off is told to be kept");
        }

        using var buffer = new PageBuffer();
        pages.Write(buffer, labels, first);
        target.Write(buffer.Written, parsed.GetValue(over));
        Tell(file, format, labels, pages, first);
        return ExitCode.Clean;
    }

    private int Refused(string why)
    {
        terminal.Error.WriteLine(Printable.Escape(why));
        return ExitCode.Usage;
    }

    private RunResult Collect(
        ParseResult parsed,
        CollectionFolder files,
        RunOptions options,
        Dictionary<string, IReadOnlyList<Label>> found
    )
    {
        var isAsked = (parsed.GetValue(names) ?? []).ToHashSet(StringComparer.Ordinal);
        var kind = parsed.GetValue(of);
        var judged = new Dictionary<string, JudgedBoard>(StringComparer.Ordinal);
        RunResult result;
        using (var progress = new Progress(terminal, files.Boards.Count))
        {
            result = new CollectionRun(files, options).Run(progress.Report, seen: board =>
            {
                // Whoever wants a label for a board that is not here any more names it.
                if (isAsked.Contains(board.Board.Id.Value) || (isAsked.Count == 0 && IsHere(board)))
                {
                    judged[board.Board.Id.Value] = board;
                }
            });
        }

        var make = new LabelMaker(result.Workshop, SiteOption.Read(parsed, site, result.Workshop.Collection), options.Today);
        if (kind == OfLots)
        {
            foreach (var lot in result.Workshop.Lots.Values)
            {
                found[lot.Id.Value] = [make.Of(lot)];
            }

            return result;
        }

        foreach (var (number, board) in judged)
        {
            found[number] = kind == OfOriginals ? [.. make.Originals(board)] : [make.Of(board)];
        }

        return result;
    }

    private static bool IsHere(JudgedBoard board) => board.Whereabouts.Presence is not (BoardPresence.Gone or BoardPresence.BrokenUp);

    private void Tell(string file, LabelSheet format, Label[] labels, LabelPages pages, int first)
    {
        var sheets = (first - 1 + labels.Length + format.Count - 1) / format.Count;
        terminal.Out.WriteLine(
            Printable.Escape(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"wrote {file}: {labels.Length} {(labels.Length == 1 ? "label" : "labels")} on {sheets} "
                        + $"{(sheets == 1 ? "sheet" : "sheets")} of {format.Paper.Name}, {format.Columns} by {format.Rows} of "
                        + $"{format.Width} mm by {format.Height} mm; print it at 100 %"
                )
            )
        );
        if (labels.All(label => label.Address is null))
        {
            terminal.Out.WriteLine("no codes: the collection says no address; write site: with it in collection.yaml, or give --site");
        }
        else if (labels.Count(pages.IsTooFine) is > 0 and var fine)
        {
            terminal.Out.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{fine} without a code: its squares would be finer than 0.33 mm on a label of that size; a larger label or a shorter "
                        + $"address has room"
                )
            );
        }
    }
}
