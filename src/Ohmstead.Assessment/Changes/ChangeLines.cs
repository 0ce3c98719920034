using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Records.Entries;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Changes;

/// <summary>One line about what differs.</summary>
/// <param name="Depth">How far it stands in.</param>
/// <param name="Text">The line.</param>
public readonly record struct ChangeLine(int Depth, string Text);

/// <summary>What differs, line by line in words, for whatever form it is told in.</summary>
public static class ChangeLines
{
    // More of what a change follows from says nothing new; all of it stands in the JSON.
    private const int MostInputs = 3;

    /// <summary>How much differs, in one line.</summary>
    public static string Counts(CollectionChanges changes)
    {
        if (!changes.IsAny)
        {
            return $"nothing differs in meaning; {Boards(changes.Same)} as {(changes.Same == 1 ? "it was" : "they were")}";
        }

        var all = changes.Boards.SelectMany(board => board.Changes).Concat(changes.Shared).ToArray();
        string[] parts =
        [
            .. ChangeKinds
                .All.Select(kind => (Kind: kind, Count: all.Count(change => change.Kind == kind)))
                .Where(pair => pair.Count > 0 && pair.Kind != ChangeKind.Reason)
                .Select(pair => Count(pair.Kind, pair.Count)),
        ];
        var told = string.Join(", ", parts);
        var rewritten = changes.Rewritten.Count();
        var added = changes.Boards.Sum(board => board.Readings.Length);
        string?[] sentences =
        [
            rewritten > 0 ? $"{Number(rewritten)} of what was once measured {(rewritten == 1 ? "is" : "are")} not as it was" : null,
            told.Length > 0
                ? $"{told} {(parts is [var only] && only.StartsWith("1 ", StringComparison.Ordinal) ? "differs" : "differ")}"
                : null,
            added > 0 ? $"{Number(added)} {(added == 1 ? "reading is" : "readings are")} new" : null,
            told.Length == 0 && added == 0 ? "entries differ, and no verdict" : null,
            $"{Boards(changes.Same)} as {(changes.Same == 1 ? "it was" : "they were")}",
        ];
        return string.Join("; ", sentences.OfType<string>());
    }

    /// <summary>What is gone or rewritten of what was once measured; empty where nothing is.</summary>
    public static IEnumerable<ChangeLine> Rewritten(CollectionChanges changes)
    {
        var isFirst = true;
        foreach (var (board, input) in changes.Rewritten)
        {
            if (isFirst)
            {
                yield return new(0, "what was once measured and is not as it was");
                isFirst = false;
            }

            yield return new(1, $"{board.Number} {Entry(input)}");
        }
    }

    /// <summary>What differs of one board.</summary>
    public static IEnumerable<ChangeLine> Board(BoardChanges board)
    {
        yield return new(0, Head(board));
        foreach (var line in Grouped(board.Changes.Where(change => change.Kind != ChangeKind.State), board.Changes))
        {
            yield return line;
        }

        foreach (var input in board.Entries)
        {
            var verdict = input.Entry.Was is null
                ? board.Readings.FirstOrDefault(one => one.Line == input.Entry.Now!.Spot.Line)?.Told
                : null;
            yield return new(1, $"entered  {Entry(input)}{(string.IsNullOrEmpty(verdict) ? string.Empty : " -> " + verdict)}");
        }
    }

    /// <summary>What differs of what boards share.</summary>
    public static IEnumerable<ChangeLine> Shared(CollectionChanges changes)
    {
        if (changes.Shared.Length + changes.Entries.Length == 0)
        {
            yield break;
        }

        yield return new(0, "what boards share");
        foreach (var line in Grouped(changes.Shared, []))
        {
            yield return line;
        }

        if (!changes.IsBuyingKnown)
        {
            yield return new(1, "the buying list was not compared, for which all boards must be judged");
        }

        foreach (var input in changes.Entries)
        {
            yield return new(1, $"entered  {Entry(input)}");
        }
    }

    /// <summary>Where an entry stands and what it says otherwise, in one line.</summary>
    public static string Entry(InputDifference input)
    {
        var (was, now) = (input.Entry.Was, input.Entry.Now);
        return input.Entry.Status switch
        {
            EntryStatus.New => $"{At(input.Now, now!.Spot)}: new {now.Told}{Said(now)}",
            EntryStatus.Gone => $"{was!.Told} is gone; {At(input.Was, was.Spot)} said{Said(was)}",
            // The line of what differs, which may stand far below the beginning of its entry.
            _ => $"{At(input.Now, (input.Entry.Facts[0].Now ?? input.Entry.Facts[0].Was!).Spot)}: {Of(now!)}"
                + string.Join(", ", input.Entry.Facts.Select(Fact)),
        };
    }

