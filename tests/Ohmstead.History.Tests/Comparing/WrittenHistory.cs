using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Ohmstead.History.Tests.Merging;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>
/// A repository whose history is what people do over the years: they read, work, correct, find, order and calibrate by the program's own
/// commands, change a design, slip and mend it, rename a file, give a board another number, tidy. The same from run to run.
/// </summary>
internal sealed partial class WrittenHistory : IDisposable
{
    // Boards that share designs and lots, so that one can change another.
    private static readonly string[] Kept = ["SP-0001", "SP-0002", "SP-0004", "SP-0006", "SP-0007", "SP-0008", "SP-0009", "SP-0010"];
    private static readonly DateOnly First = new(2026, 11, 26);

#pragma warning disable CA5394 // Reproducible edits need no secrecy.
    private readonly Random random;
    private readonly DemoPeople people = new();
    private readonly List<ImmutableSortedDictionary<string, string>> states = [];
    private readonly List<string> deeds = [];
    private ImmutableSortedDictionary<string, string>? slipped;
    private readonly Dictionary<string, string> numbers = new(StringComparer.Ordinal);

    private WrittenHistory(int seed) => random = new(seed);

    /// <summary>The folder of the repository.</summary>
    public string Root => people.Copy.Root;

    /// <summary>The records of each commit, the oldest first.</summary>
    public IReadOnlyList<ImmutableSortedDictionary<string, string>> States => states;

    /// <summary>The commits, the oldest first.</summary>
    public IReadOnlyList<string> Commits { get; private set; } = [];

    /// <summary>What was done in each commit behind the first.</summary>
    public IReadOnlyList<string> Deeds => deeds;

    /// <summary>The last day on which anything was done.</summary>
    public DateOnly LastDay { get; private set; } = First;

    /// <summary>The number that a board had at first.</summary>
    public string FirstNumber(string number) => numbers.GetValueOrDefault(number, number);

    /// <summary>Writes a history of so many commits.</summary>
    public static WrittenHistory Make(int seed, int commits)
    {
        var made = new WrittenHistory(seed);
        foreach (var path in Directory.EnumerateFiles(made.people.Copy.At("boards")))
        {
            if (!Kept.Contains(Path.GetFileNameWithoutExtension(path)))
            {
                File.Delete(path);
            }
            else
            {
                // A photograph is no text, and another number of the board would move it.
                File.WriteAllText(path, Photographs().Replace(File.ReadAllText(path), string.Empty));
            }
        }

        Directory.Delete(made.people.Copy.At("photos"), recursive: true);
        made.states.Add(TextFiles.Read(made.Root));
        for (var number = 1; made.states.Count < commits; number++)
        {
            made.LastDay = First.AddDays(number / 2);
            var told = made.One(number);
            var now = TextFiles.Read(made.Root);
            if (!Same(made.states[^1], now))
            {
                made.states.Add(now);
                made.deeds.Add(told);
            }
        }

        made.Commit();
        return made;
    }

    public void Dispose() => people.Dispose();

    private static bool Same(ImmutableSortedDictionary<string, string> one, ImmutableSortedDictionary<string, string> other) =>
        one.Count == other.Count && one.All(file => other.TryGetValue(file.Key, out var text) && text == file.Value);

    private string One(int number)
    {
        if (slipped is { } sound)
        {
            slipped = null;
            Restore(sound);
            return "mended";
        }

        var day = LastDay.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        switch (random.Next(24))
        {
            case 0 or 1:
                Change("instruments.yaml", "    accuracy:\n", $"      - {{ date: {day}, valid: 12 months }}\n    accuracy:\n");
                return "calibration";
            case 2:
                Change("instruments.yaml", "error: 0.5 %", "error: 0.6 %");
                Change("instruments.yaml", "error: 1 %", "error: 0.5 %");
                return "accuracy";
            case 3 or 4:
                string[] tolerances = ["tolerance: ±20 %", "tolerance: ±5 %", "tolerance: ±10 %"];
                var design = Pick("designs");
                Change(design, tolerances[random.Next(3)], tolerances[random.Next(3)]);
                return "design";
            case 5:
                var board = Pick("boards");
                File.Move(people.Copy.At(board), people.Copy.At($"boards/again-{number}.md"));
                return "file renamed";
            case 6:
                return Renumber(number);
            case 7:
                // Somebody types as it comes, and the next who tidies puts it right.
                Change(Pick("boards"), ": { part: ", ": {part: ");
                Change(Pick("boards"), "- { part: ", "- {  part: ");
                return "typed untidily";
            case 8:
                Run.Of("tidy", Root);
                return "tidy";
            case 9:
                // A slip, and whatever else is wrong then, is mended by the next commit.
                slipped = states[^1];
                new Edits(number).Make(people.Copy);
                return "slip";
            case 10:
                string[] rules = ["told_before: 2020-01-01\n", "told_before: 2026-03-15\n", "told_before: 2026-06-30\n"];
                var rule = rules[random.Next(3)];
                var text = people.Copy.Read("collection.yaml");
                people.Copy.Write(
                    "collection.yaml",
                    rules.Aggregate(text, (left, line) => left.Replace(line, string.Empty, StringComparison.Ordinal)) + rule
                );
                return "rule";
            case < 17:
                TypeReading(day);
                return "reading typed";
            default:
                people.Work(random, random.Next(2) == 0 ? "RK" : "MT", Kept[random.Next(4)], day, count: 1);
                return "work";
        }
    }

