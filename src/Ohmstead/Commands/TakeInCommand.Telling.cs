using System.CommandLine;
using System.Globalization;
using Ohmstead.Collections;
using Ohmstead.MovingIn;
using Ohmstead.Output;
using Ohmstead.PartsLists;
using Ohmstead.Running;

namespace Ohmstead.Commands;

// What a run tells: the columns, what would be written, and each row that is refused.
internal sealed partial class TakeInCommand
{
    private const int MostTold = 60;

    // So many do not come to the bench in one day.
    private const int ManyBoards = 10;

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
            terminal.Out.WriteLine(Printable.Escape($"{file.Path}: {verb}{what}"));
        }

        terminal.Out.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{movement.Files.Count(file => file.Before is null)} records begin, "
                    + $"{movement.Files.Count(file => file.Before is not null)} grow; {taker.There} entries stand there already"
            )
        );
        if (
            movement.Files.Count(file => file.Before is null) >= ManyBoards
            && BenchDay.CollectionIn(parsed.GetValue(shared.Folder)!) is not { ToldBefore: not null }
        )
        {
            terminal.Out.WriteLine(
                "where this is old history, 'ohmstead told DATE' takes what was done before a day as it was told "
                    + "(told_before in collection.yaml)"
            );
        }

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
            terminal.Error.WriteLine(Printable.Escape($"{one.Place}: {one.Message}"));
            if (one.NextStep is not null)
            {
                terminal.Error.WriteLine(Printable.Escape($"  = {one.NextStep}"));
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
                        Printable.Escape(
                            $"{file}: the refused rows of {table.Name}; mend them there and give it as --mended beside the table"
                        )
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
                Printable.Escape(
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
                Printable.Escape(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"NOT USED: {table.File}, column {column.Index + 1} '{CsvTableReader.Excerpt(column.Heading)}': its "
                            + $"{filled} filled cells are not taken in"
                    )
                )
            );
        }
    }

    private int Refuse(string problem, string? next)
    {
        terminal.Error.WriteLine(Printable.Escape(problem));
        if (next is not null)
        {
            terminal.Error.WriteLine(Printable.Escape($"  = {next}"));
        }

        return ExitCode.Usage;
    }
}