    private static string Of(RecordEntry entry) => entry.Kind == EntryKind.Head ? string.Empty : $"{entry.Told}: ";

    private static string At(string? path, Spot spot) => $"{path}:{Number(spot.Line)}";

    private static string Head(BoardChanges board)
    {
        var state = board.Changes.FirstOrDefault(change => change.Kind == ChangeKind.State);
        return board.Was is null ? $"{board.Number}  new: {board.State ?? "cannot be read"}"
            : board.Now is null ? $"{board.Number}  gone; it was {state?.Was}"
            : state is not null ? $"{board.Number}  was {state.Was}, now {state.Now}"
            : $"{board.Number}  {board.State ?? "cannot be read"}, as it was";
    }

    // Changes of one cause stand together, and what they follow from is said once below them.
    private static IEnumerable<ChangeLine> Grouped(IEnumerable<Change> told, ImmutableArray<Change> withState)
    {
        var groups = withState
            .Where(change => change.Kind == ChangeKind.State)
            .Concat(told)
            .GroupBy(change => (change.Cause.Words, Inputs: string.Join('\n', change.Cause.Inputs.Select(Entry))));
        foreach (var group in groups)
        {
            foreach (var change in group.Where(change => change.Kind != ChangeKind.State))
            {
                yield return new(1, Line(change));
            }

            foreach (var line in Because(group.First().Cause))
            {
                yield return line;
            }
        }
    }

    private static IEnumerable<ChangeLine> Because(Cause cause)
    {
        if (cause.Kinds.Length == 0)
        {
            yield break;
        }

        var inputs = cause.Inputs.Take(MostInputs).Select(Entry).ToArray();
        var words = cause.Kinds.Length > 1 ? $"{cause.Words} together" : cause.Words;
        yield return new(1, $"because of the {words}{(inputs.Length > 0 ? ": " + inputs[0] : string.Empty)}");
        foreach (var input in inputs.Skip(1))
        {
            yield return new(2, input);
        }

        if (cause.Inputs.Length > MostInputs)
        {
            yield return new(2, $"and {Number(cause.Inputs.Length - MostInputs)} more");
        }
    }

    /// <summary>One change in one line.</summary>
    public static string Line(Change change)
    {
        var of = change.Of.Length > 0 ? change.Of + ": " : string.Empty;
        var told = (change.Was, change.Now) switch
        {
            (null, { } now) => $"new: {now}",
            ({ } was, null) => $"no longer: {was}",
            _ => $"was {change.Was}, now {change.Now}",
        };
        return $"{ChangeKinds.Words(change.Kind)}  {of}{told}";
    }

    // What it is about stands before it already.
    private static string Said(RecordEntry entry) =>
        string.Join(", ", entry.Facts.Where(fact => fact.Text != entry.Of).Select(fact => $"{fact.Key} {fact.Text}"))
            is { Length: > 0 } said
            ? ": " + said
            : string.Empty;

    private static string Fact(FactDifference fact) =>
        (fact.Was, fact.Now) switch
        {
            (null, { } now) => $"{fact.Key} now says {now.Text}, and said nothing",
            ({ } was, null) => $"{fact.Key} says nothing any more, and said {was.Text}",
            _ => $"{fact.Key} now says {fact.Now!.Text}, and said {fact.Was!.Text}",
        };

    /// <summary>How many of a kind there are: <c>2 verdicts</c>.</summary>
    internal static string Count(ChangeKind kind, int count)
    {
        var (one, many) = kind switch
        {
            ChangeKind.LookAgain => ("day of the next look", "days of the next look"),
            ChangeKind.Life => ("life", "lives"),
            ChangeKind.Need => ("part to find", "parts to find"),
            ChangeKind.Drawer => ("lot in the drawer", "lots in the drawer"),
            ChangeKind.Buying => ("line of the buying list", "lines of the buying list"),
            ChangeKind.Whereabouts => ("place of a board", "places of boards"),
            ChangeKind.Due => ("due day", "due days"),
            _ => (ChangeKinds.Words(kind), ChangeKinds.Words(kind) + "s"),
        };
        return $"{Number(count)} {(count == 1 ? one : many)}";
    }

    private static string Boards(int count) => $"{Number(count)} {(count == 1 ? "board is" : "boards are")}";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
