using System.Collections.Immutable;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Model;

/// <summary>One visit to the bench.</summary>
public sealed record BenchVisit(Written<DateOnly> Date, Spot Spot)
{
    /// <summary>Initials.</summary>
    public Written<string>? By { get; init; }

    /// <summary>Temperature at the bench.</summary>
    public Written<Quantity>? RoomTemperature { get; init; }

    /// <summary>The instrument of all readings that name no other.</summary>
    public Written<string>? Instrument { get; init; }

    /// <summary>How power was applied that day.</summary>
    public Written<string>? Powered { get; init; }

    /// <summary>What was seen.</summary>
    public ImmutableArray<Observation> Found { get; init; } = [];

    /// <summary>What was measured.</summary>
    public ImmutableArray<Reading> Readings { get; init; } = [];

    /// <summary>What was done, in order.</summary>
    public ImmutableArray<WorkEntry> Work { get; init; } = [];

    /// <summary>What a person decided.</summary>
    public ImmutableArray<Decision> Decided { get; init; } = [];

    /// <summary>What proved the board.</summary>
    public ImmutableArray<Proof> Proofs { get; init; } = [];

    /// <summary>Pieces of lots that went to the bin: of a visit in the stock file.</summary>
    public ImmutableArray<Scrapped> Scrapped { get; init; } = [];

    /// <summary>Pictures.</summary>
    public ImmutableArray<Photograph> Photos { get; init; } = [];

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }
}

/// <summary>Something seen at the bench.</summary>
/// <param name="At">The place on the board.</param>
/// <param name="What">What was seen.</param>
/// <param name="Severity">note, minor, major or safety.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record Observation(Written<string> At, Written<string> What, Written<ObservedSeverity> Severity, Spot Spot);

/// <summary>A measurement of a part, of a lot before it is fitted, or of a point.</summary>
/// <param name="Values">The values read, in canonical order, each with its key.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record Reading(ImmutableArray<ReadValue> Values, Spot Spot)
{
    /// <summary>The part read.</summary>
    public Written<string>? Part { get; init; }

    /// <summary>The lot read.</summary>
    public Written<string>? Lot { get; init; }

    /// <summary>Which piece of the lot, or which of several new parts, was read.</summary>
    public Written<string>? Piece { get; init; }

    /// <summary>The test point read.</summary>
    public Written<string>? Point { get; init; }

    /// <summary>as found, new, as left or again; null means as found.</summary>
    public Written<ReadingState>? State { get; init; }

    /// <summary>The word for when it was taken, which the record may leave out.</summary>
    public string StateWord => State?.Text ?? Vocabulary.ReadingStates.WordFor(ReadingState.AsFound);

    /// <summary>in or out; null when not said.</summary>
    public Written<Circuit>? Circuit { get; init; }

    /// <summary>Test frequency.</summary>
    public Written<Quantity>? Frequency { get; init; }

    /// <summary>Temperature at which it was taken, the visit's when not said.</summary>
    public Written<Quantity>? Temperature { get; init; }

    /// <summary>The instrument, the visit's when not said.</summary>
    public Written<string>? Instrument { get; init; }

    /// <summary>How long the voltage had stood when leakage or insulation was read.</summary>
    public Written<Quantity>? After { get; init; }

    /// <summary>The voltage at which leakage or insulation was read.</summary>
    public Written<Quantity>? AtVoltage { get; init; }

    /// <summary>The d.c. voltage across the part while its capacitance was read.</summary>
    public Written<Quantity>? Bias { get; init; }

    /// <summary>Result of a functional test.</summary>
    public Written<TestResult>? Result { get; init; }

    /// <summary>The range that the meter was on, for the first of the values; null when not said.</summary>
    public Written<Quantity>? Range { get; init; }

    /// <summary>How it was measured.</summary>
    public Written<string>? Method { get; init; }

    /// <summary>The verdict written beside it.</summary>
    public Written<WrittenVerdict>? Verdict { get; init; }

    /// <summary>The day of the entry that was written down wrongly and in whose stead this one counts; null for nearly all.</summary>
    public Written<DateOnly>? Corrects { get; init; }

    /// <summary>Why that entry is known to be wrong.</summary>
    public Written<string>? Because { get; init; }

    /// <summary>That entry, once it was found.</summary>
    public Reading? InsteadOf { get; init; }

    /// <summary>Where in the record it was taken: a correction was taken where the wrong entry stands.</summary>
    public Spot TakenAt => InsteadOf?.TakenAt ?? Spot;

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }
}

/// <summary>One value of a reading.</summary>
/// <param name="Measured">What was measured.</param>
/// <param name="Value">What the meter showed.</param>
public sealed record ReadValue(Measured Measured, Written<Indication> Value)
{
    /// <summary>The value itself; null where the meter gave a bound or a word, which nothing may be computed from.</summary>
    public Quantity? Exact => Value.Value.Exact;

    /// <summary>A value that stands elsewhere in the record as a figure.</summary>
    public static ReadValue From(Measured measured, Written<Quantity> figure) =>
        new(measured, new(Indication.From(figure.Value), figure.Text, figure.Spot));
}

/// <summary>What a value of a reading is. The names in records are the same in small letters.</summary>
public enum Measured
{
    /// <summary>Capacitance.</summary>
    Capacitance,

    /// <summary>Equivalent series resistance.</summary>
    Esr,

    /// <summary>Dissipation factor, tan delta.</summary>
    LossFactor,

    /// <summary>Leakage current.</summary>
    Leakage,

    /// <summary>Insulation resistance.</summary>
    Insulation,

    /// <summary>Voltage loss after a charging pulse.</summary>
    VoltageLoss,

    /// <summary>Resistance.</summary>
    Resistance,

