namespace Ohmstead.Electronics.Parts;

/// <summary>
/// What a reading taken in circuit can prove. Other paths lie in parallel: they lower resistance and raise capacitance; they may lower or
/// raise ESR, loss and inductance, so that these prove something only where <see cref="BesideACapacitor"/> says how far they can go.
/// </summary>
/// <remarks>
/// Holds for a passive network probed below 0.3 V (ESR below 0.1 V) with no charge left. It fails with charged capacitors or leaking
/// cells in the loop, across junctions (read both ways), and with a test voltage above 0.5 V.
/// </remarks>
/// <param name="Quantity">What is measured.</param>
/// <param name="Bias">How other paths falsify it.</param>
/// <param name="Proves">The one-sided conclusion that is allowed.</param>
public sealed record InCircuitRule(InCircuitQuantity Quantity, InCircuitBias Bias, string Proves)
{
    /// <summary>Where the rule comes from.</summary>
    public static Source Source { get; } = Source.Practice("impedances in parallel");

    /// <summary>The rules, one for each quantity.</summary>
    public static IReadOnlyList<InCircuitRule> All { get; } =
    [
        new(InCircuitQuantity.Resistance, InCircuitBias.ReadsLow, "too high proves it bad; inside or too low proves nothing"),
        new(InCircuitQuantity.Capacitance, InCircuitBias.ReadsHigh, "too low makes it suspect; inside or too high proves nothing"),
        new(
            InCircuitQuantity.Esr,
            InCircuitBias.EitherWay,
            "too high proves it bad only beyond what a resistance beside it can make of it; low proves nothing, and a shorted part "
                + "reads best of all"
        ),
        new(
            InCircuitQuantity.LossFactor,
            InCircuitBias.EitherWay,
            "a resistance beside it raises the loss, a capacitor lowers it: it proves nothing"
        ),
        new(
            InCircuitQuantity.VoltageLoss,
            InCircuitBias.ReadsHigh,
            "inside proves it good, for paths beside it only take more; too high proves nothing"
        ),
        new(
            InCircuitQuantity.Inductance,
            InCircuitBias.EitherWay,
            "a capacitance beside it raises it, an inductance or a resistance lowers it: only open proves it bad"
        ),
        new(InCircuitQuantity.DiodeDrop, InCircuitBias.ReadsLow, "open both ways proves it open; a low drop proves nothing"),
        new(InCircuitQuantity.RailVoltage, InCircuitBias.True, "both sides are true"),
        new(InCircuitQuantity.Ripple, InCircuitBias.True, "both sides are true"),
        new(InCircuitQuantity.Leakage, InCircuitBias.Unreadable, "leakage cannot be read in circuit"),
    ];

    /// <summary>The rule of a quantity.</summary>
    public static InCircuitRule For(InCircuitQuantity quantity) => All.First(r => r.Quantity == quantity);

    /// <summary>What a reading in circuit proves against its limits, with its arithmetic; a null limit is open.</summary>
    public Worked<InCircuitFinding> Judge(decimal reading, decimal? lowerLimit, decimal? upperLimit)
    {
        (InCircuitFinding finding, string why) = Look(reading, lowerLimit, upperLimit);
        return new Worked<InCircuitFinding>(finding, $"{Figures.Text(reading)} reads {why}", Source);
    }

    /// <summary>What a reading in circuit proves against its limits, and why in words that go on from "it reads"; a null limit is
    /// open.</summary>
    public (InCircuitFinding Finding, string Why) Look(decimal reading, decimal? lowerLimit, decimal? upperLimit)
    {
        bool low = reading < lowerLimit;
        bool high = reading > upperLimit;
        return Bias switch
        {
            InCircuitBias.ReadsLow when high => (InCircuitFinding.ProvedBad, "above its upper limit: no parallel path can raise it"),
            InCircuitBias.ReadsLow when low => (
                InCircuitFinding.NoEvidence,
                "below its lower limit: a parallel path does the same, lift one leg"
            ),
            InCircuitBias.ReadsHigh when low => (
                InCircuitFinding.Suspect,
                "below its lower limit: parallel capacitance would only raise it"
            ),
            InCircuitBias.ReadsHigh when high => (
                InCircuitFinding.NoEvidence,
                "above its upper limit: a parallel part does the same, lift one leg"
            ),
            InCircuitBias.True when low || high => (InCircuitFinding.ProvedBad, low ? "below its lower limit" : "above its upper limit"),
            InCircuitBias.True => (InCircuitFinding.Proved, "inside its limits"),
            InCircuitBias.EitherWay when high || low => (
                InCircuitFinding.NoEvidence,
                (low ? "below its lower limit" : "above its upper limit") + ": what lies beside it may do the same, lift one leg"
            ),
            InCircuitBias.EitherWay => (InCircuitFinding.Consistent, "inside its limits: what lies beside it may hide a bad one"),
            InCircuitBias.Unreadable => (InCircuitFinding.NoEvidence, "the whole circuit: leakage cannot be read in circuit"),
            InCircuitBias.ReadsLow when upperLimit is null => (
                InCircuitFinding.Proved,
                "above its lower limit, and a parallel path would only lower it"
            ),
            InCircuitBias.ReadsHigh when lowerLimit is null && !high => (
                InCircuitFinding.Proved,
                "below its upper limit, and a parallel path would only raise it"
            ),
            InCircuitBias.ReadsLow => (InCircuitFinding.Consistent, "not above its upper limit: it may still be above it out of circuit"),
            _ => (InCircuitFinding.Consistent, "not below its lower limit: it may still be below it out of circuit"),
        };
    }
}

/// <summary>A quantity that is measured with the part in place.</summary>
public enum InCircuitQuantity
{
    /// <summary>Resistance.</summary>
    Resistance,

    /// <summary>Capacitance.</summary>
    Capacitance,

    /// <summary>Equivalent series resistance.</summary>
    Esr,

    /// <summary>Dissipation factor.</summary>
    LossFactor,

    /// <summary>Loss of voltage after a charging pulse.</summary>
    VoltageLoss,

    /// <summary>Inductance.</summary>
    Inductance,

    /// <summary>Forward drop of a junction.</summary>
    DiodeDrop,

    /// <summary>A supply rail.</summary>
    RailVoltage,

    /// <summary>Ripple on a rail.</summary>
    Ripple,

    /// <summary>Leakage current.</summary>
    Leakage,
}

/// <summary>How the rest of the circuit falsifies a reading.</summary>
public enum InCircuitBias
{
    /// <summary>Never above the true value.</summary>
    ReadsLow,

    /// <summary>Never below the true value, where the rest is capacitive.</summary>
    ReadsHigh,

    /// <summary>Either way, by what lies beside it.</summary>
    EitherWay,

    /// <summary>Not at all.</summary>
    True,

    /// <summary>No reading means anything.</summary>
    Unreadable,
}

/// <summary>What an in-circuit reading comes to.</summary>
public enum InCircuitFinding
{
    /// <summary>The part, or the rail, is outside its limits for certain.</summary>
    ProvedBad,

    /// <summary>Probably outside: parallel resistance or inductance could still deceive.</summary>
    Suspect,

    /// <summary>Agrees with a good part, and with some bad ones.</summary>
    Consistent,

    /// <summary>Says nothing: measure out of circuit.</summary>
    NoEvidence,

    /// <summary>Inside its limits for certain.</summary>
    Proved,
}
