using System.Collections.Immutable;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Records.Binding;

/// <summary>Reads visits to the bench.</summary>
public static class BenchBinding
{
    private static readonly (string Key, Measured Measured)[] ReadingKeys =
    [
        ("capacitance", Measured.Capacitance),
        ("esr", Measured.Esr),
        ("loss_factor", Measured.LossFactor),
        ("leakage", Measured.Leakage),
        ("insulation", Measured.Insulation),
        ("voltage_loss", Measured.VoltageLoss),
        ("resistance", Measured.Resistance),
        ("inductance", Measured.Inductance),
        ("voltage", Measured.Voltage),
        ("ripple", Measured.Ripple),
        ("current", Measured.Current),
        ("forward_voltage", Measured.ForwardVoltage),
        ("gain", Measured.Gain),
    ];

    private static readonly (string Key, Measured Measured)[] ProofKeys =
    [
        ("voltage", Measured.Voltage),
        ("ripple", Measured.Ripple),
        ("current", Measured.Current),
    ];

    // These say elsewhere how something was read, so they are figures; in a proof they are what was read.
    private static readonly (string Key, Measured Measured)[] ProofFigures =
    [
        ("frequency", Measured.Frequency),
        ("temperature", Measured.Temperature),
    ];

    /// <summary>All visits of a file; a visit without a date is reported and left out.</summary>
    public static ImmutableArray<BenchVisit> Visits(Fields file) => Each(file, "bench", static fields => Visit(fields, Reading));

    /// <summary>All visits with parts of the drawer.</summary>
    public static ImmutableArray<BenchVisit> StockVisits(Fields file) =>
        Each(file, "bench", fields =>
            Visit(fields, ReadingOfALot) is { } visit ? visit with { Scrapped = Each(fields, "scrapped", Scrapped) } : null
        );

    internal static ImmutableArray<T> Each<T>(Fields fields, string key, Func<Fields, T?> read)
        where T : class
    {
        var items = fields.List<T>(key);
        if (items.Length == 0)
        {
            return [];
        }

        var result = ImmutableArray.CreateBuilder<T>(items.Length);
        foreach (var item in items)
        {
            if (item.Known is T known)
            {
                result.Add(known);
            }
            else if (read(item) is { } value)
            {
                item.Keep(value);
                result.Add(value);
            }
        }

        return result.DrainToImmutable();
    }

    /// <summary>The items of a list that others refer to by name, and the names of those that could not be read.</summary>
    internal static (ImmutableArray<T> Items, UnreadNames Unread) Named<T>(Fields fields, string key, string nameKey, Func<Fields, T?> read)
        where T : class
    {
        var isWhole = true;
        List<string>? unread = null;
        var items = Each(fields, key, item =>
        {
            var value = read(item);
            if (value is null && item.Raw(nameKey) is { Length: > 0 } name)
            {
                (unread ??= []).Add(name);
            }
            else
            {
                isWhole &= value is not null;
            }

            return value;
        });
        isWhole &= items.Length + (unread?.Count ?? 0) == fields.CountOf(key);
        return (items, isWhole && unread is null ? UnreadNames.None : new(unread ?? [], !isWhole));
    }

    private static BenchVisit? Visit(Fields fields, Func<Fields, Reading> reading)
    {
        var date = fields.Date("date");
        var visit = new BenchVisit(date ?? new(default, string.Empty, fields.Spot), fields.Spot)
        {
            By = fields.Text("by"),
            RoomTemperature = fields.Quantity("temperature"),
            Instrument = fields.Id("instrument"),
            Powered = fields.Text("powered"),
            Found = Each(fields, "found", Found),
            Readings = Each(fields, "readings", reading),
            Work = Each(fields, "work", Work),
            Decided = Each(fields, "decided", Decided),
            Proofs = Each(fields, "proof", Proof),
            Photos = Each(fields, "photos", Photo),
            Note = fields.Text("note"),
        };
        return date is null ? null : visit;
    }

    private static Observation? Found(Fields fields) =>
        (fields.Text("at"), fields.Text("what"), fields.Word("severity", Vocabulary.Severities)) is ({ } at, { } what, { } severity)
            ? new(at, what, severity, fields.Spot)
            : null;

    private static Reading Reading(Fields fields) =>
        ReadingOfALot(fields) with
        {
            Corrects = fields.Date("corrects"),
            Because = fields.Text("because"),
        };

