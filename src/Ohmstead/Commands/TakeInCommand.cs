using System.CommandLine;
using System.Globalization;
using Ohmstead.Collections;
using Ohmstead.MovingIn;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Takes old tables over into records.</summary>
internal sealed partial class TakeInCommand(Terminal terminal)
{
    private readonly TakeInOptions tables = new();
    private readonly StartPartsOptions pairs = new();
    private readonly SharedOptions shared = new();
    private readonly Option<string?> board = new("--board")
    {
        CompletionSources = { Completions.Boards },
        Description = "The board of tables that have no column for it.",
        HelpName = "NUMBER",
    };
    private readonly Option<DateOnly?> on = new("--on")
    {
        Description = "The day of tables that have no column for it, such as 2019-03-14.",
        HelpName = "DATE",
        CustomParser = SharedOptions.Day,
    };
    private readonly Option<string?> by = new("--by") { Description = "Initials of who worked, where a table does not say it." };
    private readonly Option<bool> proofsLast = new("--proofs-last")
    {
        Description = "On a day with work and proofs the proofs came last; without it such a day is refused.",
    };
    private readonly Option<string[]> mended = new("--mended")
    {
        Description = "A table of refused rows, mended: its rows stand in place of those they came from. May be given several times.",
        HelpName = "FILE",
        DefaultValueFactory = _ => [],
    };
    private readonly Option<string?> refused = new("--refused")
    {
        Description =
            "The folder into which refused rows are written, as a table of their own. Otherwise beside their table, with --write.",
        HelpName = "FOLDER",
    };
    private readonly Option<string?> map = new("--map")
    {
        Description = "The file that keeps what the columns hold; tables.yaml in the folder of the collection when not given.",
        HelpName = "FILE",
    };
    private readonly Option<bool> sure = new("--sure")
    {
        Description = "Take in what check would call wrong all the same, as long as it can be read.",
    };
    private readonly Option<bool> diff = new("--diff") { Description = "Show every line that would be written." };
    private readonly Option<bool> write = new("--write")
    {
        Description = "Write it. Without it everything is shown and nothing is written.",
    };

    public Command Build()
    {
        var command = CommandParts.Build(
            "take-in",
            """
            Take old tables over into records: boards, parts lists, readings, work and lots, from CSV or from a sheet of a workbook
            (book.xlsx, or "book.xlsx#Sheet"). What the columns hold is shown first, and kept beside the collection once it is written.
            All or nothing: while a row is refused nothing is written, and each refused row is told with what to do.

            Examples:
              ohmstead take-in --readings records/lists/readings.csv --days day-first --decimals comma
              ohmstead take-in --boards records/lists/boards.csv --days day-first --columns "note=Shelf" --diff
            """,
            [
                .. tables.Tables.Select(table => table.Option),
                tables.Columns,
                tables.Days,
                tables.Decimals,
                pairs.Kinds,
                pairs.Units,
                board,
                on,
                by,
                proofsLast,
                mended,
                refused,
                map,
                sure,
                diff,
                write,
                shared.Folder,
                shared.AsOf,
                shared.Workers,
            ]
        );
        command.SetAction(parsed =>
            shared.Read(parsed, terminal.Error, writes: true) is { } run
            && SharedOptions.Open(parsed.GetValue(shared.Folder)!, terminal.Error) is { } files
                ? Take(parsed, files, run)
                : ExitCode.Usage
        );
        return command;
    }

