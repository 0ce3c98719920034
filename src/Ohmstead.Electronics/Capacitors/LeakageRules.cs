namespace Ohmstead.Electronics.Capacitors;

/// <summary>The leakage rules met in data sheets. They disagree by more than ten at high voltage: a part's own data sheet comes
/// first.</summary>
public static class LeakageRules
{
    private const decimal Any = 1000m;

    /// <summary>0.01 CV, not under 3 µA, after 2 minutes, up to 100 V.</summary>
    public static LeakageRule GeneralLowVoltage { get; } =
        new(
            "general purpose to 100 V",
            new LeakageForm.Floored(0.01m, 3m),
            2m,
            0m,
            100m,
            Source.Published("Lelon RGA data sheet; Vishay 038 RSU data sheet 28309", "leakage current")
        );

    /// <summary>0.03 CV + 15 µA to a CV of 1000, above it 0.02 CV + 25 µA, after 5 minutes, over 100 V.</summary>
    public static LeakageRule GeneralHighVoltage { get; } =
        new(
            "general purpose over 100 V",
            new LeakageForm.Stepped(1000m, new LeakageForm.Offset(0.03m, 15m), new LeakageForm.Offset(0.02m, 25m)),
            5m,
            101m,
            Any,
            Source.Published("Lelon RGA data sheet", "leakage current")
        );

    /// <summary>0.002 CV + 3 µA after 5 minutes.</summary>
    public static LeakageRule GeneralFiveMinutes { get; } =
        new(
            "general purpose, five minutes",
            new LeakageForm.Offset(0.002m, 3m),
            5m,
            0m,
            100m,
            Source.Published("Vishay 038 RSU data sheet 28309", "leakage current after 5 minutes")
        );

    /// <summary>0.006 CV + 4 µA after 5 minutes, for long-life axial and large cans.</summary>
    public static LeakageRule LongLife { get; } =
        new(
            "long-life grade",
            new LeakageForm.Offset(0.006m, 4m),
            5m,
            0m,
            Any,
            Source.FromMemory("Vishay and Philips data sheets of axial and large cans", "leakage current")
        );

    /// <summary>0.01 CV, not under 4 µA, after 3 minutes through 1 kohm, to 100 V.</summary>
    public static LeakageRule Radial85LowVoltage { get; } =
        new(
            "85 degree radial to 100 V",
            new LeakageForm.Floored(0.01m, 4m),
            3m,
            0m,
            100m,
            Source.Published("Keltron radial electrolytics data sheet", "leakage current")
        );

    /// <summary>0.02 CV + 10 µA after 3 minutes through 1 kohm, 160 to 500 V.</summary>
    public static LeakageRule Radial85HighVoltage { get; } =
        new(
            "85 degree radial, 160 to 500 V",
            new LeakageForm.Offset(0.02m, 10m),
            3m,
            160m,
            500m,
            Source.Published("Keltron radial electrolytics data sheet", "leakage current")
        );

    /// <summary>0.03 CV without a floor, read after 1 or 5 minutes, for older high-voltage parts.</summary>
    public static LeakageRule OlderHighVoltage { get; } =
        new("older high voltage", new LeakageForm.Offset(0.03m, 0m), 1m, 101m, Any, Source.FromMemory("JIS C 5141", "leakage current"));

    /// <summary>0.3 (CV)^0.7 + 4 µA after 5 minutes, for large long-life cans.</summary>
    public static LeakageRule LargeLongLifeCan { get; } =
        new(
            "large long-life can",
            new LeakageForm.Power(0.3m, 0.7, 4m),
            5m,
            0m,
            Any,
            Source.FromMemory("TDK/EPCOS aluminium electrolytic data book, the form of IEC 60384-4", "leakage current")
        );

    /// <summary>3 sqrt(CV) after 5 minutes at 25 degrees, for computer-grade cans.</summary>
    public static LeakageRule ComputerGradeCan { get; } =
        new(
            "computer-grade can",
            new LeakageForm.Power(3m, 0.5, 0m),
            5m,
            0m,
            Any,
            Source.FromMemory("Cornell Dubilier computer-grade data sheets", "leakage current")
        );

    /// <summary>0.05 CV, not under 10 µA, after 2 minutes, for bipolar chips.</summary>
    public static LeakageRule Bipolar { get; } =
        new("bipolar", new LeakageForm.Floored(0.05m, 10m), 2m, 0m, Any, Source.Practice("usual limit of bipolar chip electrolytics"));

    /// <summary>0.01 CV, not under 0.5 µA, after up to 5 minutes through 1 kohm, for solid tantalum; some sheets have a floor of 1
    /// µA.</summary>
    public static LeakageRule SolidTantalum { get; } =
        new(
            "solid tantalum",
            new LeakageForm.Floored(0.01m, 0.5m),
            5m,
            0m,
            125m,
            Source.FromMemory(
                "solid tantalum data sheets; the minutes as read in MIL-PRF-49137E, 4.8.4",
                "10 nA for each µF and V, and the floor"
            )
        );

    /// <summary>0.2 CV after 2 minutes, for polymer; polymer tantalum has 0.1 CV.</summary>
    public static LeakageRule Polymer { get; } =
        new(
            "polymer",
            new LeakageForm.Floored(0.2m, 3m),
            2m,
            0m,
            Any,
            Source.FromMemory("polymer electrolytic data sheets", "leakage current, 0.2 CV of aluminium and 0.1 CV of tantalum")
        );

    /// <summary>All of them.</summary>
    public static IReadOnlyList<LeakageRule> All { get; } =
    [
        GeneralLowVoltage,
        GeneralHighVoltage,
        GeneralFiveMinutes,
        LongLife,
        Radial85LowVoltage,
        Radial85HighVoltage,
        OlderHighVoltage,
        LargeLongLifeCan,
        ComputerGradeCan,
        Bipolar,
        SolidTantalum,
        Polymer,
    ];
}
