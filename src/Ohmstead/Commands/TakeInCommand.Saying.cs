using System.CommandLine;
using Ohmstead.Electronics;
using Ohmstead.MovingIn;
using Ohmstead.PartsLists;
using Ohmstead.Records.Model;

namespace Ohmstead.Commands;

// What a person says, now and in the file that is kept.
internal sealed partial class TakeInCommand
{
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
            Initials.Clean(parsed.GetValue(by)),
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
}
