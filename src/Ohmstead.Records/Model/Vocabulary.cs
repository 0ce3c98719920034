using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Supplies;
using Ohmstead.Electronics.Uncertainty;

namespace Ohmstead.Records.Model;

/// <summary>The closed lists of words that records use, each beside what it means. The words are the trade's.</summary>
public static class Vocabulary
{
    /// <summary>Kinds of part.</summary>
    public static WordList<PartKind> PartKinds => Model.PartKinds.All;

    /// <summary>What a part does in its place.</summary>
    public static WordList<PartRole> Roles { get; } =
        new(
            (PartRole.Reservoir, "reservoir"),
            (PartRole.Decoupling, "decoupling"),
            (PartRole.Coupling, "coupling"),
            (PartRole.Timing, "timing"),
            (PartRole.Filter, "filter"),
            (PartRole.Tuning, "tuning"),
            (PartRole.Snubber, "snubber"),
            (PartRole.MainsSuppression, "mains suppression"),
            (PartRole.Feedback, "feedback"),
            (PartRole.Bias, "bias"),
            (PartRole.Load, "load"),
            (PartRole.Bleeder, "bleeder"),
            (PartRole.Other, "other")
        );

    /// <summary>What may become of a board.</summary>
    public static WordList<WhereaboutsKind> Whereabouts { get; } =
        new(
            (WhereaboutsKind.Moved, "moved"),
            (WhereaboutsKind.ChangedHands, "changed hands"),
            (WhereaboutsKind.Lent, "lent"),
            (WhereaboutsKind.CameBack, "came back"),
            (WhereaboutsKind.Sold, "sold"),
            (WhereaboutsKind.GivenAway, "given away"),
            (WhereaboutsKind.Lost, "lost"),
            (WhereaboutsKind.BrokenUp, "broken up"),
            (WhereaboutsKind.Retired, "retired"),
            (WhereaboutsKind.UsedAgain, "used again")
        );

    /// <summary>Whether a part has a right way round.</summary>
    public static WordList<PartPolarity> Polarities { get; } =
        new((PartPolarity.Polarised, "polarised"), (PartPolarity.Bipolar, "bipolar"), (PartPolarity.None, "none"));

    /// <summary>Safety classes of suppression capacitors, IEC 60384-14.</summary>
    public static WordList<SafetyClass> SafetyClasses => Electronics.Capacitors.SafetyClasses.Words;

    /// <summary>Speeds of fuses, IEC 60127.</summary>
    public static WordList<FuseSpeed> FuseSpeeds => FuseLetters.Speeds;

    /// <summary>Breaking capacities of fuses, IEC 60127.</summary>
    public static WordList<FuseBreaking> FuseBreakings => FuseLetters.Breakings;

    /// <summary>Standards that fuses are rated by.</summary>
    public static WordList<FuseSystem> FuseStandards => FuseLetters.Systems;

    /// <summary>
    /// Sizes of fuses: the cartridges of IEC 60127-2, older ones of the trade, and those that are soldered in (IEC 60127-3 and -4).
    /// </summary>
    public static WordList<FuseSize> FuseSizes => FuseLetters.Sizes;

    /// <summary>Bodies and lead styles.</summary>
    public static WordList<PartForm> Forms { get; } =
        new(
            (PartForm.Axial, "axial"),
            (PartForm.Radial, "radial"),
            (PartForm.SnapIn, "snap-in"),
            (PartForm.Can, "can"),
            (PartForm.Screw, "screw"),
            (PartForm.Chip, "chip"),
            (PartForm.Disc, "disc"),
            (PartForm.Bead, "bead"),
            (PartForm.Other, "other")
        );