    private int Take(ParseResult parsed, CollectionFolder files, RunOptions run)
    {
        if (files.WhyNotWhole is { } closed)
        {
            terminal.Error.WriteLine(Printable.Escape(closed));
            return ExitCode.Incomplete;
        }

        var place = MapPlace.Find(parsed.GetValue(map), files.Root);
        var (kept, text, fault, next) = place.Read();
        if (kept is null)
        {
            return Refuse(fault!, next);
        }

        var (rows, wrong, step) = Mended(parsed.GetValue(mended)!);
        if (rows is null)
        {
            return Refuse(wrong!, step);
        }

        var read = new List<(OldTable Table, IReadOnlyDictionary<string, string> Said)>();
        var named = tables.Tables.SelectMany(table => parsed.GetValue(table.Option)!.Select(file => (table.Sort, File: file))).ToArray();
        if (named.Length == 0)
        {
            return Refuse(
                "no table was given",
                "say what its rows are and where it is: --boards, --parts, --readings, --work or --lots FILE"
            );
        }

        foreach (var (sort, file) in named)
        {
            var (said, unclear) = Said(parsed.GetValue(tables.Columns)!, sort, [.. named.Select(one => one.Sort).Distinct()], kept);
            if (unclear is not null)
            {
                return Refuse(unclear, $"write {sort.Name}.KEY=HEADING");
            }

            var needless = new HashSet<string>(StringComparer.Ordinal);
            _ = parsed.GetValue(board) is not null && needless.Add(TableSort.Board);
            _ = parsed.GetValue(on) is not null && needless.Add(TableSort.Date);
            var (table, noTable, how) = TableReading.Read(
                file,
                sort,
                said,
                sort == TableSort.Boards ? new HashSet<string>() : needless,
                rows
            );
            if (table is null)
            {
                return Refuse(
                    kept.Columns.ContainsKey(sort.Name) && how?.StartsWith("--columns", StringComparison.Ordinal) == true
                        ? $"{noTable} ({place.Told} keeps what its columns hold)"
                        : noTable!,
                    how
                );
            }

            read.Add((table, said));
        }

        if (
            rows.Keys.FirstOrDefault(row =>
                read.All(one => one.Table.Name != row.Of || one.Table.Cells.Rows.All(known => known.Line != row.Row))
            ) is
            { Of: not null } strange
        )
        {
            return Refuse(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"a mended row is row {strange.Row} of {strange.Of}, which is not among the tables"
                ),
                $"give the table that it came from, too"
            );
        }

        var saying = Saying(parsed, kept);
        Show([.. read.Select(one => one.Table)], saying);
        var after = MapAfter(parsed, kept, read, saying);
        return Move(parsed, files, run, [.. read.Select(one => one.Table)], saying, place.File(kept, text, after));
    }

    private int Move(
        ParseResult parsed,
        CollectionFolder files,
        RunOptions run,
        IReadOnlyList<OldTable> read,
        Saying saying,
        (string Root, MovedFile? File, string? Told) mapping
    )
    {
        var taker = new Taker(files, new CollectionRun(files.Only([]), run).Run().Workshop, saying);
        foreach (var table in read)
        {
            taker.Take(table);
        }

        taker.Finish();
        var movement = new Movement(files, run, taker, saying.ProofsLast);
        movement.Make(parsed.GetValue(sure));

        foreach (var told in taker.Told.Take(MostTold))
        {
            terminal.Error.WriteLine(Printable.Escape(told));
        }

        if (taker.Told.Count > MostTold)
        {
            terminal.Error.WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"{taker.Told.Count - MostTold} more remarks are not shown")
            );
        }

        if (taker.Refused.Count > 0)
        {
            return Refused(parsed, files, read, taker, saying);
        }

        if (!parsed.GetValue(write))
        {
            Tell(parsed, movement, taker, isWritten: false);
            return ExitCode.Clean;
        }

        RecordChange[] moved = [.. movement.Files.Select(Change)];
        WholeMovement.Write([(files.Root, moved), (mapping.Root, mapping.File is { } file ? [Change(file)] : [])], terminal.Error, () =>
        {
            Tell(parsed, movement, taker, isWritten: true);
            if (mapping.File is { } kept)
            {
                terminal.Out.WriteLine(Printable.Escape($"{kept.Path}: keeps what the columns hold, for the next time"));
            }

            terminal.Out.Flush();
        });
        if (mapping.Told is not null)
        {
            terminal.Error.WriteLine(Printable.Escape(mapping.Told));
        }

        return ExitCode.Clean;
    }

    private static RecordChange Change(MovedFile file) => new(file.Path, file.Before, file.After);
}
