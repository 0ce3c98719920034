using Ohmstead.Synthetic.Parts;
using Ohmstead.Synthetic.Text;

namespace Ohmstead.Synthetic.Files;

/// <summary>What happened to one board: an inspection, a day of measuring, a day of work, its proof and a look a year later.</summary>
public sealed class BoardHistory
{
    private static readonly DateOnly FirstDay = new(2024, 2, 1);
    private static readonly string[] People = ["RK", "AM", "JT"];
    private readonly IReadOnlyList<SyntheticPart> parts;
    private readonly IReadOnlyList<SyntheticPart> electrolytics;
    private readonly IReadOnlyList<SyntheticPart> replaced;
    private readonly SyntheticPart reformed;
    private readonly SyntheticPart spare;
    private readonly Outcome outcome;
    private readonly int batch;
    private readonly string by;
    private readonly SeededRandom random;

    private BoardHistory(IReadOnlyList<SyntheticPart> parts, int number, SeededRandom random)
    {
        this.parts = parts;
        this.random = random;
        electrolytics = [.. parts.Where(part => part.Group == PartGroup.Electrolytic)];
        var first = random.Between(0, electrolytics.Count - 1);
        var turned = electrolytics.Skip(first).Concat(electrolytics.Take(first)).ToList();
        replaced = turned[..random.Between(3, 5)];
        reformed = turned[^1];
        spare = turned[^2];
        batch = CollectionPlan.BatchOf(number);
        by = random.Pick(People);
        outcome = random.Between(1, 100) switch
        {
            <= 55 => Outcome.Proved,
            <= 70 => Outcome.Undecided,
            <= 80 => Outcome.Waiting,
            <= 88 => Outcome.Unproved,
            <= 95 => Outcome.FailedReading,
            _ => Outcome.OpenFinding,
        };
    }

    /// <summary>Invents a history.</summary>
    /// <param name="parts">The parts of the board.</param>
    /// <param name="number">Its number, from 1.</param>
    /// <param name="random">The numbers.</param>
    public static BoardHistory Invent(IReadOnlyList<SyntheticPart> parts, int number, SeededRandom random) => new(parts, number, random);

    /// <summary>Adds the visits to the bench, and the wait if there is one.</summary>
    public LineWriter AppendTo(LineWriter file)
    {
        var day = FirstDay.AddDays(random.Between(0, 120));
        file.Line("bench:");
        Inspect(file, day);
        Measure(file, day = day.AddDays(random.Between(2, 15)));
        Work(file, day = day.AddDays(random.Between(2, 25)));
        if (outcome == Outcome.Waiting)
        {
            return file.List(
                0,
                "waiting",
                [
                    new FlowLine()
                        .Add("since", Figures.Day(day))
                        .Add("for", "new pen motor belt")
                        .Add("order", CollectionPlan.OrderId(batch))
                        .Add("blocks", "drift test"),
                ]
            );
        }

        if (outcome == Outcome.Unproved)
        {
            return file;
        }

        Prove(file, day = day.AddDays(random.Between(2, 4)));
        LookAgain(file, day.AddDays(random.Between(200, 300)));
        return file;
    }

    private void Inspect(LineWriter file, DateOnly day) =>
        Visit(file, day, "loop-1")
            .List(
                4,
                "found",
                [
                    Found("J1", "flux left from earlier work", "minor"),
                    Found("R3", "joint dull and cracked", "major"),
                    Found(replaced[0].Ref, "print for the negative lead worn", "note"),
                    .. outcome == Outcome.OpenFinding ? [Found("U1", "track lifted at one pad", "major")] : Array.Empty<FlowLine>(),
                ]
            )
            .List(4, "readings", electrolytics.Select(part => PartReadings.InCircuit(part, state: null, IsWorn(part), random)));

    private void Measure(LineWriter file, DateOnly day)
    {
        Visit(file, day, "bridge-1").List(4, "readings", AsFound(IsForTheBridge));
        Visit(file, day.AddDays(1), "meter-1").List(4, "readings", AsFound(part => !IsForTheBridge(part)));
    }