    /// <summary>Inductance.</summary>
    Inductance,

    /// <summary>Voltage.</summary>
    Voltage,

    /// <summary>Ripple, peak to peak.</summary>
    Ripple,

    /// <summary>Current.</summary>
    Current,

    /// <summary>Forward voltage of a junction.</summary>
    ForwardVoltage,

    /// <summary>Current gain.</summary>
    Gain,

    /// <summary>Frequency.</summary>
    Frequency,

    /// <summary>Temperature.</summary>
    Temperature,

    /// <summary>Hours of soak, held as a plain number.</summary>
    Hours,
}

/// <summary>Something done to the board.</summary>
/// <param name="Did">What was done.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record WorkEntry(Written<WorkKind> Did, Spot Spot)
{
    /// <summary>The part.</summary>
    public Written<string>? Part { get; init; }

    /// <summary>The place, when it is no part.</summary>
    public Written<string>? At { get; init; }

    /// <summary>The lot that was fitted.</summary>
    public Written<string>? Lot { get; init; }

    /// <summary>What was put in, where it came from no lot in the drawer.</summary>
    public PartValues? NewPart { get; init; }

    /// <summary>The board and the place that it was taken from; see <see cref="BoardPlace"/>.</summary>
    public Written<string>? TakenFrom { get; init; }

    /// <summary>The board and the place that what was taken off went to; see <see cref="BoardPlace"/>.</summary>
    public Written<string>? WentTo { get; init; }

    /// <summary>How the right way round was established.</summary>
    public ImmutableArray<Written<PolarityEvidence>> Polarity { get; init; } = [];

    /// <summary>What it was done with.</summary>
    public Written<string>? With { get; init; }

    /// <summary>How long it must dry before power.</summary>
    public Written<Quantity>? Dry { get; init; }

    /// <summary>Where the original is kept.</summary>
    public Written<string>? Kept { get; init; }

    /// <summary>Whether it cannot be undone.</summary>
    public bool IsIrreversible { get; init; }

    /// <summary>The place of the finding it answers.</summary>
    public Written<string>? Clears { get; init; }

    /// <summary>The hazard it makes safe.</summary>
    public Written<HazardKind>? Hazard { get; init; }

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }

    /// <summary>The remark where it says anything; a dash explains nothing.</summary>
    public Written<string>? Explanation => Note.SaySomething() ? Note : null;

    /// <summary>True when what sits in the place afterwards, or that nothing does, is another thing than before.</summary>
    public bool ChangesAPlace => Did.Value is WorkKind.Replaced or WorkKind.Fitted or WorkKind.Removed or WorkKind.PutBack;

    /// <summary>True when the right way round was established by more than the print on the board.</summary>
    public bool EstablishesPolarity => Polarity.Any(evidence => evidence.Value != PolarityEvidence.Print);

    /// <summary>True when what sat in the place is not there afterwards.</summary>
    public bool TakesAPartOut => Did.Value is WorkKind.Replaced or WorkKind.Removed;

    /// <summary>True when something other than what was there before sits in the place afterwards.</summary>
    public bool PutsAPartIn => Did.Value is WorkKind.Replaced or WorkKind.Fitted;
}

/// <summary>A person's decision, with the reason.</summary>
/// <param name="Part">The part decided on, or null.</param>
/// <param name="At">The place decided on, when it is no part, or null.</param>
/// <param name="What">keep, watch, replace, form again, measure out of circuit or leave alone.</param>
/// <param name="Because">The reason.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record Decision(Written<string>? Part, Written<string>? At, Written<DecisionKind> What, Written<string> Because, Spot Spot)
{
    /// <summary>What it is about; null when the record forgot to say it.</summary>
    public Written<string>? Place => Part ?? At;

    /// <summary>Whether its reason says anything.</summary>
    public bool GivesAReason => Because.SaySomething();
}

/// <summary>Pieces of a lot that went to the bin before they were fitted.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="Count">How many pieces.</param>
/// <param name="Because">Why.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record Scrapped(Written<string> Lot, Written<int> Count, Written<string> Because, Spot Spot)
{
    /// <summary>Which piece, when it was one that a reading names.</summary>
    public Written<string>? Piece { get; init; }
}

/// <summary>A measurement or test that proves the board.</summary>
/// <param name="Point">The point.</param>
/// <param name="Values">The values read.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record Proof(Written<string> Point, ImmutableArray<ReadValue> Values, Spot Spot)
{
    /// <summary>Result of a functional test.</summary>
    public Written<TestResult>? Result { get; init; }

    /// <summary>The range that the meter was on, for the first of the values; null when not said.</summary>
    public Written<Quantity>? Range { get; init; }

    /// <summary>The instrument, the visit's when not said.</summary>
    public Written<string>? Instrument { get; init; }

    /// <summary>The verdict written beside it.</summary>
    public Written<WrittenVerdict>? Verdict { get; init; }

    /// <summary>The day of the entry that was written down wrongly and in whose stead this one counts; null for nearly all.</summary>
    public Written<DateOnly>? Corrects { get; init; }

    /// <summary>Why that entry is known to be wrong.</summary>
    public Written<string>? Because { get; init; }

    /// <summary>That entry, once it was found.</summary>
    public Proof? InsteadOf { get; init; }

    /// <summary>Where in the record it was taken: a correction was taken where the wrong entry stands.</summary>
    public Spot TakenAt => InsteadOf?.TakenAt ?? Spot;

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }
}

/// <summary>A picture taken at the bench.</summary>
/// <param name="File">The path from the root of the collection.</param>
/// <param name="Shows">What it shows, in words.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record Photograph(Written<string> File, Written<string> Shows, Spot Spot);
