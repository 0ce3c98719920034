using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;

namespace Ohmstead.Yaml.Plain;

/// <summary>Builds the nodes of YAML in its plainest form. A method that returns null is in doubt.</summary>
internal sealed class PlainTree
{
    // What the library tells before and behind the nodes: of the stream and of the document.
    private const int EventsAround = 4;

    private readonly PlainCursor cursor = new();
    private readonly LinesBefore? lines;
    private readonly PlainScalars scalars;
    private readonly List<MappingEntry> entries = [];
    private readonly List<Node> items = [];
    private int eventsLeft;

    /// <summary>Builds nodes.</summary>
    /// <param name="lines">The entries of the file before; null where the files that are read have nothing to do with each other.</param>
    internal PlainTree(LinesBefore? lines)
    {
        scalars = new PlainScalars(cursor, new RecentTexts());
        this.lines = lines;
    }

    /// <summary>The nodes of a stretch of a file, or null when it is for the library to read.</summary>
    internal MappingNode? Read(SourceText source, int start, int end, ReadingLimits limits)
    {
        eventsLeft = limits.Events - EventsAround;
        scalars.Open(limits.FieldBytes);
        lines?.Begin(source.Text, limits.FieldBytes);
        cursor.Open(source, start, end);
        var root = cursor.IsAtEnd || cursor.Column > 0 ? null : Mapping(limits.Depth);
        var isWhole = cursor is { IsInDoubt: false, IsAtEnd: true };
        cursor.Close();

        // What was begun before a doubt is not kept beside what the library makes of the same text.
        entries.Clear();
        items.Clear();
        return isWhole ? root : null;
    }

    private MappingNode? Mapping(int levels)
    {
        if (!Takes(2))
        {
            return null;
        }

        var column = cursor.Column;
        var spot = cursor.SpotAt(cursor.At, 0);
        var first = entries.Count;
        var keys = new RepeatedKeys(entries, first);
        do
        {
            if (scalars.KeyLength() is not (> 0 and var length) || !Takes(1))
            {
                return null;
            }

            var key = scalars.Key(length);
            if (levels == 0 || BehindKey(column, levels - 1) is not { } value || keys.Find(key.Text) is not null)
            {
                return null;
            }

            entries.Add(new MappingEntry(key.Spot, key.Text, value));
            keys.Added();
        } while (!cursor.IsInDoubt && !cursor.IsAtEnd && cursor.Column == column);

        return IsDeeper(column) ? null : new MappingNode(spot, Take(entries, first), IsFlow: false);
    }

    private SequenceNode? Sequence(int levels)
    {
        if (!Takes(2))
        {
            return null;
        }

        var column = cursor.Column;
        var spot = cursor.SpotAt(cursor.At, 0);
        var first = items.Count;
        do
        {
            cursor.At++;
            cursor.PassSpaces();
            var item =
                levels == 0 ? null
                : scalars.KeyLength() > 0 ? Mapping(levels - 1)
                : Value(column, levels - 1);
            if (item is null)
            {
                return null;
            }

            items.Add(item);
        } while (!cursor.IsInDoubt && !cursor.IsAtEnd && cursor.Column == column && IsAtDash);

        return IsDeeper(column) ? null : new SequenceNode(spot, Take(items, first), IsFlow: false);
    }

    private bool IsAtDash => cursor is { Next: '-', AfterNext: ' ' };

    private bool IsDeeper(int column) => cursor.IsInDoubt || (!cursor.IsAtEnd && cursor.Column > column);

    private Node? BehindKey(int column, int levels)
    {
        var colon = cursor.At;
        cursor.PassSpaces();
        if (cursor.Next is not ('\n' or '#'))
        {
            return Value(column, levels);
        }

        // A comment that follows the colon needs the space that was passed.
        cursor.At = colon;
        cursor.FinishLine();
        return cursor.IsInDoubt || cursor.IsAtEnd || cursor.Column < column ? null
            : IsAtDash ? Sequence(levels)
            : cursor.Column > column && scalars.KeyLength() > 0 ? Mapping(levels)
            : null;
    }

