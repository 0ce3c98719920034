using System.CommandLine;
using System.Globalization;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Takes back an entry of today.</summary>
internal sealed class RemoveCommand(Terminal terminal)
{
    private readonly EntryOptions options = new();
    private readonly Argument<string?> place = new("PLACE")
    {
        CompletionSources = { Completions.Places },
        Description = "What the entry is about: a part such as C12, a test point, or another spot of the board.",
        Arity = ArgumentArity.ZeroOrOne,
    };
    private readonly Option<int?> entry = new("--entry")
    {
        Description = "Which of the day's entries, by its number in the list that is told where several could be meant.",
        HelpName = "NUMBER",
    };

    public Command Build()
    {
        var command = options.BareCommand(
            "remove",
            """
            Take back an entry of today that was a slip. What stands of another day stays; 'correct' corrects
            a reading or a proof of it.

            Examples:
              ohmstead enter SP-0007 C3 31.8uF --lifted
              ohmstead found SP-0007 C3 "flux around the leads" minor
              ohmstead remove SP-0007 C3 --entry 2 --trial
              ohmstead remove SP-0007 C3 --entry 1
              ohmstead remove SP-0007 C3
            """,
            place,
            entry
        );
        command.SetAction(parsed => options.Run(parsed, terminal, (board, run) =>
            {
                var who = options.Visit(parsed, board, run, isMeasured: false);
                var number = board.Board.Board.Id.Value;
                return new BenchEntry(terminal, run) { Done = ("removed", "would remove") }.Change(
                    board,
                    isSure: false,
                    parsed.GetValue(options.Trial),
                    editor =>
                    {
                        var remover = new EntryRemover(editor);
                        return Meant(remover.EntriesOf(who.IsOf), number, who, parsed.GetValue(place), parsed.GetValue(entry)) switch
                        {
                            ({ } one, _) => (remover.Remove(one), one.Text),
                            (_, var refusal) => (new(null, refusal), string.Empty),
                        };
                    }
                );
            }));
        return command;
    }

    private static (StandingEntry? One, EditRefusal? Refusal) Meant(
        IReadOnlyList<StandingEntry> entries,
        string board,
        VisitHead who,
        string? place,
        int? number
    )
    {
        (StandingEntry Entry, int Number)[] meant =
        [
            .. entries
                .Select((one, at) => (Entry: one, Number: at + 1))
                .Where(one => (place is null || one.Entry.Places.Contains(place)) && (number is null || one.Number == number)),
        ];
        var day = who.By is null ? who.Date : $"{who.Date} by {who.By}";
        return meant switch
        {
            [{ Entry: { OtherBoard: { } other } one }] => (
                null,
                new($"{other} says the same, and one cannot go without the other", $"take both lines out by hand, here: {one.Text}")
            ),
            [var only] => (only.Entry, null),
            [] when entries.Count == 0 => (
                null,
                new(
                    $"{board} has no entry of {day}; what stands of another day stays",
                    $"correct a reading: ohmstead correct {board} PLACE VALUE --because REASON"
                )
            ),
            [] => (null, new($"no entry of {day} is the one meant, out of these: {Listed(Numbered(entries))}", Choose)),
            _ => (null, new($"several entries of {day} could be meant: {Listed(meant)}", Choose)),
        };
    }

    private const string Choose = "say which: --entry NUMBER";

    private static IEnumerable<(StandingEntry Entry, int Number)> Numbered(IReadOnlyList<StandingEntry> entries) =>
        entries.Select((one, at) => (one, at + 1));

    private static string Listed(IEnumerable<(StandingEntry Entry, int Number)> entries) =>
        string.Join("; ", entries.Select(one => $"{one.Number.ToString(CultureInfo.InvariantCulture)}: {one.Entry.List} {one.Entry.Text}"));
}