    private static Reading ReadingOfALot(Fields fields)
    {
        var values = ImmutableArray.CreateBuilder<ReadValue>(2);
        foreach (var (key, measured) in ReadingKeys)
        {
            if (fields.Indication(key) is { } value)
            {
                values.Add(new(measured, value));
            }
        }

        var range = Range(fields, values);
        return new Reading(values.DrainToImmutable(), fields.Spot)
        {
            Range = range,
            Part = fields.Id("part"),
            Lot = fields.Id("lot"),
            Piece = fields.Text("piece"),
            Point = fields.Id("point"),
            State = fields.Word("state", Vocabulary.ReadingStates),
            Circuit = fields.Word("circuit", Vocabulary.Circuits),
            Frequency = fields.Quantity("frequency"),
            Temperature = fields.Quantity("temperature"),
            Instrument = fields.Id("instrument"),
            After = fields.Quantity("after"),
            AtVoltage = fields.Quantity("at_voltage"),
            Bias = fields.Quantity("bias"),
            Result = fields.Word("result", Vocabulary.Results),
            Method = fields.Text("method"),
            Verdict = fields.Word("verdict", Vocabulary.Verdicts),
            Note = fields.Text("note"),
        };
    }

    private static WorkEntry? Work(Fields fields) =>
        fields.Word("did", Vocabulary.Works) is not { } did
            ? null
            : new WorkEntry(did, fields.Spot)
            {
                Part = fields.Id("part"),
                At = fields.Text("at"),
                Lot = fields.Id("lot"),
                NewPart = fields.Mapping("new_part") is { } part ? PartBinding.Values(part, isLot: true) : null,
                TakenFrom = fields.Text("taken_from"),
                WentTo = fields.Text("went_to"),
                Polarity = fields.Words("polarity", Vocabulary.PolarityWays),
                With = fields.Text("with"),
                Dry = fields.Quantity("dry"),
                Kept = fields.Text("kept"),
                IsIrreversible = fields.Word("irreversible", Vocabulary.YesNo) is { Value: true },
                Clears = fields.Text("clears"),
                Hazard = fields.Word("hazard", Vocabulary.Hazards),
                Note = fields.Text("note"),
            };

    private static Decision? Decided(Fields fields)
    {
        var (part, at) = (fields.Id("part"), fields.Text("at"));
        return (fields.Word("decision", Vocabulary.Decisions), fields.Text("because")) is ({ } what, { } because)
            ? new(part, at, what, because, fields.Spot)
            : null;
    }

    private static Scrapped? Scrapped(Fields fields)
    {
        var (lot, piece) = (fields.Id("lot"), fields.Text("piece"));
        return (lot, fields.Count("count"), fields.Text("because")) is ({ } of, { } count, { } because)
            ? new(of, count, because, fields.Spot) { Piece = piece }
            : null;
    }

    private static Proof? Proof(Fields fields)
    {
        if (fields.Id("point") is not { } point)
        {
            return null;
        }

        var values = ImmutableArray.CreateBuilder<ReadValue>(2);
        foreach (var (key, measured) in ProofKeys)
        {
            if (fields.Indication(key) is { } value)
            {
                values.Add(new(measured, value));
            }
        }

        foreach (var (key, measured) in ProofFigures)
        {
            if (fields.Quantity(key) is { } value)
            {
                values.Add(ReadValue.From(measured, value));
            }
        }

        if (fields.Number("hours") is { } hours)
        {
            values.Add(new(Measured.Hours, new(Indication.From(new Quantity(hours.Value, Dimension.Number)), hours.Text, hours.Spot)));
        }

        var range = Range(fields, values);
        return new Proof(point, values.DrainToImmutable(), fields.Spot)
        {
            Range = range,
            Result = fields.Word("result", Vocabulary.Results),
            Instrument = fields.Id("instrument"),
            Verdict = fields.Word("verdict", Vocabulary.Verdicts),
            Corrects = fields.Date("corrects"),
            Because = fields.Text("because"),
            Note = fields.Text("note"),
        };
    }

    // The range of a meter is in the unit of what it shows; where nothing is said to be shown, it may be in any.
    private static Written<Quantity>? Range(Fields fields, ImmutableArray<ReadValue>.Builder values) =>
        fields.Quantity(
            "range",
            values.Count > 0
                ? MeasuredDimension.From(values[0].Measured)
                : Enum.GetValues<Dimension>()
                    .FirstOrDefault(dimension => QuantityText.Parse(fields.Raw("range"), dimension).Is(out _, out _), Dimension.Voltage)
        );

    private static Photograph? Photo(Fields fields) =>
        (fields.Text("file"), fields.Text("shows")) is ({ } file, { } shows) ? new(file, shows, fields.Spot) : null;
}
