using System.CommandLine.Parsing;
using System.Globalization;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Notes;
using Ohmstead.Collections;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Records.Model;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Bench;

/// <summary>
/// Walks over the parts of a board, reading after reading, with the keyboard alone. Each reading is on the disk once its verdict is shown.
/// </summary>
/// <param name="terminal">Where it is typed and told.</param>
/// <param name="run">How records are read and judged.</param>
/// <param name="plan">What is walked over, and what every entry says.</param>
/// <param name="command">Runs any other command, such as found or work.</param>
internal sealed class Session(Terminal terminal, RunOptions run, SessionPlan plan, Func<IReadOnlyList<string>, int> command)
{
    private const string Unsaid = "unsaid";

    private const string Help = """
          391 1.4            what was read: numbers alone take the units shown, or say them: 391uF 1.4ohm 12% pass
          > 20, open         beyond the range of the meter; also < 0.1, short, over range
          C14                go to a place        C14 391 1.4   go there, and enter
          (nothing)          pass on              back          one place back
          always 120Hz       add this to every reading that follows; always alone adds nothing any more
          in, out            the parts are read in circuit, or lifted    unsaid   say nothing about it
          with bridge-1      the instrument from now on
          left               what is still to be read
          undo               take the last entry back
          found WHERE "WHAT" minor    work replaced C12 --lot L-018 ...    decide C12 keep "WHY"    wait "WHAT"
          quit               end; the next session goes on where this one ended

        """;

    private readonly UndoStack undo = new(plan.Folder, plan.Record);
    private IReadOnlyList<string> always = [];
    private string? circuit = plan.Circuit;
    private string? instrument = plan.Instrument;

    private FoundBoard board = null!;
    private IReadOnlyList<Stop> stops = [];
    private int at;

    /// <summary>Runs until the person ends it, or the input does.</summary>
    public int Walk(FoundBoard start)
    {
        Take(start);
        Greet();
        at = Next(0);
        while (at < stops.Count)
        {
            Say(stops[at].Ask(board.Assessment));
            terminal.Out.Write(Printable.Of($"{stops[at].Name} [{stops[at].Units.Words}] > "));
            if (Read() is not { } line || !Answer(line))
            {
                break;
            }
        }

        Say(at >= stops.Count ? "that was the last of them" : "ended");
        // Somebody else may have fitted a piece of the same lot meanwhile.
        Renew();
        Say(
            $"{board.Assessment.Board.Id.Value} is now: "
                + $"{BoardStates.Told(board.Assessment.State, board.Assessment.OverdueSince)}; {Left()}"
        );
        return ExitCode.Clean;
    }

