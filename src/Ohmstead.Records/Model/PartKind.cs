using System.Collections.Immutable;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Records.Model;

/// <summary>
/// A kind of part: one row of <see cref="PartKinds"/> with all that follows from the kind alone. There is one object of each, so two kinds
/// are the same when they are the same object. What a reading of a kind is held against beyond that stands in the limit file of the kind.
/// </summary>
public sealed class PartKind
{
    private readonly FamilyFacts family;

    internal PartKind(string name, PartFamily family)
    {
        Name = name;
        Family = family;
        this.family = PartFamilies.For(family);
    }

    /// <summary>Its name in records.</summary>
    public string Name { get; }

    /// <summary>The family it belongs to.</summary>
    public PartFamily Family { get; }

    /// <summary>
    /// The quantity it is marked with: farad for a capacitor, ohm for a resistor, and so on. The limits of a transistor are its gain.
    /// </summary>
    public Dimension MarkedIn => family.MarkedIn;

    /// <summary>
    /// What is measured when its main value is measured; null for a fuse, which is known by a current that nobody sends through it.
    /// </summary>
    public Measured? MainQuantity => family.MainQuantity;

    /// <summary>What a bench usually measures of it.</summary>
    public ImmutableArray<Measured> UsuallyMeasured => IsElectrolytic ? PartFamilies.OfElectrolytics : family.UsuallyMeasured;

    /// <summary>Whether a reading of it may give a quantity at all: a resistor has no capacitance to speak of.</summary>
    public bool MayGive(Measured measured) => family.MayGive.IsDefault || family.MayGive.Contains(measured);

    /// <summary>
    /// The quantities one of which, read inside, says of a new one that it is what its mark says. Empty where the board that works with it
    /// has to say it.
    /// </summary>
    public ImmutableArray<Measured> ProvedBy
    {
        get => field.IsDefault ? family.ProvedBy : field;
        init;
    }

    /// <summary>
    /// Whether a test of its function says that of it too: a fuse that carries, a winding that works and a crystal that swings were tried.
    /// </summary>
    public bool IsTestedByUse
    {
        get => field || family.IsTestedByUse;
        init;
    }

    /// <summary>The letters of reference designators that it is drawn with.</summary>
    public ImmutableArray<Designation> Letters { get; init; } = [];

    /// <summary>What the trade lists it by.</summary>
    public TypeNumber ListedBy { get; init; } = TypeNumber.BesideItsValues;

    /// <summary>
    /// Whether its name speaks of nothing else, so that the word in a parts list tells the kind: 'lamp' or 'paper' may speak of something
    /// else than the part.
    /// </summary>
    public bool HasTellingName
    {
        get => field || Name.Contains(' ', StringComparison.Ordinal);
        init;
    }

    /// <summary>What it may be made of where its name does not say it; empty when the name says it all.</summary>
    public ImmutableArray<PartMaterial> Materials { get; init; } = [];

    /// <summary>What kind of capacitor it is for the rules of substitution; null for what they say nothing of.</summary>
    public CapacitorKind? Capacitor { get; init; }

    /// <summary>The usual figures of its dielectric, or null.</summary>
    public DielectricFigures? Dielectric { get; init; }

    /// <summary>Which junction a meter sees in it.</summary>
    public Junction Junction { get; init; } = Junction.None;

    /// <summary>Whether every part of the kind has a right way round.</summary>
    public bool HasRightWayRound { get; init; }

    /// <summary>Whether it has contacts or a wiper, which are cleaned and set.</summary>
    public bool HasContacts { get; init; }

    /// <summary>Whether it is made for a voltage that changes its sign although its relatives are not.</summary>
    public bool IsBipolar { get; init; }

    /// <summary>What the voltage written on it means.</summary>
    public VoltageMeaning Voltage { get; init; } = VoltageMeaning.Borne;

    /// <summary>Whether it holds a voltage of its own, which its type number tells and its reading is held against.</summary>
    public bool TypeTellsVoltage { get; init; }

    /// <summary>Whether people rely on the kind not to be shocked or burned, wherever it sits.</summary>
    public bool IsSafety { get; init; }

    /// <summary>Whether it is a resistor of one fixed value, one of which may stand for another.</summary>
    public bool IsFixedResistor { get; init; }

    /// <summary>What is usually accepted of it out of circuit, or null when nothing is known.</summary>
    public AcceptLimit? Accepted { get; init; }

    /// <summary>Where the figures of how far it may stray stand, when they are those of a relative.</summary>
    public AcceptLimit? StraysLike
    {
        get => field ?? Accepted;
        init;
    }

    /// <summary>Whether it is an electrolytic: judged by ESR, dissipation factor and leakage too, and ageing on the shelf.</summary>
    public bool IsElectrolytic => Capacitor is { } kind && kind.IsElectrolytic();

    /// <summary>
    /// Whether it dries out in use and its oxide thins on the shelf: an aluminium electrolytic with a liquid electrolyte.
    /// </summary>
    public bool DriesOut => Capacitor is CapacitorKind.AluminiumWet;

    /// <summary>Whether it is of paper, which breaks down at its working voltage when it is old.</summary>
    public bool IsPaper => Capacitor is { } kind && kind.IsPaper();

    /// <summary>Whether it is of film or paper: wound, without an oxide.</summary>
    public bool IsFilmOrPaper => Capacitor is { } kind && (kind.IsFilm() || kind.IsPaper());

    /// <summary>
    /// Whether people rely on a part not to be shocked or burned: a suppression capacitor, anything with a safety class or across the
    /// mains, a fuse, a resistor that bleeds a charge down, by its role or by what is noted of it. Common practice; no list can name all of
    /// them, and local codes and licensed practice come first.
    /// </summary>
    public static bool IsSafetyRelevant(PartValues values) =>
        values.SafetyClass is not null
        || values.Kind.Value.IsSafety
        || values.Role is { Value: PartRole.MainsSuppression }
        || IsBleeder(values);

    private static bool IsBleeder(PartValues values) =>
        values.Kind.Value.Family == PartFamily.Resistor
        && (
            values.Role is { Value: PartRole.Bleeder }
            || (values.Note is { } note && note.Value.Contains("bleed", StringComparison.OrdinalIgnoreCase))
        );

    /// <summary>Whether a part is a capacitor that stands on the mains: by its kind, its safety class or what it does there.</summary>
    public static bool IsSuppressor(PartValues values) =>
        values.Kind.Value == PartKinds.SuppressionCapacitor
        || (
            (values.SafetyClass is not null || values.Role is { Value: PartRole.MainsSuppression })
            && values.Kind.Value.Family == PartFamily.Capacitor
        );

    /// <summary>Whether a part of these values has a right way round. One whose kind has is not made without by a word.</summary>
    public static bool IsPolarised(PartValues values) =>
        values.Kind.Value.HasRightWayRound || values.Polarity is { Value: PartPolarity.Polarised };

    /// <summary>Its name.</summary>
    public override string ToString() => Name;
}
