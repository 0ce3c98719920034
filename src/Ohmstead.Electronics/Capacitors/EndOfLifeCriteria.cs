namespace Ohmstead.Electronics.Capacitors;

/// <summary>End-of-life criteria met in data sheets of wet aluminium electrolytics, and the default where no sheet is known.</summary>
public static class EndOfLifeCriteria
{
    private static readonly Source Axial = Source.Published(
        "Vishay 28327 data sheet",
        "IEC 384-4 cl. 4.13 endurance; CECC 30301 cl. 1.8.1 useful life"
    );

    /// <summary>The default where nothing better is known: -20 to +50 %, twice the loss limit, leakage at its limit after
    /// re-forming.</summary>
    public static EndOfLife RestorersDefault { get; } =
        new("restorer's default", 0.20m, 0.50m, 2m, null, 1m, FactorBase.Limit, Source.Practice("within the published spread"));

    /// <summary>Endurance of a general-purpose radial at 105 degrees.</summary>
    public static EndOfLife GeneralRadialEndurance { get; } =
        new(
            "endurance, general radial 105 degrees",
            0.20m,
            0.20m,
            2m,
            null,
            1m,
            FactorBase.Limit,
            Source.Published("Lelon RGA data sheet", "load life")
        );

    /// <summary>Endurance of the smallest axial can.</summary>
    public static EndOfLife SmallAxialEndurance { get; } =
        new("endurance, axial 3.3 mm can", 0.20m, 0.20m, 2m, 3m, 1m, FactorBase.Limit, Axial);

    /// <summary>Endurance of axial cans of 4.5 to 10 mm, rated 6.3 V or less.</summary>
    public static EndOfLife AxialEnduranceTo6V3 { get; } =
        new("endurance, axial 4.5 to 10 mm can, to 6.3 V", 0.30m, 0.15m, 1.3m, 2m, 1m, FactorBase.Limit, Axial);

    /// <summary>Endurance of axial cans of 4.5 to 10 mm, rated above 6.3 V.</summary>
    public static EndOfLife AxialEnduranceAbove6V3 { get; } =
        new("endurance, axial 4.5 to 10 mm can, above 6.3 V", 0.15m, 0.15m, 1.3m, 2m, 1m, FactorBase.Limit, Axial);

    /// <summary>Useful life of a small axial can.</summary>
    public static EndOfLife SmallAxialUsefulLife { get; } =
        new("useful life, small axial can", 0.50m, 0.50m, 3m, 3m, 1m, FactorBase.Limit, Axial);

    /// <summary>Useful life of larger axial cans above 6.3 V.</summary>
    public static EndOfLife AxialUsefulLife { get; } =
        new("useful life, larger axial can above 6.3 V", 0.45m, 0.45m, 3m, 3m, 1m, FactorBase.Limit, Axial);

    /// <summary>Useful life of a low-impedance radial; the sheet gives the change without a sign.</summary>
    public static EndOfLife LowImpedanceUsefulLife { get; } =
        new(
            "useful life, low-impedance radial",
            0.40m,
            0.40m,
            3m,
            null,
            1m,
            FactorBase.Limit,
            Source.Published("TDK B41856 data sheet", "useful life")
        );

    /// <summary>Useful life of a 400 V snap-in can.</summary>
    public static EndOfLife SnapInUsefulLife { get; } =
        new(
            "useful life, 400 V snap-in",
            0.30m,
            0.30m,
            3m,
            null,
            1m,
            FactorBase.Limit,
            Source.Published("TDK B43511 data sheet", "useful life")
        );

    /// <summary>Voltage endurance of a 400 V snap-in can.</summary>
    public static EndOfLife SnapInEndurance { get; } =
        new(
            "voltage endurance, 400 V snap-in",
            0.10m,
            0.10m,
            1.3m,
            null,
            1m,
            FactorBase.Limit,
            Source.Published("TDK B43511 data sheet", "voltage endurance")
        );

    /// <summary>Useful life of another snap-in series; the sheet gives the change without a sign.</summary>
    public static EndOfLife SnapInStrictUsefulLife { get; } =
        new(
            "useful life, strict snap-in",
            0.20m,
            0.20m,
            2m,
            null,
            1m,
            FactorBase.Limit,
            Source.Published("TDK B43641 data sheet", "useful life")
        );

    /// <summary>A maker's end of life of large cans, against the part's own first values.</summary>
    public static EndOfLife LargeCan { get; } =
        new(
            "end of life, large can",
            0.50m,
            0.50m,
            3m,
            3m,
            1m,
            FactorBase.Initial,
            Source.Published("Kendeil, Useful Life (kendeil.com)", null)
        );

    /// <summary>All of them, the default first.</summary>
    public static IReadOnlyList<EndOfLife> All { get; } =
    [
        RestorersDefault,
        GeneralRadialEndurance,
        SmallAxialEndurance,
        AxialEnduranceTo6V3,
        AxialEnduranceAbove6V3,
        SmallAxialUsefulLife,
        AxialUsefulLife,
        LowImpedanceUsefulLife,
        SnapInUsefulLife,
        SnapInEndurance,
        SnapInStrictUsefulLife,
        LargeCan,
    ];
}