    /// <summary>What can hurt.</summary>
    public static WordList<HazardKind> Hazards { get; } =
        new(
            (HazardKind.Mains, "mains"),
            (HazardKind.ChargedCapacitor, "charged capacitor"),
            (HazardKind.PictureTube, "picture tube"),
            (HazardKind.LeakingCell, "leaking cell"),
            (HazardKind.LithiumCell, "lithium cell"),
            (HazardKind.OilFilledPart, "oil-filled part"),
            (HazardKind.Asbestos, "asbestos"),
            (HazardKind.SeleniumRectifier, "selenium rectifier"),
            (HazardKind.Beryllia, "beryllia"),
            (HazardKind.Mercury, "mercury"),
            (HazardKind.Radium, "radium"),
            (HazardKind.HotParts, "hot parts"),
            (HazardKind.CrazedSuppressor, "crazed suppressor"),
            (HazardKind.LeadAndFlux, "lead and flux"),
            (HazardKind.SwitchingSupply, "switching supply"),
            (HazardKind.CellPack, "cell pack"),
            (HazardKind.LeakedElectrolyte, "leaked electrolyte")
        );

    /// <summary>What is measured at a test point.</summary>
    public static WordList<PointMeasure> PointMeasures { get; } =
        new(
            (PointMeasure.Voltage, "voltage"),
            (PointMeasure.Current, "current"),
            (PointMeasure.Frequency, "frequency"),
            (PointMeasure.Temperature, "temperature"),
            (PointMeasure.Hours, "hours"),
            (PointMeasure.Result, "result")
        );

    /// <summary>What an instrument measures.</summary>
    public static WordList<Measured> InstrumentMeasures { get; } =
        new(
            (Measured.Capacitance, "capacitance"),
            (Measured.Esr, "esr"),
            (Measured.LossFactor, "loss_factor"),
            (Measured.Leakage, "leakage"),
            (Measured.Insulation, "insulation"),
            (Measured.VoltageLoss, "voltage_loss"),
            (Measured.Resistance, "resistance"),
            (Measured.Inductance, "inductance"),
            (Measured.Voltage, "voltage"),
            (Measured.Ripple, "ripple"),
            (Measured.Current, "current"),
            (Measured.Frequency, "frequency"),
            (Measured.Temperature, "temperature")
        );

    /// <summary>Whether a meter is asked or listened to.</summary>
    public static WordList<MeterTalk> MeterTalks { get; } = new((MeterTalk.Lines, "lines"), (MeterTalk.Scpi, "scpi"));

    /// <summary>What parts the fields of a meter's line.</summary>
    public static WordList<MeterSeparator> MeterSeparators { get; } =
        new((MeterSeparator.Comma, "commas"), (MeterSeparator.Semicolon, "semicolons"), (MeterSeparator.Spaces, "spaces"));

    /// <summary>What a field of a meter's line holds.</summary>
    public static WordList<MeterHolds> MeterFields { get; } =
        new(
            (new(MeterFieldRole.Measured, Measured.Capacitance), "capacitance"),
            (new(MeterFieldRole.Measured, Measured.Esr), "esr"),
            (new(MeterFieldRole.Measured, Measured.LossFactor), "loss_factor"),
            (new(MeterFieldRole.Measured, Measured.Leakage), "leakage"),
            (new(MeterFieldRole.Measured, Measured.Insulation), "insulation"),
            (new(MeterFieldRole.Measured, Measured.Resistance), "resistance"),
            (new(MeterFieldRole.Measured, Measured.Inductance), "inductance"),
            (new(MeterFieldRole.Measured, Measured.Voltage), "voltage"),
            (new(MeterFieldRole.Measured, Measured.Ripple), "ripple"),
            (new(MeterFieldRole.Measured, Measured.Current), "current"),
            (new(MeterFieldRole.Measured, Measured.ForwardVoltage), "forward_voltage"),
            (new(MeterFieldRole.Measured, Measured.Gain), "gain"),
            (new(MeterFieldRole.Measured, Measured.Frequency), "frequency"),
            (new(MeterFieldRole.Measured, Measured.Temperature), "temperature"),
            (new(MeterFieldRole.Reading, null), "reading"),
            (new(MeterFieldRole.Quantity, null), "quantity"),
            (new(MeterFieldRole.Unit, null), "unit"),
            (new(MeterFieldRole.Range, null), "range"),
            (new(MeterFieldRole.Status, null), "status"),
            (new(MeterFieldRole.Nothing, null), "nothing")
        );

