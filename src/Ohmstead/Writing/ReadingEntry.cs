using Ohmstead.Assessment.Boards;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Writing;

/// <summary>A reading or a proof as it was said at the bench.</summary>
/// <param name="Place">The part or the test point.</param>
/// <param name="Values">What was read, in words.</param>
internal sealed record SaidReading(string Place, IReadOnlyList<string> Values)
{
    /// <summary>Whether the part was in the circuit: in, out or null.</summary>
    public string? Circuit { get; init; }

    /// <summary>The lot, for a part from the drawer that is not fitted yet.</summary>
    public string? Lot { get; init; }

    /// <summary>When in the part's life.</summary>
    public string? State { get; init; }

    /// <summary>The instrument, or null for the visit's.</summary>
    public string? Instrument { get; init; }

    /// <summary>Anything the next person should know.</summary>
    public string? Note { get; init; }

    /// <summary>The entry that it corrects, by its keys: what is not said anew is as it was there. Null where it corrects none.</summary>
    public IReadOnlyDictionary<string, string>? InsteadOf { get; init; }

    /// <summary>The day of that entry, as it is written.</summary>
    public string? Corrects { get; init; }

    /// <summary>Why that entry is wrong.</summary>
    public string? Because { get; init; }
}

/// <summary>An entry that is ready to be spliced in.</summary>
/// <param name="Key">The list of the visit that it belongs to.</param>
/// <param name="Item">The entry as one line of YAML, given the keys of the visit it joins.</param>
internal sealed record PreparedEntry(string Key, Func<IReadOnlyDictionary<string, string>, string> Item)
{
    /// <summary>Makes an entry of a reading, or says what is wrong with it.</summary>
    /// <param name="board">The board.</param>
    /// <param name="said">The reading.</param>
    /// <param name="units">What a number without a unit means, or null when it means nothing.</param>
    public static (PreparedEntry? Entry, string? Fault) Prepare(BoardAssessment board, SaidReading said, UnsaidUnits? units = null)
    {
        var part = board.Place(said.Place)?.Part;
        var point = part is null ? board.Points.FirstOrDefault(known => known.Name.Value == said.Place) : null;
        if (part is null && point is null)
        {
            if (said.Values.FirstOrDefault(value => IsPlace(board, value)) is { } meant)
            {
                return (null, $"'{said.Place}' is no place of {board.Board.Id.Value} and {meant} is one; write {meant} {said.Place}");
            }

            var near = Nearest.To(
                said.Place,
                board.Places.Select(known => known.Part.Ref.Value).Concat(board.Points.Select(known => known.Name.Value))
            );
            return (
                null,
                OtherRail.Told(board, said.Place, near)
                    ?? Nearest.Told($"{board.Board.Id.Value} has no part and no point '{said.Place}'", near)
            );
        }

        var shape = part is null ? BenchShape.Proof : BenchShape.Reading;
        var (read, fault) = EnteredValues.Read(said.Values, part?.Values.Kind.Value, point?.Measures, shape, units);
        fault ??= point is null || said.InsteadOf is not null ? null : NotAsked(point, read);
        return fault is not null
            ? (null, fault)
            : (new(part is null ? "proof" : "readings", visit => Line(said, part is null, shape, read, visit)), null);
    }

    // A point is proved by what is asked there; what else was read stands beside it.
    private static string? NotAsked(TestPoint point, IReadOnlyList<(string Key, string Value)> read)
    {
        var asked = point.Measures switch
        {
            PointMeasure.Voltage => new[] { BenchShape.Voltage, BenchShape.Ripple },
            PointMeasure.Current => [BenchShape.Current],
            PointMeasure.Frequency => [BenchShape.Frequency],
            PointMeasure.Temperature => [BenchShape.Temperature],
            PointMeasure.Hours => [BenchShape.Hours],
            _ => [],
        };
        var name = point.Name.Value;
        return read.Any(value => value.Key == BenchShape.Result.Name || asked.Any(key => key.Name == value.Key)) ? null
            : asked.Length == 0 ? $"{name} is a test that passes or fails; write {name} pass or {name} fail, then what was read"
            : $"{name} is proved by its {asked[0].Name}, and nothing says it; write such as {asked[0].Name}={Tight(asked[0].Example)}";
    }

    private static string Tight(string value) => value.Replace(" ", string.Empty, StringComparison.Ordinal);

    private static bool IsPlace(BoardAssessment board, string word) =>
        board.Place(word) is not null || board.Points.Any(point => point.Name.Value == word);

    private static string Line(
        SaidReading said,
        bool isPoint,
        Shape shape,
        IReadOnlyList<(string Key, string Value)> read,
        IReadOnlyDictionary<string, string> visit
    )
    {
        var line = new Dictionary<string, string?>(StringComparer.Ordinal)
        {
            [isPoint ? "point" : "part"] = said.Place,
            ["lot"] = said.Lot,
            // What has a lot lies in the drawer until work puts it in.
            ["state"] = said.State ?? (said.Lot is null ? null : "new"),
            ["circuit"] = said.Circuit,
            // The entry leaves out what its visit says already.
            ["instrument"] = said.Instrument is { } used && visit.GetValueOrDefault("instrument") != used ? used : null,
            ["note"] = said.Note,
        };
        foreach (var (key, value) in read)
        {
            line[key] = value;
        }

        line[BenchShape.Corrects.Name] = said.Corrects;
        line[BenchShape.WrittenWrongly.Name] = said.Because;
        foreach (var (key, value) in said.InsteadOf ?? new Dictionary<string, string>(StringComparer.Ordinal))
        {
            // The verdict was that on the wrong figure, and what was noted may have been about it.
            if (key != BenchShape.Verdict.Name && key != BenchShape.Note.Name && line.GetValueOrDefault(key) is null)
            {
                line[key] = value;
            }
        }

        return FlowText.Mapping(shape.Keys.Select(key => (key.Name, line.GetValueOrDefault(key.Name))));
    }
}
