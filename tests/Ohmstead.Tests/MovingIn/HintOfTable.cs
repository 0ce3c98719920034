using System.Globalization;
using System.Text.RegularExpressions;

namespace Ohmstead.Tests.MovingIn;

/// <summary>Does what a refusal of a table says to do, word for word.</summary>
/// <param name="Rows">The table with what was done in it, cell by cell.</param>
/// <param name="Options">What is said on the command line besides.</param>
internal sealed partial record HintOfTable(IReadOnlyList<IReadOnlyList<string>> Rows, IReadOnlyList<string> Options)
{
    /// <summary>Follows one.</summary>
    /// <param name="told">What is told of the table: the place with the message, and the next step on the line behind it.</param>
    /// <param name="rows">The table.</param>
    public static HintOfTable Follow(string told, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        var refused = Refused().Match(told);
        Assert.True(refused.Success, told);
        var (row, column) = (Number(refused, "row") - 1, Number(refused, "column") - 1);
        var next = refused.Groups["next"].Value;
        List<List<string>> changed = [.. rows.Select(cells => cells.ToList())];
        if (Option().Match(next) is { Success: true } option)
        {
            return new(rows, [option.Groups["name"].Value, option.Groups["value"].Value.Trim('"')]);
        }

        if (Headings().Match(next) is { Success: true } headings)
        {
            changed.Insert(0, [.. headings.Groups["names"].Value.Split(", ")]);
        }
        else if (next.StartsWith("take the row out of the table", StringComparison.Ordinal))
        {
            changed.RemoveAt(row);
        }
        else if (Both().IsMatch(next))
        {
            var other = Number(Earlier().Match(told), "row") - 1;
            foreach (Match both in Differing().Matches(next))
            {
                var at = changed[0].IndexOf(both.Groups["heading"].Value);
                var (there, here) = (both.Groups["there"].Value, both.Groups["here"].Value);
                changed[other][at] = there == "empty" ? here : there;
            }

            changed.RemoveAt(row);
        }
        else if (next.StartsWith("give each place a row of its own", StringComparison.Ordinal))
        {
            var places = changed[row][column].Split(", ");
            changed.InsertRange(
                row,
                places.Skip(1).Select(place => changed[row].Select((cell, at) => at == column ? place : cell).ToList())
            );
            changed[row + places.Length - 1][column] = places[0];
        }
        else if (InHeading().Match(next) is { Success: true } heading)
        {
            changed[0][column] = heading.Groups["heading"].Value;
        }
        else if (Written().Match(next) is { Success: true } written)
        {
            changed[row][column] = written.Groups["text"].Value;
        }
        else
        {
            Assert.Fail($"nobody can do this word for word: {next}");
        }

        return new(changed, []);
    }

    private static int Number(Match match, string group) =>
        match.Groups[group].Success ? int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex("(, row (?<row>[0-9]+))?(, column (?<column>[0-9]+) '[^']*')?: .+\n  = (?<next>.+)\n", RegexOptions.ExplicitCapture)]
    private static partial Regex Refused();

    [GeneratedRegex("^(?<name>--[a-z-]+) (?<value>\"[^\"]*\"|[^ ,]+)", RegexOptions.ExplicitCapture)]
    private static partial Regex Option();

    [GeneratedRegex(
        "^put a row of headings above the first row, one for each of its [0-9]+ columns, such as (?<names>.+)$",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex Headings();

    [GeneratedRegex("^write what both say into one of the rows, and take the other out: ")]
    private static partial Regex Both();

    [GeneratedRegex("stands on row (?<row>[0-9]+) of", RegexOptions.ExplicitCapture)]
    private static partial Regex Earlier();

    [GeneratedRegex("'(?<heading>[^']+)' is (?<there>.+?) there and (?<here>.+?) here", RegexOptions.ExplicitCapture)]
    private static partial Regex Differing();

    [GeneratedRegex("or name it in the heading, as in '(?<heading>[^']+)'$", RegexOptions.ExplicitCapture)]
    private static partial Regex InHeading();

    [GeneratedRegex("^write (the [a-z]+ (whole, )?as (in )?|such as )?(?<text>[^,]+?)(,.+| or .+)?$", RegexOptions.ExplicitCapture)]
    private static partial Regex Written();
}
