using System.Globalization;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Notes;
using Ohmstead.Collections;
using Ohmstead.Devices;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Prompt;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Bench;

/// <summary>
/// Walks over the parts of a board, reading after reading, with the keyboard alone. Each reading is on the disk once its verdict is shown.
/// </summary>
/// <param name="terminal">Where it is told.</param>
/// <param name="run">How records are read and judged.</param>
/// <param name="plan">What is walked over, and what every entry says.</param>
/// <param name="command">Runs any other command, such as found or work, and tells what it tells on a terminal.</param>
internal sealed partial class Session(
    Terminal terminal,
    RunOptions run,
    SessionPlan plan,
    Func<IReadOnlyList<string>, Terminal, int> command
)
{
    private readonly UndoStack undo = new(plan.Folder, plan.Record);
    private readonly BenchMemory memory = new(plan.Circuit);
    private IReadOnlyList<string> always = [];
    private string? instrument = plan.Instrument;

    private FoundBoard board = null!;
    private IReadOnlyList<Stop> stops = [];
    private ILines lines = null!;
    private Terminal told = null!;
    private int at;

    /// <summary>Runs until the person ends it, or the input does.</summary>
    public int Walk(FoundBoard start)
    {
        Take(start);
        instrument ??= LastOfToday(start);
        memory.Begin(start.Board, plan.Day);
        using var source = LineSource.Open(terminal, plan.IsPlain, plan.Folder, line => new BenchCompletion(board, stops, at).At(line));
        lines = source;
        // What stands above a line that is edited is broken between words, however narrow the terminal is.
        using var output = new WrappedWriter(terminal.Out, () => TerminalDevice.Size.Columns);
        using var error = new WrappedWriter(terminal.Error, () => TerminalDevice.Size.Columns);
        told = source is TerminalLines ? terminal.Through(output, error) : terminal;
        Greet();
        at = Next(0);
        while (at < stops.Count)
        {
            Say(stops[at].Ask(board.Board));
            if (lines.Read(Prompt()) is not { } line || !Answer(line))
            {
                break;
            }
        }

        Say(at >= stops.Count ? "that was the last of them" : "ended");
        // Somebody else may have fitted a piece of the same lot meanwhile.
        Renew();
        Say($"{board.Board.Board.Id.Value} is now: " + $"{BoardStates.Told(board.Board.State, board.Board.OverdueSince)}; {Left()}");
        return ExitCode.Clean;
    }

    // The entry leaves out what the visit that it joins says.
    private string? LastOfToday(FoundBoard found) =>
        found.Board.Board.Bench is [.., { } last]
        && last.Date.Value == plan.Day
        && (plan.Visit.By is null || last.By is null || last.By.Value == plan.Visit.By)
            ? last.Instrument?.Value
            : null;

    private void Greet()
    {
        Say($"{board.Board.Board.Id.Value} {board.Board.Board.Title.Value}: {Left()}; ? for help");
        if (plan.Visit.IsLate)
        {
            Say($"what is entered goes to {plan.Visit.Date}");
        }

        var open = board.Board.Hazards.Where(hazard => hazard.MadeSafe is null).ToArray();
        foreach (var hazard in open)
        {
            var where = hazard.Hazard.At is { } place ? $" at {place.Value}" : string.Empty;
            Say($"caution: {hazard.Hazard.Kind.Text}{where}", terminal.Colours.Doubtful);
            foreach (var caution in HazardNotes.Cautions(hazard.Hazard.Kind.Value))
            {
                Say($"  {caution}");
            }
        }

        if (open.Length > 0)
        {
            Say($"  {SafetyNotice.Defer}");
        }
    }

    // What the numbers mean, and what goes into the record beside them.
    private PromptText Prompt()
    {
        var stop = stops[at];
        var setting = KindAt(stop.Name) is { } kind ? memory.For(instrument, kind) : default;
        var beside = string.Join(", ", new[] { setting.Frequency, setting.Circuit }.OfType<string>());
        var units = beside.Length == 0 ? stop.Units.Words : $"{stop.Units.Words}; {beside}";
        var (begin, end) = terminal.Colours.OfPrompt;
        return new(Printable.Escape($"{stop.Name} [{units}] > "), begin, end);
    }

    private PartKind? KindAt(string place) => board.Board.Place(place)?.Values.Kind.Value;

    /// <returns>False to end.</returns>
    private bool Answer(string line)
    {
        var (words, open) = BenchLine.Split(line);
        if (open is not null)
        {
            Say($"  {open}");
            return true;
        }

        words = words is [var first, .. var more] && OfBench(first) is { } known && Known(first) is null ? [known, .. more] : words;
        if (new BenchSlips(board.Board.Board.Id.Value, Known, [.. board.Workshop.Instruments.Keys]).Of(line, words) is { } slip)
        {
            Say($"  {slip}");
            return true;
        }

        switch (words)
        {
            case [] when plan.Meter is { } meter:
                ReadMeter(meter);
                return true;
            case [] or ["next"]:
                at = Next(at + 1);
                return true;
            case ["quit" or "q" or "exit"]:
                return false;
            case ["?" or "help"]:
                told.Out.Write(
                    BenchWords.Help
                        + (plan.Meter is null ? string.Empty : BenchWords.MeterHelp)
                        + (lines is TerminalLines ? BenchWords.KeyHelp : string.Empty)
                );
                return true;
            case ["back"]:
                at = Math.Max(at - 1, 0);
                return true;
            case ["undo"]:
                var (done, stop) = undo.Undo();
                Say(done);
                Renew();
                at = stop ?? at;
                return true;
            case ["left"]:
                Say(string.Join(' ', stops.Where(stop => !stop.IsDone(board.Board, plan.Day)).Select(stop => stop.Name)));
                return true;
            case ["always", .. var said]:
                SayAlways(said);
                return true;
            case [var said] when said is BenchWords.Unsaid || Vocabulary.Circuits.Means(said, out _):
                SetCircuit(said is BenchWords.Unsaid ? null : said);
                return true;
            case ["with", var used]:
                UseInstrument(used);
                return true;
            case ["why" or "fit", .. var rest] when rest.Length < 2:
                Look(words[0], rest.Length > 0 ? rest[0] : stops[at].Name);
                return true;
            case ["found" or "work" or "decide" or "wait", .. var rest]:
                Command(words[0], rest);
                return true;
            default:
                return Enter(words);
        }
    }

    private void Command(string word, string[] rest)
    {
        var id = board.Board.Board.Id.Value;
        using var error = new BoardlessWriter(told.Error, word, id) { NewLine = "\n" };
        undo.Around(at, () => command([word, id, .. rest, .. WritingWith(word)], told.Through(told.Out, error)));
        Renew();
    }

    private void SetCircuit(string? said)
    {
        if (KindAt(stops[at].Name) is { } kind)
        {
            memory.SetCircuit(instrument, kind, said);
        }
        else
        {
            Say("  a test point is neither in the circuit nor lifted");
        }
    }

    // One that is not there stands in no reading: the one of before goes on.
    private void UseInstrument(string used)
    {
        var known = board.Workshop.Instruments.Keys;
        if (known.Contains(used))
        {
            instrument = used;
            return;
        }

        Say(
            "  "
                + Nearest.Told(
                    $"instruments.yaml has no instrument '{used}'",
                    Nearest.To(used, known),
                    $"; it has {string.Join(", ", known)}"
                )
        );
    }

    // A word of the bench, capitals aside.
    private static string? OfBench(string word) =>
        BenchWords.Alone.Concat(BenchWords.Begun).FirstOrDefault(one => string.Equals(one, word, StringComparison.OrdinalIgnoreCase));

    private void Look(string word, string place)
    {
        terminal.Out.Flush();
        var known = Known(place) ?? place;
        command([word, board.Board.Board.Id.Value, known, .. plan.Looking], told);
    }

    private string Day => plan.Visit.IsLate ? "as of " + plan.Visit.Date : "today";

    // Where in its day it came is nothing that a wait would know.
    private IEnumerable<string> WritingWith(string name) =>
        plan.Came is { } came && name != "wait" ? [.. plan.Writing, "--came", came] : plan.Writing;

    private void Renew()
    {
        if (BoardFinder.Find(plan.Folder, board.Board.Board.Id.Value, run, told.Error) is { } again)
        {
            Take(again);
        }
    }

    private void Take(FoundBoard found)
    {
        board = found;
        stops = Stop.List(found.Board, plan.Classes);
    }

    private int Next(int from)
    {
        while (from < stops.Count && !plan.IsAgain && stops[from].IsDone(board.Board, plan.Day))
        {
            from++;
        }

        return from;
    }

    private string Left() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{stops.Count(stop => !stop.IsDone(board.Board, plan.Day))} of {stops.Count} places are still to be read {Day}"
        );

    private void Say(string words, Func<string, string>? colour = null)
    {
        foreach (var line in words.Split('\n'))
        {
            told.Out.WriteLine(colour is null ? Printable.Escape(line) : colour(Printable.Escape(line)));
        }
    }
}
