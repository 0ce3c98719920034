using System.CommandLine;
using System.CommandLine.Parsing;
using Ohmstead.MovingIn;
using Ohmstead.Records.Findings;

namespace Ohmstead.Commands;

/// <summary>The options of taking in tables that hold words of a closed list or pairs; each word is checked where it is read.</summary>
internal sealed class TakeInOptions
{
    /// <summary>The tables, by what their rows are.</summary>
    public IReadOnlyList<(TableSort Sort, Option<string[]> Option)> Tables { get; } =
    [
        (
            TableSort.Boards,
            Table("--boards", "A table of boards, one a row: its number, title, design, serial, made, arrived. May be given several times.")
        ),
        (
            TableSort.Parts,
            Table(
                "--parts",
                "A table of the parts of boards: the board, the references (C1, C5-C8), the value. May be given several times."
            )
        ),
        (
            TableSort.Readings,
            Table(
                "--readings",
                "A table of readings, one a row: the board, the day, the part or point, what was read. May be given several times."
            )
        ),
        (
            TableSort.Work,
            Table(
                "--work",
                "A table of work, one thing done a row: the board, the day, the part, what was done. May be given several times."
            )
        ),
        (
            TableSort.Lots,
            Table(
                "--lots",
                "A table of the lots in the drawer, one a row: its name, the kind of part, the value, how many. May be given several times."
            )
        ),
    ];

    /// <summary>What the columns hold.</summary>
    public Option<IReadOnlyList<(string Sort, string Target, string Heading)>> Columns { get; } =
        new("--columns")
        {
            Description =
                "What the columns hold, such as \"part=Ref,esr=ESR ohm\", or \"readings.note=Remark\" of one table among "
                + "several; #3 names the third "
                + "column, and \"note=\" takes a guess back.",
            HelpName = "KEY=HEADING,...",
            CustomParser = Pairs,
            DefaultValueFactory = _ => [],
        };

    /// <summary>How days are written.</summary>
    public Option<string?> Days { get; } = OneOf("--days", "How the tables write days that are not 2026-03-14", ForeignText.DayWords);

    /// <summary>The decimal mark.</summary>
    public Option<string?> Decimals { get; } = OneOf("--decimals", "The decimal mark of the tables", ForeignText.DecimalWords);

    private static Option<string[]> Table(string name, string description) =>
        new(name)
        {
            Description = description,
            HelpName = "FILE",
            AllowMultipleArgumentsPerToken = false,
            DefaultValueFactory = _ => [],
        };

    private static Option<string?> OneOf(string name, string description, IReadOnlyList<string> words)
    {
        var option = new Option<string?>(name) { Description = $"{description}: {string.Join(", ", words)}.", HelpName = "WORD" };
        option.AcceptOnlyFromAmong([.. words]);
        return option;
    }

    private static List<(string Sort, string Target, string Heading)> Pairs(ArgumentResult result)
    {
        var pairs = new List<(string Sort, string Target, string Heading)>();
        foreach (var word in result.Tokens.SelectMany(token => token.Value.Split(',')))
        {
            var sign = word.IndexOf('=', StringComparison.Ordinal);
            if (sign < 1)
            {
                result.AddError($"'{word}' is no pair, such as part=Ref");
                continue;
            }

            var (key, heading) = (word[..sign].Trim(), word[(sign + 1)..].Trim());
            var dot = key.IndexOf('.', StringComparison.Ordinal);
            var (sort, target) = dot < 0 ? (string.Empty, key) : (key[..dot], key[(dot + 1)..]);
            var sorts = TableSort.All.Where(one => sort.Length == 0 || one.Name == sort).ToArray();
            if (sorts.Length == 0)
            {
                result.AddError($"'{sort}' is no sort of table; there are {string.Join(", ", TableSort.All.Select(one => one.Name))}");
            }
            else if (sorts.All(one => !one.Words.Targets.Contains(target, StringComparer.Ordinal)))
            {
                var known = sorts.SelectMany(one => one.Words.Targets).Distinct(StringComparer.Ordinal).ToArray();
                result.AddError(
                    Nearest.Told(
                        $"'{target}' is nothing a column can hold",
                        Nearest.To(target, known),
                        $"; it can hold {string.Join(", ", known)}"
                    )
                );
            }

            pairs.Add((sort, target, heading));
        }

        return pairs;
    }
}
