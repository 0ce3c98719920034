using System.CommandLine;
using System.Globalization;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.MovingIn;
using Ohmstead.Output;
using Ohmstead.PartsLists;
using Ohmstead.Records.Model;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Takes old tables over into records.</summary>
internal sealed class TakeInCommand(Terminal terminal)
{
    private const int MostTold = 60;

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
        var command = CommandParts.Of(
            "take-in",
            """
            Take old tables over into records: boards, parts lists, readings, work and lots, from CSV or from a sheet of a workbook
            (book.xlsx, or "book.xlsx#Sheet"). What the columns hold is shown first, and kept beside the collection once it is written.
            All or nothing: while a row is refused nothing is written, and each refused row is told with what to do.

            Examples:
              ohmstead take-in --readings records/lists/readings.csv --days day-first --decimals comma
              ohmstead take-in --boards records/lists/boards.csv --parts records/lists/parts.csv --readings records/lists/readings.csv --days day-first --decimals comma --kind "R=metal film resistor"
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
            shared.Read(parsed, terminal.Error) is { } run
            && SharedOptions.Open(parsed.GetValue(shared.Folder)!, terminal.Error) is { } files
                ? Take(parsed, files, run)
                : ExitCode.Usage
        );
        return command;
    }

    private int Take(ParseResult parsed, CollectionFolder files, RunOptions run)
    {
        var place = MapPlace.Of(parsed.GetValue(map), files.Root);
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
            terminal.Error.WriteLine(Printable.Of(told));
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

        WholeMovement.Write([(files.Root, movement.Files), (mapping.Root, mapping.File is { } file ? [file] : [])], terminal.Error, () =>
        {
            Tell(parsed, movement, taker, isWritten: true);
            if (mapping.File is { } kept)
            {
                terminal.Out.WriteLine(Printable.Of($"{kept.Path}: keeps what the columns hold, for the next time"));
            }

            terminal.Out.Flush();
        });
        if (mapping.Told is not null)
        {
            terminal.Error.WriteLine(Printable.Of(mapping.Told));
        }

        return ExitCode.Clean;
    }

    private void Tell(ParseResult parsed, Movement movement, Taker taker, bool isWritten)
    {
        foreach (var file in movement.Files)
        {
            if (parsed.GetValue(diff))
            {
                UnifiedDiff.Write(terminal.Out, file.Path, file.Before ?? string.Empty, file.After);
                continue;
            }

            var (verb, what) = (file.Before is null, isWritten) switch
            {
                (true, true) => ("written", file.What.Length > 0 ? ": " + file.What : string.Empty),
                (true, false) => ("would be written", file.What.Length > 0 ? ": " + file.What : string.Empty),
                (false, true) => ("added", " " + file.What),
                _ => ("would add", " " + file.What),
            };
            terminal.Out.WriteLine(Printable.Of($"{file.Path}: {verb}{what}"));
        }

        terminal.Out.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{movement.Files.Count(file => file.Before is null)} records begin, {movement.Files.Count(file => file.Before is not null)} grow; {taker.There} entries stand there already"
            )
        );
        if (!isWritten)
        {
            terminal.Out.WriteLine("nothing is written yet; --write writes it");
        }
    }

    private int Refused(ParseResult parsed, CollectionFolder files, IReadOnlyList<OldTable> read, Taker taker, Saying saying)
    {
        var order = read.Select((table, at) => (table, at)).ToDictionary(one => one.table, one => one.at);
        RefusedRow[] all =
        [
            .. taker
                .Refused.OrderBy(one => order[one.Table])
                .ThenBy(one => one.Row)
                .ThenBy(one => one.Column?.Index ?? -1)
                .ThenBy(one => one.Message, StringComparer.Ordinal),
        ];
        foreach (var one in all.Take(MostTold))
        {
            terminal.Error.WriteLine(Printable.Of($"{one.Place}: {one.Message}"));
            if (one.NextStep is not null)
            {
                terminal.Error.WriteLine(Printable.Of($"  = {one.NextStep}"));
            }
        }

        if (all.Length > MostTold)
        {
            terminal.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{all.Length - MostTold} more are not shown"));
        }

        terminal.Error.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{all.Select(one => (one.Table, one.Row)).Distinct().Count()} refused; nothing was written"
            )
        );
        if (parsed.GetValue(write) || parsed.GetValue(refused) is not null)
        {
            foreach (var table in read)
            {
                if (
                    RefusedTable.Write(table, all.Where(one => one.Table == table), saying.Foreign, parsed.GetValue(refused), files.Root) is
                    { } file
                )
                {
                    terminal.Error.WriteLine(
                        Printable.Of($"{file}: the refused rows of {table.Name}; mend them there and give it as --mended beside the table")
                    );
                }
            }
        }

        return ExitCode.Findings;
    }

    private void Show(IReadOnlyList<OldTable> read, Saying saying)
    {
        foreach (var table in read)
        {
            terminal.Out.WriteLine(
                Printable.Of(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{table.File}: {table.Rows.Count()} rows of {table.Sort.Name}; {table.Plan.InWords()}"
                    )
                )
            );
        }

        if (saying.Foreign is { Days: not null } or { Decimals: not null })
        {
            terminal.Out.WriteLine(
                string.Join(
                    ", ",
                    new[] { saying.Foreign.Days, saying.Foreign.Decimals is { } mark ? $"decimal {mark}" : null }.Where(word =>
                        word is not null
                    )
                )
            );
        }

        foreach (
            var (table, column, filled) in read.SelectMany(table =>
                TableReading.NotUsed(table).Select(one => (table, one.Column, one.Filled))
            )
        )
        {
            terminal.Error.WriteLine(
                Printable.Of(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"NOT USED: {table.File}, column {column.Index + 1} '{CsvTableReader.Excerpt(column.Heading)}': its {filled} filled cells are not taken in"
                    )
                )
            );
        }
    }

    private Saying Saying(ParseResult parsed, TableMap kept)
    {
        var kinds = new Dictionary<string, PartKind>(StringComparer.Ordinal);
        foreach (var (letters, word) in kept.Kinds)
        {
            if (PartKinds.All.Means(word, out var kind))
            {
                kinds[letters] = kind;
            }
        }

        var said = parsed.GetValue(pairs.Kinds)!;
        foreach (var (key, kind) in said)
        {
            kinds[key] = kind;
        }

        return new(
            new(parsed.GetValue(tables.Days) ?? kept.Foreign.Days, parsed.GetValue(tables.Decimals) ?? kept.Foreign.Decimals),
            parsed.GetValue(proofsLast) || kept.ProofsLast,
            parsed.GetValue(board),
            parsed.GetValue(on) is { } day ? IsoDate.Text(day) : null,
            Initials.Of(parsed.GetValue(by)),
            kinds,
            Over(kept.Units, parsed.GetValue(pairs.Units)!)
        )
        {
            KeptLetters = kept.Kinds.Keys.Where(letters => !said.ContainsKey(letters)).ToHashSet(StringComparer.Ordinal),
        };
    }

    private static TableMap MapAfter(
        ParseResult parsed,
        TableMap kept,
        IReadOnlyList<(OldTable Table, IReadOnlyDictionary<string, string> Said)> read,
        Saying saying
    )
    {
        var columns = new Dictionary<string, IReadOnlyDictionary<string, string>>(kept.Columns, StringComparer.Ordinal);
        foreach (var (table, said) in read)
        {
            columns[table.Sort.Name] = TableReading.Kept(table, said);
        }

        // A kind said of one place is of these tables; one said of a letter is kept.
        var kinds = saying
            .Kinds.Where(pair => pair.Key.All(char.IsAsciiLetter))
            .ToDictionary(pair => pair.Key, pair => pair.Value.Name, StringComparer.Ordinal);
        return new(saying.Foreign, saying.ProofsLast, columns, kinds, saying.Units);
    }

    // What is said of the columns of a sort of table: kept words, and over them those of this run.
    private static (IReadOnlyDictionary<string, string> Said, string? Fault) Said(
        IReadOnlyList<(string Sort, string Target, string Heading)> said,
        TableSort sort,
        IReadOnlyList<TableSort> sorts,
        TableMap kept
    )
    {
        var own = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (named, target, heading) in said)
        {
            if (named == sort.Name || (named.Length == 0 && sort.Words.Targets.Contains(target, StringComparer.Ordinal)))
            {
                if (named.Length == 0 && sorts.Count(other => other.Words.Targets.Contains(target, StringComparer.Ordinal)) > 1)
                {
                    return (own, $"--columns {target}={heading} can be of more than one of the tables");
                }

                own[target] = heading;
            }
        }

        return (Over(kept.Columns.GetValueOrDefault(sort.Name) ?? new Dictionary<string, string>(StringComparer.Ordinal), own), null);
    }

    private static Dictionary<string, string> Over(IReadOnlyDictionary<string, string> below, IReadOnlyDictionary<string, string> above)
    {
        var all = new Dictionary<string, string>(below, StringComparer.Ordinal);
        foreach (var (key, value) in above)
        {
            all[key] = value;
        }

        return all;
    }

    private static (IReadOnlyDictionary<(string Of, int Row), CsvRow>? Rows, string? Fault, string? NextStep) Mended(string[] given)
    {
        var all = new Dictionary<(string, int), CsvRow>();
        foreach (var file in given)
        {
            var (rows, fault, next) = RefusedTable.Read(file);
            if (rows is null)
            {
                return (null, fault, next);
            }

            foreach (var (key, row) in rows)
            {
                all[key] = row;
            }
        }

        return (all, null, null);
    }

    private int Refuse(string problem, string? next)
    {
        terminal.Error.WriteLine(Printable.Of(problem));
        if (next is not null)
        {
            terminal.Error.WriteLine(Printable.Of($"  = {next}"));
        }

        return ExitCode.Usage;
    }
}