    // Another figure of what was read once, in a visit of its own at the end of the bench, as a person types it.
    private void TypeReading(string day)
    {
        var path = Pick("boards");
        var text = people.Copy.Read(path);
        var read = Readings().Matches(text);
        var bench = Bench().Match(text);
        if (read.Count > 0 && bench.Success)
        {
            var one = read[random.Next(read.Count)];
            var figure = decimal.Parse(one.Groups["figure"].Value, CultureInfo.InvariantCulture) * (0.9m + (random.Next(200) / 1000m));
            var told = $"{one.Groups["before"].Value}{figure.ToString("0.###", CultureInfo.InvariantCulture)}{one.Groups["after"].Value}";
            people.Copy.Write(
                path,
                text.Insert(bench.Index + bench.Length, $"  - {{ date: {day}, by: TS, instrument: bridge-1, readings: [{told}] }}\n")
            );
        }
    }

    // Work is done on the first boards alone, whose numbers stay.
    private string Renumber(int number)
    {
        var was = Kept[random.Next(4, Kept.Length)];
        var now = $"SP-{1000 + number}";
        if (Run.Of("renumber", was, now, "--in", Root).Exit == 0)
        {
            numbers[now] = was;
        }

        return "board renumbered";
    }

    private void Restore(ImmutableSortedDictionary<string, string> texts)
    {
        foreach (var path in Directory.EnumerateFiles(Root, "moved-*", SearchOption.AllDirectories))
        {
            File.Delete(path);
        }

        foreach (var (path, text) in texts)
        {
            people.Copy.Write(path, text);
        }
    }

    private void Change(string path, string was, string now)
    {
        var text = people.Copy.Read(path);
        var places = text.Split(was).Length - 1;
        if (places > 0)
        {
            var at = -1;
            for (var left = random.Next(places); left >= 0; left--)
            {
                at = text.IndexOf(was, at + 1, StringComparison.Ordinal);
            }

            people.Copy.Write(path, text[..at] + now + text[(at + was.Length)..]);
        }
    }

    private string Pick(string folder)
    {
        string[] paths = [.. TextFiles.Read(Root).Keys.Where(path => path.StartsWith(folder + "/", StringComparison.Ordinal))];
        return paths[random.Next(paths.Length)];
    }
#pragma warning restore CA5394

    // All commits at once, by the stream that Git takes histories in.
    private void Commit()
    {
        using var repository = ScratchRepository.In(Root);
        repository.Git("init", "--quiet");
        var start = new ProcessStartInfo("git", ["fast-import", "--quiet"])
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            WorkingDirectory = Root,
        };
        using (var process = Process.Start(start)!)
        {
            using var stream = process.StandardInput.BaseStream;
            for (var at = 0; at < states.Count; at++)
            {
                Write(
                    stream,
                    $"commit refs/heads/main\ncommitter RK <rk@example.invalid> {1_795_000_000 + (at * 3600)} +0000\ndata 1\nx\n"
                );
                var before = at == 0 ? states[0].Clear() : states[at - 1];
                foreach (var gone in before.Keys.Where(path => !states[at].ContainsKey(path)))
                {
                    Write(stream, $"D {gone}\n");
                }

                foreach (var (path, text) in states[at].Where(file => before.GetValueOrDefault(file.Key) != file.Value))
                {
                    Write(stream, $"M 100644 inline {path}\ndata {Encoding.UTF8.GetByteCount(text)}\n{text}\n");
                }
            }

            stream.Close();
            process.WaitForExit();
            Assert.Equal(0, process.ExitCode);
        }

        Commits = repository.Git("rev-list", "--reverse", "refs/heads/main").Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static void Write(Stream stream, FormattableString text) =>
        stream.Write(Encoding.UTF8.GetBytes(FormattableString.Invariant(text)));

    [GeneratedRegex(
        @"      - (?<before>\{ part: C\d+, circuit: out, [^}\n]*?capacitance: )(?<figure>[\d.]+)(?<after> [^ ,}\n]+[^}\n]*\})\n"
    )]
    private static partial Regex Readings();

    [GeneratedRegex(@"\nbench:\n(  .*\n)+")]
    private static partial Regex Bench();

    [GeneratedRegex(@"    photos:\n(      - \{ file: .*\n)+")]
    private static partial Regex Photographs();
}
