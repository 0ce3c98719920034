using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Yaml;

/// <content>Lines that stand in the wrong column, and items without their dash.</content>
internal sealed partial class BlockTrouble
{
    private Finding MisplacedItem(ReadOnlySpan<char> content)
    {
        var column = IndentationOf(line);
        var parent = LineLessIndented(line, column);
        var first = parent < 0 ? -1 : LineWithContentBelow(parent);
        var isFirstWithoutDash = first > 0 && first < line && !slice.Source.Line(first).TrimStart().StartsWith("- ");
        if (isFirstWithoutDash && slice.Source.Line(parent).TrimEnd().EndsWith(":") && IndentationOf(first) > IndentationOf(parent))
        {
            var start = slice.Source.LineStart(first) + IndentationOf(first);
            var rest = RestOfLine(start);
            return Syntax(
                start,
                rest.Length,
                $"the first item of {Quotation.Quote(slice.Source.Line(parent).Trim())} has no dash; the next on line {Text(line)} has one",
                rest.Length <= 120
                    ? $"write - {rest}, with the dash in the column of that on line {Text(line)}"
                    : "write - and a space before it"
            );
        }

        // Among the keys of an item: the dash is one too many.
        if (
            parent > 0
            && slice.Source.Line(parent).TrimStart().StartsWith("- ")
            && KeyColumnOfLine(parent) == column
            && !IsInBraces(parent)
        )
        {
            return Syntax(at, 1, "a dash stands before a key of the item above", $"write {content[2..].TrimStart()}");
        }

        var items = first > 0 && first < line && !isFirstWithoutDash ? IndentationOf(first) : NearestDash();
        return Syntax(
            at,
            1,
            items >= 0 && items != column
                ? $"this item is indented by {Spaces(column)}, those above it by {Text(items)}"
                : "a list item stands where a key is expected",
            items >= 0 && items != column
                ? $"indent the item by {Text(items)} spaces, as the items above it are"
                : "indent the item as the items above it are, or write the key before it"
        );
    }

    private Finding Misindented()
    {
        var start = slice.Source.LineStart(line) + IndentationOf(line);
        var content = RestOfLine(start);
        var indentation = IndentationOf(line);
        var above = LineWithContentBefore();

        // Near a column where keys stand, the indentation slipped; in the column of an item's keys the dash is missing.
        var slipped = NearKeyColumn(indentation);
        if (slipped >= 0)
        {
            return Syntax(
                start,
                content.Length,
                $"this line is indented by {Spaces(indentation)}, which fits no line above it",
                $"indent the line by {Spaces(slipped)}"
            );
        }

        if (!Says("expected '-'"))
        {
            return Syntax(
                start,
                content.Length,
                $"this line is indented by {Spaces(indentation)}, which fits no line above it",
                "indent the line as the lines are that it belongs with"
            );
        }

        // Below the keys of an item that stand in lines, the line goes on with them.
        var keys = KeyColumnOfLine(above);
        var isPair = !slice.Source.Line(above).TrimEnd().EndsWith("}") && content[0] != '{' && keys > indentation;
        var owner = LineLessIndented(line, indentation);
        var isKeyAlone = content[^1] == ':' && owner > 0;
        return Syntax(
            start,
            content.Length,
            isPair && !isKeyAlone && HasColon(slice.Source.Line(above).TrimEnd())
                    ? $"this line is indented by {Spaces(indentation)}, line {Text(above)} above it by {Text(keys)}, and no dash begins it"
                : isKeyAlone
                    ? $"{Quotation.Quote(content)} stands in the column of the dashes below "
                        + $"{Quotation.Quote(slice.Source.Line(owner).Trim())} "
                        + "and has none"
                : "this line is no item of the list above it; expected - at its beginning",
            isKeyAlone
                    ? $"move {content} to the column of {Quotation.Quote(slice.Source.Line(owner).Trim())} on line {Text(owner)} "
                        + "if it is a key "
                        + $"beside that; indent it by {Spaces(KeyColumnOfItem(owner, indentation))} if it is a key of the item above"
                : isPair ? $"indent it by {Spaces(keys)} if it goes on with line {Text(above)}, or write - {content} if it begins an item"
                : content.Length <= 120 ? $"write - {content}, or indent it as the list's key is"
                : "write - before it, or indent it as the list's key is"
        );
    }

    // Where the keys of the nearest item stand whose dash is in a column.
    private int KeyColumnOfItem(int owner, int dash)
    {
        for (var above = line - 1; above > owner; above--)
        {
            if (IndentationOf(above) == dash && slice.Source.Line(above).TrimStart().StartsWith("- "))
            {
                return KeyColumnOfLine(above);
            }
        }

        return dash + 2;
    }

    private bool IsInBraces(int number) => slice.Source.Line(number).TrimStart().StartsWith("- {");

    private static string Spaces(int number) => number == 1 ? "1 space" : $"{Text(number)} spaces";

    /// <summary>The column of keys that is one off a line's own, the nearest above; -1 when its own is one, or none is so near.</summary>
    private int NearKeyColumn(int indentation)
    {
        var near = -1;
        var least = slice.Source.LineAt(slice.Start);
        for (var above = line - 1; above >= least && above > line - FarthestLines; above--)
        {
            var content = slice.Source.Line(above).Trim();
            if (content.IsEmpty || content[0] == '#' || !HasColon(content))
            {
                continue;
            }

            var column = content.StartsWith("- {", StringComparison.Ordinal) ? IndentationOf(above) : KeyColumnOfLine(above);
            if (column == indentation || IndentationOf(above) == indentation)
            {
                return -1;
            }

            near = near < 0 && Math.Abs(column - indentation) == 1 && content[0] != '-' ? column : near;
        }

        return near;
    }

    private int NearestDash()
    {
        var least = slice.Source.LineAt(slice.Start);
        for (var above = line - 1; above >= least && above > line - FarthestLines; above--)
        {
            if (slice.Source.Line(above).TrimStart().StartsWith("- "))
            {
                return IndentationOf(above);
            }
        }

        return -1;
    }

    private int LineLessIndented(int number, int column)
    {
        var least = slice.Source.LineAt(slice.Start);
        for (var above = number - 1; above >= least; above--)
        {
            var content = slice.Source.Line(above).TrimStart();
            if (!content.IsEmpty && content[0] != '#' && IndentationOf(above) < column)
            {
                return above;
            }
        }

        return -1;
    }

    private int LineWithContentBelow(int number)
    {
        for (var below = number + 1; below <= line; below++)
        {
            var content = slice.Source.Line(below).TrimStart();
            if (!content.IsEmpty && content[0] != '#')
            {
                return below;
            }
        }

        return -1;
    }
}