    private void Greet()
    {
        Say($"{board.Assessment.Board.Id.Value} {board.Assessment.Board.Title.Value}: {Left()}; ? for help");
        if (plan.Visit.IsLate)
        {
            Say($"what is entered goes to {plan.Visit.Date}");
        }

        var open = board.Assessment.Hazards.Where(hazard => hazard.MadeSafe is null).ToArray();
        foreach (var hazard in open)
        {
            Say($"caution: {hazard.Hazard.Kind.Text}{(hazard.Hazard.At is { } place ? $" at {place.Value}" : string.Empty)}");
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

    /// <returns>False to end.</returns>
    private bool Answer(string line)
    {
        var words = CommandLineParser.SplitCommandLine(line).ToArray();
        switch (words)
        {
            case []:
                at = Next(at + 1);
                return true;
            case ["quit" or "q"]:
                return false;
            case ["?" or "help"]:
                terminal.Out.Write(Help);
                return true;
            case ["back"]:
                at = Math.Max(at - 1, 0);
                return true;
            case ["undo"]:
                var (told, stop) = undo.Undo();
                Say(told);
                Renew();
                at = stop ?? at;
                return true;
            case ["left"]:
                Say(string.Join(' ', stops.Where(stop => !stop.IsDone(board.Assessment, plan.Day)).Select(stop => stop.Name)));
                return true;
            case ["always", .. var said]:
                always = said;
                return true;
            case [var said] when said is Unsaid || Vocabulary.Circuits.Means(said, out _):
                circuit = said is Unsaid ? null : said;
                return true;
            case ["with", var used]:
                instrument = used;
                return true;
            case ["found" or "work" or "decide" or "wait", .. var rest]:
                undo.Around(at, () => command([words[0], board.Assessment.Board.Id.Value, .. rest, .. SharedWith(words[0])]));
                Renew();
                return true;
            default:
                return Enter(words);
        }
    }

    private bool Enter(string[] words)
    {
        var known = stops.ToList().FindIndex(stop => stop.Name == words[0]);
        if (known >= 0)
        {
            at = known;
            words = words[1..];
            if (words.Length == 0)
            {
                return true;
            }
        }

        // A fuse or a switch has nothing to measure against, and can be open: it is entered by name, and the walk stays where it is.
        if (known < 0 && words.Length > 1 && board.Assessment.Place(words[0]) is { IsEmpty: false })
        {
            return EnterAside(words[0], words[1..]);
        }

        var stop = stops[at];
        var said = new SaidReading(stop.Name, stop.IsPoint ? words : [.. words, .. always])
        {
            Circuit = stop.IsPoint ? null : circuit,
            Instrument = instrument,
        };
        var (entry, fault) = PreparedEntry.Of(board.Assessment, said, stop.Units);
        if (entry is null)
        {
            Say($"  {fault}");
            return true;
        }

        var bench = new BenchEntry(terminal, run) { IsBrief = true };
        if (undo.Around(at, () => Add(bench, entry)) == ExitCode.Clean)
        {
            // What was judged before it was written is how the board stands now.
            Take(bench.After!);
            at = Next(at + 1);
        }

        return true;
    }

    private bool EnterAside(string place, string[] words)
    {
        var (entry, fault) = PreparedEntry.Of(
            board.Assessment,
            new SaidReading(place, [.. words, .. always]) { Circuit = circuit, Instrument = instrument }
        );
        if (entry is null)
        {
            Say($"  {fault}");
            return true;
        }

        var bench = new BenchEntry(terminal, run) { IsBrief = true };
        if (undo.Around(at, () => Add(bench, entry)) == ExitCode.Clean)
        {
            Take(bench.After!);
        }

        return true;
    }

    private int Add(BenchEntry bench, PreparedEntry entry)
    {
        var visit = plan.Visit with { Instrument = instrument ?? plan.Visit.Instrument };
        var exit = bench.Add(board, visit, entry.Key, entry.Item, isSure: false, isTrial: false);
        if (bench.Question is not { } question || exit == ExitCode.Clean)
        {
            return exit;
        }

        terminal.Out.Write($"  {question} y writes it all the same, anything else does not > ");
        return Read() is { } answer && (answer is ['y'] || (Vocabulary.YesNo.Means(answer, out var isSure) && isSure))
            ? bench.Add(board, visit, entry.Key, entry.Item, isSure: true, isTrial: false)
            : exit;
    }

    private string Day => plan.Visit.IsLate ? "as of " + plan.Visit.Date : "today";

    private string? Read()
    {
        terminal.Out.Flush();
        return terminal.In.ReadLine();
    }

    // Where in its day it came is nothing that a wait would know.
    private IEnumerable<string> SharedWith(string name) =>
        plan.Came is { } came && name != "wait" ? [.. plan.Shared, "--came", came] : plan.Shared;

    private void Renew()
    {
        if (BoardFinder.Find(plan.Folder, board.Assessment.Board.Id.Value, run, terminal.Error) is { } again)
        {
            Take(again);
        }
    }

    private void Take(FoundBoard found)
    {
        board = found;
        stops = Stop.Of(found.Assessment, plan.Classes);
    }

    private int Next(int from)
    {
        while (from < stops.Count && !plan.IsAgain && stops[from].IsDone(board.Assessment, plan.Day))
        {
            from++;
        }

        return from;
    }

    private string Left() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{stops.Count(stop => !stop.IsDone(board.Assessment, plan.Day))} of {stops.Count} places are still to be read {Day}"
        );

    private void Say(string lines)
    {
        foreach (var line in lines.Split('\n'))
        {
            terminal.Out.WriteLine(Printable.Of(line));
        }
    }
}

/// <summary>What a session walks over, and what each of its entries says.</summary>
/// <param name="Folder">The collection's folder.</param>
/// <param name="Record">The file of the board, from there.</param>
/// <param name="Visit">The visit that entries belong to.</param>
/// <param name="Classes">The letters of the references wanted, or none for all.</param>
/// <param name="Shared">The options that every other command is given.</param>
internal sealed record SessionPlan(
    string Folder,
    string Record,
    VisitHead Visit,
    IReadOnlyCollection<string> Classes,
    IReadOnlyList<string> Shared
)
{
    /// <summary>The instrument, or null for the visit's.</summary>
    public string? Instrument { get; init; }

    /// <summary>The day that its entries are of.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Where in that day they came, where that was said.</summary>
    public string? Came { get; init; }

    /// <summary>Whether parts are read in the circuit: in, out or null.</summary>
    public string? Circuit { get; init; }

    /// <summary>True to stop at places read today too.</summary>
    public bool IsAgain { get; init; }
}
