using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>
/// A board that lists a part or a point of its design in its own words asks no less than the design, or says why in a note. The class, the
/// kind and the rating of a part that people rely on not to be hurt are not lowered at all.
/// </summary>
public sealed class DesignKept : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "design-kept";

    /// <inheritdoc/>
    public string Asks => "where a board has a part or a point of its design in its own words, it asks no less, or a note says why";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        if (board.Board is not { Design: { } design, Board: var own } || (own.Parts.Length == 0 && own.Points.Length == 0))
        {
            yield break;
        }

        var parts = new FirstByName<Part>(design.Parts, static known => known.Ref.Value);
        foreach (var part in own.Parts)
        {
            if (parts.Find(part.Ref.Value) is { } known && Loosened(part.Values, known.Values) is { Count: > 0 } loose)
            {
                // No note lowers what people rely on not to be hurt.
                var isSafety = PartKind.IsSafetyRelevant(known.Values);
                yield return Told(
                    board,
                    part.Ref.Value,
                    loose,
                    isSafety || !part.Values.Note.SaySomething() ? null : part.Values.Note,
                    isSafety
                );
            }
        }

        var points = new FirstByName<TestPoint>(design.Points, static known => known.Name.Value);
        foreach (var point in own.Points)
        {
            if (points.Find(point.Name.Value) is { } known && Loosened(point, known) is { Count: > 0 } loose)
            {
                yield return Told(
                    board,
                    point.Name.Value,
                    loose,
                    point.Note.SaySomething() ? point.Note : (point.Source?.Value == known.Source?.Value ? null : point.Source),
                    isSafety: false
                );
            }
        }
    }

    private Obligation Told(
        BoardUnderObligation board,
        string at,
        List<(string What, bool IsRating)> loose,
        Written<string>? note,
        bool isSafety
    )
    {
        var what = $"this board asks less of {at} than its design: {string.Join(", ", loose.Select(one => one.What))}";
        return note is { } why
            ? Obligation.Met(Kind, at, what, board.ByTheRecord(why.Value, why.Spot))
            : Obligation.Open(
                Kind,
                isSafety ? BoardState.FaultStands : BoardState.ProofDue,
                at,
                what,
                isSafety
                    ? "people rely on this part not to be hurt: ask what the design asks, or mend the design; defer to local "
                        + "codes and licensed practice"
                    : "take it out, or say in its note why this board differs"
            );
    }

    private static List<(string What, bool IsRating)> Loosened(PartValues own, PartValues known)
    {
        var loose = new List<(string, bool)>();
        if (own.Kind.Value != known.Kind.Value)
        {
            loose.Add(($"{own.Kind.Text} for {known.Kind.Text}", true));
        }

        if (PartKind.IsSafetyRelevant(known) && !PartKind.IsSafetyRelevant(own))
        {
            loose.Add(("nothing says any more that people rely on it", true));
        }

        Word(loose, "type", own.Type, known.Type, isRating: true);
        if (known.Cells is { } cells && own.Cells?.Value != cells.Value)
        {
            loose.Add(($"cells {own.Cells?.Text ?? "not written"} for {cells.Text}", true));
        }

        Same(loose, "frequency", own.Frequency, known.Frequency);
        Class(loose, own.SafetyClass, known.SafetyClass);
        Word(loose, "role", own.Role, known.Role, isRating: false);
        Word(loose, "polarity", own.Polarity, known.Polarity, isRating: false);
        Word(loose, "speed", own.Speed, known.Speed, isRating: true);
        Word(loose, "size", own.Size, known.Size, isRating: false);
        Word(loose, "material", own.Material, known.Material, isRating: false);
        Breaking(loose, own.Breaking, known.Breaking);
        Word(loose, "standard", own.Standard, known.Standard, isRating: true);
        AtLeast(loose, "rated voltage", own.RatedVoltage, known.RatedVoltage, isRating: true);
        AtLeast(loose, "temperature", own.Temperature, known.Temperature, isRating: true);
        AtLeast(loose, "power", own.Power, known.Power, isRating: true);
        AtLeast(loose, "ripple current", own.RippleCurrent, known.RippleCurrent, isRating: true);
        if (own.WorkingVoltage is not null)
        {
            AtLeast(loose, "working voltage", own.WorkingVoltage, known.WorkingVoltage, isRating: false);
        }

        AtLeast(loose, "esr_low", own.EsrLow, known.EsrLow, isRating: false);
        // Where the design writes no limit the mark holds: a limit of the board's own takes its place.
        Limit(loose, "low", own.Low, known.Low, isLower: true);
        Limit(loose, "high", own.High, known.High, isLower: false);
        Limit(loose, "esr_limit", own.EsrLimit, known.EsrLimit, isLower: false);
        Limit(loose, "leakage_limit", own.LeakageLimit, known.LeakageLimit, isLower: false);
        Limit(loose, "loss_factor_limit", own.LossFactorLimit, known.LossFactorLimit, isLower: false);
        Same(loose, "capacitance", own.Capacitance, known.Capacitance);
        Same(loose, "resistance", own.Resistance, known.Resistance);
        Same(loose, "inductance", own.Inductance, known.Inductance);
        Same(loose, "current", own.Current, known.Current);
        Tolerance(loose, own.Tolerance, known.Tolerance);
        return loose;
    }

    private static List<(string What, bool IsRating)> Loosened(TestPoint own, TestPoint known)
    {
        var loose = new List<(string, bool)>();
        if (known.IsRequired && !own.IsRequired)
        {
            loose.Add(("it is not required", false));
        }

        if (own.Measures != known.Measures)
        {
            loose.Add(("it measures another thing", false));
        }

        Same(loose, "nominal", own.Nominal, known.Nominal);
        Limit(loose, "low", own.Low, known.Low, isLower: true);
        Limit(loose, "high", own.High, known.High, isLower: false);
        AtMost(loose, "ripple_limit", own.RippleLimit, known.RippleLimit);
        Tolerance(loose, own.Tolerance, known.Tolerance);
        if (known.Hours is { } hours && (own.Hours is not { } fewer || fewer.Value < hours.Value))
        {
            loose.Add(($"hours {own.Hours?.Text ?? "not written"} for {hours.Text}", false));
        }

        Word(loose, "rail", own.Rail, known.Rail, isRating: false);
        Word(loose, "reservoir", own.Reservoir, known.Reservoir, isRating: false);
        return loose;
    }

    private static void Class(List<(string, bool)> loose, Written<SafetyClass>? own, Written<SafetyClass>? known)
    {
        if (known is not null && own?.Value != known.Value && !SafetyCapacitor.MayReplace(known.Value, CapacitorWords.Safety(own)).Value)
        {
            loose.Add(($"safety class {own?.Text ?? "not written"} for {known.Text}", true));
        }
    }

    private static void Breaking(List<(string, bool)> loose, Written<FuseBreaking>? own, Written<FuseBreaking>? known)
    {
        if (known is not null && !(own?.Value >= known.Value))
        {
            loose.Add(($"breaking capacity {own?.Text ?? "not written"} for {known.Text}", true));
        }
    }

    private static void Limit(List<(string, bool)> loose, string what, Written<Quantity>? own, Written<Quantity>? known, bool isLower)
    {
        if (
            own is null
                ? known is not null
                : known is null || (isLower ? own.Value.Value < known.Value.Value : own.Value.Value > known.Value.Value)
        )
        {
            loose.Add(($"{what} {own?.Text ?? "not written"} for {known?.Text ?? "none"}", false));
        }
    }

    private static void Word<T>(List<(string, bool)> loose, string what, Written<T>? own, Written<T>? known, bool isRating)
        where T : notnull
    {
        if (known is not null && (own is null || !own.Value.Equals(known.Value)))
        {
            loose.Add(($"{what} {own?.Text ?? "not written"} for {known.Text}", isRating));
        }
    }

    private static void AtLeast(List<(string, bool)> loose, string what, Written<Quantity>? own, Written<Quantity>? known, bool isRating)
    {
        if (known is not null && (own is null || own.Value.Value < known.Value.Value))
        {
            loose.Add((Changed(what, own, known), isRating));
        }
    }

    private static void AtMost(List<(string, bool)> loose, string what, Written<Quantity>? own, Written<Quantity>? known)
    {
        if (known is not null && (own is null || own.Value.Value > known.Value.Value))
        {
            loose.Add((Changed(what, own, known), false));
        }
    }

    private static void Same(List<(string, bool)> loose, string what, Written<Quantity>? own, Written<Quantity>? known)
    {
        if (known is not null && (own is null || own.Value.Value != known.Value.Value))
        {
            loose.Add((Changed(what, own, known), true));
        }
    }

    private static void Tolerance(List<(string, bool)> loose, Written<Tolerance>? own, Written<Tolerance>? known)
    {
        // Where the design writes none the usual one holds: one of the board's own takes its place.
        if (
            known is null
                ? own is not null
                : (
                    own is null
                    || own.Value.IsRelative != known.Value.IsRelative
                    || own.Value.Lower < known.Value.Lower
                    || own.Value.Upper > known.Value.Upper
                )
        )
        {
            loose.Add(($"tolerance {own?.Text ?? "not written"} for {known?.Text ?? "the usual one"}", false));
        }
    }

    private static string Changed(string what, Written<Quantity>? own, Written<Quantity> known) =>
        $"{what} {own?.Text ?? "not written"} for {known.Text}";
}
