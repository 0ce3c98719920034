using System.Globalization;
using System.Text.RegularExpressions;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Merging;

/// <summary>People who work on the demo collection, each on a copy of their own: what they enter, the program's own commands
/// write.</summary>
internal sealed partial class DemoPeople : IDisposable
{
    private static readonly string[] Days = ["2026-11-26", "2026-11-27", "2026-11-28", "2026-11-29", "2026-11-30"];
    private static readonly string[] Others = ["J1", "T1", "socket", "edge connector", "board"];
    private readonly CollectionCopy copy = CollectionCopy.Make();

    /// <summary>The boards that are there and can be worked on.</summary>
    public static IReadOnlyList<string> Boards { get; } =
    [
        .. Directory
            .GetFiles(Path.Combine(CollectionCopy.Untouched, "boards"), "*.md")
            .Select(path => Path.GetFileNameWithoutExtension(path))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The days of the pair.</summary>
    public static IReadOnlyList<string> AllDays => Days;

    /// <summary>The copy that they work on.</summary>
    public CollectionCopy Copy => copy;

    /// <summary>How often each command wrote something.</summary>
    public SortedDictionary<string, int> Done { get; } = new(StringComparer.Ordinal);

    /// <summary>The files as they are now, by path.</summary>
    public Dictionary<string, string> Now() =>
        Directory
            .GetFiles(copy.At("boards"))
            .Append(copy.At("stock.yaml"))
            .ToDictionary(path => Path.GetRelativePath(copy.Root, path).Replace('\\', '/'), File.ReadAllText, StringComparer.Ordinal);

    /// <summary>Puts the files back.</summary>
    public void Restore(IReadOnlyDictionary<string, string> files)
    {
        foreach (var (path, text) in files)
        {
            if (copy.Read(path) != text)
            {
                copy.Write(path, text);
            }
        }
    }

    /// <summary>One person enters something on a board or in the drawer; what the program refuses is tried in another way.</summary>
    /// <param name="random">What is entered.</param>
    /// <param name="by">Who.</param>
    /// <param name="board">The board.</param>
    /// <param name="day">The day.</param>
    /// <param name="count">How many entries.</param>
    public void Work(Random random, string by, string board, string day, int count)
    {
        var done = 0;
        for (var tries = 0; done < count && tries < 12 * count; tries++)
        {
            var (command, isStock) = random.Next(7) == 0 ? (Stock(random), true) : (Entry(random, board), false);
            string[] who = isStock && command[0] is "lot" or "order" ? [] : ["--by", by];
            if (Run.Of([.. command, "--in", copy.Root, "--as-of", day, .. who]).Exit == 0)
            {
                done++;
                Done[command[0]] = Done.GetValueOrDefault(command[0]) + 1;
            }
        }
    }

    /// <summary>What two people made of one board and of the drawer, each on a copy: what both began from, and the files of each.</summary>
    /// <param name="demo">The files of the demo.</param>
    /// <param name="seed">Which pair.</param>
    public (string Board, Dictionary<string, string> Before, Dictionary<string, string> One, Dictionary<string, string> Other) Pair(
        IReadOnlyDictionary<string, string> demo,
        int seed
    )
    {
        var random = new Random(seed);
        var board = Boards[random.Next(Boards.Count)];
        Restore(demo);
        var first = random.Next(Days.Length);
        if (random.Next(3) == 0)
        {
            // A visit of the day that both copies have.
            Work(random, "RK", board, Days[first], count: 1);
        }

        var before = Now();
        Work(random, "RK", board, Days[first], count: random.Next(1, 4));
        var one = Now();
        Restore(before);
        var by = random.Next(6) == 0 ? "RK" : "MT";
        Work(random, by, board, Days[random.Next(Days.Length)], count: random.Next(1, 4));
        return (board, before, one, Now());
    }

    /// <inheritdoc/>
    public void Dispose() => copy.Dispose();

    private static string[] Entry(Random random, string board)
    {
        var number = random.Next(1000).ToString(CultureInfo.InvariantCulture);
        var part = Pick(random, Parts(board));
        return random.Next(12) switch
        {
            0 or 1 or 2 when part is not null => ["enter", board, part.Ref, Near(random, part), .. How(part), "--sure"],
            3 or 4 when Pick(random, Points(board)) is { } point => ["enter", board, point.Ref, Near(random, point), "--sure"],
            5 => ["found", board, part?.Ref ?? Others[random.Next(Others.Length)], $"seen {number}", "minor"],
            6 => ["found", board, Others[random.Next(Others.Length)], $"flux left {number}", "note"],
            7 when part is not null => ["work", board, random.Next(2) == 0 ? "re-soldered" : "cleaned", part.Ref],
            8 when part is not null && Pick(random, LotsFor(part)) is { } lot =>
            [
                "work",
                board,
                "replaced",
                part.Ref,
                "--lot",
                lot,
                "--polarity",
                "schematic",
                "--kept",
                $"bag {number}",
            ],
            9 when part is not null => ["decide", board, part.Ref, "watch", $"a little low {number}"],
            10 => random.Next(2) == 0
                ? ["wait", board, $"a part {number}", "--blocks", "soak"]
                : ["whereabouts", board, "moved", "--at", $"store, shelf {number}"],
            11 when part is not null => random.Next(2) == 0
                ? ["correct", board, part.Ref, Near(random, part), "--because", "misread the scale"]
                : ["remove", board, part.Ref],
            _ => ["found", board, "J2", $"a scratch {number}", "note"],
        };
    }

    private static string[] Stock(Random random)
    {
        var number = random.Next(100, 140).ToString(CultureInfo.InvariantCulture);
        return random.Next(6) switch
        {
            0 or 1 => ["lot", $"L-{number}", "aluminium electrolytic", "470uF", "20%", "35V", "105C", "--quantity", "10"],
            2 => ["order", $"PO-{number}", "placed", $"pen belts {number}"],
            3 => ["order", "PO-11", random.Next(2) == 0 ? "received" : "lost"],
            4 => ["incoming", "L-018", $"4{random.Next(6, 9)}.{random.Next(10)}uF", "112mohm", "120Hz", "--instrument", "bridge-1"],
            _ => ["scrap", "L-013", "1", $"reads low {number}"],
        };
    }

    private static string[] How(Valued part) =>
        part.Ref[0] == 'C' ? ["120Hz", "--lifted", "--instrument", "bridge-1"] : ["--instrument", "meter-1"];

    private static string Near(Random random, Valued part) =>
        (part.Value * (0.9m + (random.Next(200) / 1000m))).ToString("0.###", CultureInfo.InvariantCulture) + part.Unit;

    private static T? Pick<T>(Random random, IReadOnlyList<T> all)
        where T : class => all.Count == 0 ? null : all[random.Next(all.Count)];

    private static string TextOf(string path) => File.ReadAllText(Path.Combine(CollectionCopy.Untouched, path));

    // What the board and its design list, by their text: what the program makes of it is not asked here.
    private static IReadOnlyList<Valued> Parts(string board) => Of(PartLine(), board);

    private static IReadOnlyList<Valued> Points(string board) => Of(PointLine(), board);

    private static Valued[] Of(Regex line, string board)
    {
        var own = TextOf($"boards/{board}.md");
        var design = DesignLine().Match(own);
        var text = own + (design.Success ? TextOf($"designs/{design.Groups[1].Value}.md") : string.Empty);
        return
        [
            .. line.Matches(text)
                .Select(match => new Valued(
                    match.Groups["ref"].Value,
                    match.Groups["kind"].Value,
                    decimal.Parse(match.Groups["value"].Value, CultureInfo.InvariantCulture),
                    match.Groups["unit"].Value
                )),
        ];
    }

    private static IReadOnlyList<string> LotsFor(Valued part) =>
        [
            .. LotLine()
                .Matches(TextOf("stock.yaml"))
                .Where(lot =>
                    lot.Groups["kind"].Value == part.Kind
                    && decimal.Parse(lot.Groups["value"].Value, CultureInfo.InvariantCulture) == part.Value
                    && lot.Groups["unit"].Value == part.Unit
                )
                .Select(lot => lot.Groups["lot"].Value),
        ];

    [GeneratedRegex(@"\{ ref: (?<ref>[CR]\d+), kind: (?<kind>[^,]+),[^}]*?\b(capacitance|resistance): (?<value>[\d.]+) (?<unit>[^,\s]+)")]
    private static partial Regex PartLine();

    [GeneratedRegex(@"\{ point: (?<ref>[^,]+),(?<kind>)[^}]*?nominal: (?<value>-?[\d.]+) (?<unit>[^,\s}]+)")]
    private static partial Regex PointLine();

    [GeneratedRegex(@"\{ lot: (?<lot>[^,]+), kind: (?<kind>[^,]+),[^}]*?\b(capacitance|resistance): (?<value>[\d.]+) (?<unit>[^,\s]+)")]
    private static partial Regex LotLine();

    [GeneratedRegex(@"\ndesign: (\S+)")]
    private static partial Regex DesignLine();

    private sealed record Valued(string Ref, string Kind, decimal Value, string Unit);
}