    /// <summary>A value on the line of its key or dash, and nothing deeper below it.</summary>
    private Node? Value(int column, int levels)
    {
        var value =
            cursor.Next is '{' or '[' ? FlowOnce(column, levels)
            : Takes(1) ? scalars.OfLine()
            : null;
        if (value is null)
        {
            return null;
        }

        cursor.FinishLine();
        return IsDeeper(column) ? null : value;
    }

    // The entry of the file before, where it stands there again.
    private Node? FlowOnce(int column, int levels)
    {
        var events = 0;
        if (lines?.Find(cursor, levels, out events) is { } same)
        {
            return Takes(events) ? same : null;
        }

        var (line, place, start, left) = (cursor.Line, cursor.Column, cursor.At, eventsLeft);
        var read = Flow(column, levels);
        if (read is not null && !cursor.IsInDoubt && cursor.Line == line)
        {
            lines?.Add(line, place, start..cursor.At, levels, left - eventsLeft, read);
        }

        return read;
    }

    private Node? Flow(int column, int levels) =>
        cursor.Next switch
        {
            _ when levels == 0 => null,
            '{' when Takes(2) => FlowMapping(column, levels - 1),
            '[' when Takes(2) => FlowSequence(column, levels - 1),
            not ('{' or '[') when Takes(1) => scalars.OfFlow(),
            _ => null,
        };

    /// <summary>Counts what the library would tell as events: one for a word, two for a mapping or a list; false behind the
    /// limit.</summary>
    private bool Takes(int events) => (eventsLeft -= events) >= 0;

    private MappingNode? FlowMapping(int column, int levels)
    {
        var spot = cursor.SpotAt(cursor.At, 1);
        var first = entries.Count;
        var keys = new RepeatedKeys(entries, first);
        for (var isFirst = true; !IsClosed('}', isFirst, column); isFirst = false)
        {
            if (cursor.IsInDoubt || scalars.KeyLength() is not (> 0 and var length) || !char.IsAsciiLetter(cursor.Next) || !Takes(1))
            {
                return null;
            }

            var key = scalars.Key(length);
            cursor.PassSpaces();
            if (keys.Find(key.Text) is not null || Flow(column, levels) is not { } value)
            {
                return null;
            }

            entries.Add(new MappingEntry(key.Spot, key.Text, value));
            keys.Added();
        }

        return new MappingNode(spot, Take(entries, first), IsFlow: true);
    }

    private SequenceNode? FlowSequence(int column, int levels)
    {
        var spot = cursor.SpotAt(cursor.At, 1);
        var first = items.Count;
        for (var isFirst = true; !IsClosed(']', isFirst, column); isFirst = false)
        {
            if (cursor.IsInDoubt || Flow(column, levels) is not { } item)
            {
                return null;
            }

            items.Add(item);
        }

        return new SequenceNode(spot, Take(items, first), IsFlow: true);
    }

    /// <summary>Passes the bracket or the comma before the next item; true when there is no next one.</summary>
    private bool IsClosed(char bracket, bool isFirst, int column)
    {
        if (!isFirst)
        {
            cursor.PassSpaces();
            if (cursor.Next == bracket)
            {
                cursor.At++;
                return true;
            }

            // A comma without a space may stand inside a number; the library's reader looks closer.
            if (cursor.Next != ',' || cursor.AfterNext is not (' ' or '\n'))
            {
                cursor.Doubt();
                return false;
            }
        }

        cursor.At++;
        cursor.PassToNextInFlow(column);
        if (!isFirst || cursor.Next != bracket)
        {
            return false;
        }

        cursor.At++;
        return true;
    }

    private static ImmutableArray<T> Take<T>(List<T> open, int first)
    {
        var taken = ImmutableArray.Create(CollectionsMarshal.AsSpan(open)[first..]);
        open.RemoveRange(first, taken.Length);
        return taken;
    }
}