    /// <summary>How much a finding matters.</summary>
    public static WordList<ObservedSeverity> Severities { get; } =
        new(
            (ObservedSeverity.Note, "note"),
            (ObservedSeverity.Minor, "minor"),
            (ObservedSeverity.Major, "major"),
            (ObservedSeverity.Safety, "safety")
        );

    /// <summary>When in the life of a part a reading was taken.</summary>
    public static WordList<ReadingState> ReadingStates { get; } =
        new((ReadingState.AsFound, "as found"), (ReadingState.New, "new"), (ReadingState.AsLeft, "as left"), (ReadingState.Again, "again"));

    /// <summary>Whether the part was in the circuit when it was measured.</summary>
    public static WordList<Circuit> Circuits { get; } = new((Circuit.In, "in"), (Circuit.Out, "out"));

    /// <summary>Results of a functional test.</summary>
    public static WordList<TestResult> Results { get; } = new((TestResult.Pass, "pass"), (TestResult.Fail, "fail"));

    /// <summary>Verdicts that may be written beside a reading.</summary>
    public static WordList<WrittenVerdict> Verdicts { get; } =
        new((WrittenVerdict.In, "in"), (WrittenVerdict.Out, "out"), (WrittenVerdict.Undecided, "undecided"));

    /// <summary>What was done.</summary>
    public static WordList<WorkKind> Works { get; } =
        new(
            (WorkKind.Replaced, "replaced"),
            (WorkKind.Removed, "removed"),
            (WorkKind.Fitted, "fitted"),
            (WorkKind.PutBack, "put back"),
            (WorkKind.Reformed, "re-formed"),
            (WorkKind.Cleaned, "cleaned"),
            (WorkKind.Washed, "washed"),
            (WorkKind.Resoldered, "re-soldered"),
            (WorkKind.Repaired, "repaired"),
            (WorkKind.Adjusted, "adjusted"),
            (WorkKind.Modified, "modified"),
            (WorkKind.MadeSafe, "made safe"),
            (WorkKind.LeftAlone, "left alone")
        );

    /// <summary>How the right way round was established. The print alone does not establish it.</summary>
    public static WordList<PolarityEvidence> PolarityWays { get; } =
        new(
            (PolarityEvidence.Schematic, "schematic"),
            (PolarityEvidence.ContinuityToGroundPlane, "continuity to ground plane"),
            (PolarityEvidence.MeasuredInCircuit, "measured in circuit"),
            (PolarityEvidence.PhotographBeforeRemoval, "photograph before removal"),
            (PolarityEvidence.Print, "print"),
            (PolarityEvidence.OtherUnit, "other unit")
        );

    /// <summary>What a person may decide.</summary>
    public static WordList<DecisionKind> Decisions { get; } =
        new(
            (DecisionKind.Keep, "keep"),
            (DecisionKind.Watch, "watch"),
            (DecisionKind.Replace, "replace"),
            (DecisionKind.FormAgain, "form again"),
            (DecisionKind.MeasureOutOfCircuit, "measure out of circuit"),
            (DecisionKind.LeaveAlone, "leave alone")
        );

    /// <summary>Yes or no.</summary>
    public static WordList<bool> YesNo { get; } = new((true, "yes"), (false, "no"));

    /// <summary>How a reading near its limit is judged.</summary>
    public static WordList<DecisionRule> DecisionRules { get; } =
        new(
            (DecisionRule.Guarded, "guarded"),
            (DecisionRule.Simple, "simple"),
            (DecisionRule.GuardedFivePercent, "guarded to five per cent"),
            (DecisionRule.ThreeSigma, "three sigma"),
            (DecisionRule.SixSigma, "six sigma"),
            (DecisionRule.Uncritical, "uncritical")
        );

    /// <summary>What a part is made of: the junction of a semiconductor, the dielectric of a ceramic, the chemistry of a cell.</summary>
    public static WordList<PartMaterial> Materials => PartMaterial.All;

    /// <summary>What a supply rail is or feeds.</summary>
    public static WordList<Rail> Rails => Rail.All;
}
