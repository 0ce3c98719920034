namespace Ohmstead.Electronics.Hazards;

/// <summary>
/// A limit as a standard puts it. Not a permission: limits differ in kind (voltage, current, charge, energy, time), and each belongs to
/// its standard, edition and kind of equipment. See <see cref="SafetyNotice.Defer"/>.
/// </summary>
/// <param name="Kind">What is limited.</param>
/// <param name="Value">The limit in the unit.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Condition">When it applies.</param>
/// <param name="Source">Standard, edition and clause.</param>
public sealed record LimitInStandard(LimitedQuantity Kind, decimal Value, string Unit, string Condition, Source Source)
{
    // Table 4 of IEC 62368-1, IEC 60950-1 on hazardous energy and 6.3.1 of IEC 61010-1 could not be read, so none of their figures stands
    // here:
    // what hurts is not told from memory.
    private static readonly Source Perception = Source.Published("IEC 61140, as quoted in GOST IEC 62368-1-2014", "annex W");
    private static readonly Source AudioVideoDischarge = Source.Published("IEC 62368-1:2018, as filled in on test reports", "5.5.2.2");
    private static readonly Source OldAudio = Source.Published(
        "IEC 60065, as quoted in the owner's manual of the Toshiba 32W1333",
        "hazardous live"
    );
    private static readonly Source Household = Source.Published("IEC 60335-1, read in two quotations of the clause", "8.1.4");
    private static readonly Source LaboratoryTime = Source.Published(
        "IEC 61010-1, as told in In Compliance Magazine, The Capacitive Discharge Test",
        "plug and terminals"
    );
    private static readonly Source Medical = Source.Published("GOST R 50267.0-92 (IEC 601-1:1988)", "15 b");
    private static readonly Source NationalLaboratory = Source.Published(
        "Lawrence Berkeley National Laboratory, electrical safety manual",
        "tables 2.2.13, 2.3.3 and 2.3.5"
    );
    private static readonly Source Reflex = Source.Published(
        "capacitor safety sheet of a laboratory of the U.S. Department of Energy, as quoted in a lecture",
        "reflex hazard"
    );

    /// <summary>The voltage above which a rule of the bench carries its caution: the strictest limit for dry hands that is known
    /// here.</summary>
    public const decimal TouchVolts = 42.4m;

    /// <summary>The voltage that the limit holds above, in volt; 0 where it holds from the first.</summary>
    public decimal AboveVolts { get; init; }

    /// <summary>The highest voltage that the limit holds for, in volt.</summary>
    public decimal ToVolts { get; init; } = decimal.MaxValue;

    /// <summary>The limits known here, with the words of their standards.</summary>
    public static IReadOnlyList<LimitInStandard> All { get; } =
    [
        new(LimitedQuantity.Current, 0.5m, "mA a.c.", "a hand feels it", Perception),
        new(LimitedQuantity.Current, 2m, "mA d.c.", "a hand feels it", Perception),
        new(LimitedQuantity.Current, 3.5m, "mA a.c.", "pain", Perception),
        new(LimitedQuantity.Current, 10m, "mA d.c.", "pain", Perception),
        new(
            LimitedQuantity.Time,
            2m,
            "s",
            "after the plug is pulled, to a voltage that goes with the capacitance; it says nothing of the inside",
            AudioVideoDischarge
        ),
        new(LimitedQuantity.Voltage, 35m, "V peak a.c.", "hazardous live above", OldAudio),
        new(LimitedQuantity.Voltage, 60m, "V d.c.", "hazardous live above", OldAudio),
        new(LimitedQuantity.Current, 0.7m, "mA peak a.c.", "touch current", OldAudio),
        new(LimitedQuantity.Current, 2.0m, "mA d.c.", "touch current", OldAudio),
        new(LimitedQuantity.Voltage, TouchVolts, "V peak a.c.", "live above, household appliances", Household),
        new(LimitedQuantity.Voltage, TouchVolts, "V d.c.", "live above, household appliances", Household),
        new(LimitedQuantity.Current, 2m, "mA d.c.", "through a protective impedance", Household),
        new(LimitedQuantity.Current, 0.7m, "mA peak a.c.", "through a protective impedance", Household),
        new(LimitedQuantity.Capacitance, 0.1m, "µF", "above 42.4 V to 450 V peak", Household) { AboveVolts = TouchVolts, ToVolts = 450m },
        new(LimitedQuantity.Charge, 45m, "µC", "above 450 V to 15 kV peak", Household) { AboveVolts = 450m, ToVolts = 15_000m },
        new(LimitedQuantity.Energy, 0.350m, "J", "above 15 kV peak", Household) { AboveVolts = 15_000m },
        new(
            LimitedQuantity.Time,
            5m,
            "s",
            "pins of the plug after it is pulled, to under 60 V; it says nothing of the inside",
            LaboratoryTime
        ),
        new(
            LimitedQuantity.Time,
            10m,
            "s",
            "terminals for external conductors, to under 60 V; it says nothing of the inside",
            LaboratoryTime
        ),
        new(
            LimitedQuantity.Time,
            1m,
            "s",
            "pins of the plug of medical equipment after it is pulled, to at most 60 V; it says nothing of the inside",
            Medical
        ),
        new(
            LimitedQuantity.Energy,
            10m,
            "J",
            "capacitors at 100 V or more: a hazard of its own, which is no word on what is less",
            NationalLaboratory
        )
        {
            AboveVolts = 99.9999m,
        },
        new(LimitedQuantity.Energy, 100m, "J", "capacitors under 100 V: a short of them burns", NationalLaboratory) { ToVolts = 99.9999m },
        new(LimitedQuantity.Energy, 0.25m, "J", "capacitors above 400 V: the start it gives can hurt", Reflex) { AboveVolts = 400m },
    ];

    /// <summary>Whether a charged capacitance is above this limit of a d.c. voltage, a capacitance, a charge or an energy. False for every
    /// other kind, and no permission.</summary>
    public bool IsPassedBy(decimal farads, decimal volts) =>
        volts > AboveVolts
        && volts <= ToVolts
        && Kind switch
        {
            LimitedQuantity.Voltage => Unit == "V d.c." && volts > Value,
            LimitedQuantity.Capacitance => farads * Micro > Value,
            LimitedQuantity.Charge => farads * volts * Micro > Value,
            LimitedQuantity.Energy => farads * volts * volts / 2m > Value,
            _ => false,
        };

    private const decimal Micro = 1_000_000m;
}

/// <summary>What a standard limits.</summary>
public enum LimitedQuantity
{
    /// <summary>A voltage.</summary>
    Voltage,

    /// <summary>A current.</summary>
    Current,

    /// <summary>A capacitance.</summary>
    Capacitance,

    /// <summary>A charge.</summary>
    Charge,

    /// <summary>An energy.</summary>
    Energy,

    /// <summary>An apparent power.</summary>
    Power,

    /// <summary>A time.</summary>
    Time,
}