    private IEnumerable<FlowLine> AsFound(Func<SyntheticPart, bool> isWanted) =>
        parts.Where(isWanted).Select(part => PartReadings.AsFound(part, ConditionOf(part), random)).OfType<FlowLine>();

    private static bool IsForTheBridge(SyntheticPart part) =>
        part.Group is PartGroup.Electrolytic or PartGroup.Film or PartGroup.Ceramic or PartGroup.Inductor;

    private void Work(LineWriter file, DateOnly day) =>
        Visit(file, day, "bridge-1")
            .List(
                4,
                "readings",
                [
                    .. replaced.Select(part => PartReadings.New(part, CollectionPlan.LotId(part.Template, batch), random)),
                    PartReadings.Formed(reformed, random),
                ]
            )
            .List(
                4,
                "work",
                [
                    .. replaced.Select(Replaced),
                    new FlowLine().Add("part", reformed.Ref).Add("did", "re-formed").Add("note", "two hours through a resistor"),
                    new FlowLine().Add("part", "R3").Add("did", "re-soldered"),
                    new FlowLine().Add("at", "J1").Add("did", "cleaned").Add("with", "isopropanol").Add("dry", "24 h"),
                    new FlowLine().Add("part", "L1").Add("did", "left alone").Add("note", "slug sealed by the maker"),
                ]
            )
            .List(
                4,
                "decided",
                random.Chance(40)
                    ?
                    [
                        new FlowLine()
                            .Add("part", reformed.Ref)
                            .Add("decision", "watch")
                            .Add("because", "held its leakage for an hour and then settled"),
                    ]
                    : []
            );

    private FlowLine Replaced(SyntheticPart part)
    {
        var line = new FlowLine().Add("part", part.Ref).Add("did", "replaced").Add("lot", CollectionPlan.LotId(part.Template, batch));
        line = random.Chance(30) ? line.AddPlain("polarity", "[schematic, measured in circuit]") : line.Add("polarity", "schematic");
        return line.Add("kept", random.Chance(50) ? $"bag {random.Between(1, 99)}" : null);
    }

    private void Prove(LineWriter file, DateOnly day)
    {
        Visit(file, day, "meter-1")
            .Line("    powered: through a series lamp")
            .List(4, "proof", [Rail("+15V", 15m), Rail("+5V", 5m), Soak(4)]);
    }

    private void LookAgain(LineWriter file, DateOnly day) =>
        Visit(file, day, "loop-1")
            .List(4, "readings", electrolytics.Select(part => PartReadings.InCircuit(part, "again", isWorn: IsLeftWorn(part), random)))
            .List(4, "proof", [Rail("+15V", 15m).Add("instrument", "meter-1"), Rail("+5V", 5m).Add("instrument", "meter-1"), Soak(8)]);

    private FlowLine Rail(string point, decimal nominal) =>
        new FlowLine()
            .Add("point", point)
            .Add("voltage", Figures.Of(nominal * random.Thousandths(980, 1020), "V", 4))
            .Add("ripple", random.Chance(50) ? Figures.Of(random.Thousandths(1, 6), "V") : null);

    private static FlowLine Soak(int hours) =>
        new FlowLine().Add("point", "soak").AddPlain("hours", Figures.Number(hours)).Add("result", "pass");

    private static FlowLine Found(string at, string what, string severity) =>
        new FlowLine().Add("at", at).Add("what", what).Add("severity", severity);

    private LineWriter Visit(LineWriter file, DateOnly day, string instrument) =>
        file.Line($"  - date: {Figures.Day(day)}")
            .Line($"    by: {by}")
            .Line($"    temperature: {random.Between(18, 24)} °C")
            .Line($"    instrument: {instrument}");

    private bool IsWorn(SyntheticPart part) => replaced.Contains(part) || IsLeftWorn(part);

    private bool IsLeftWorn(SyntheticPart part) => outcome == Outcome.FailedReading && part == spare;

    private PartCondition ConditionOf(SyntheticPart part) =>
        IsWorn(part) ? PartCondition.Worn
        : outcome == Outcome.Undecided && (part == spare || part.Ref == "R1") ? PartCondition.OnItsLimit
        : PartCondition.Sound;
}
