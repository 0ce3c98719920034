using Ohmstead.Electronics.Parts;

namespace Ohmstead.Electronics.Substitution;

/// <summary>
/// May this fuse stand for that one: same current, same speed, same size, and not less of breaking capacity and voltage. One too large
/// protects nothing, one too quick blows at switch-on, and one that cannot interrupt what flows bursts.
/// </summary>
public static class FuseSubstitution
{
    private const string Safety = "safety";
    private const string Speed = "speed";
    private const string Breaking = "breaking capacity";
    private const string Voltage = "voltage";
    private const string Size = "size";
    private const string Standard = "standard";

    private static readonly Source Systems = Source.Published(
        "UL 248-14, as quoted in Littelfuse, Fuseology, and in the data sheet Eaton GMA; IEC 60127-2, sheet 3, as quoted in the data "
            + "sheet Schurter FST",
        "1.35 x and 1.5 x the rated current"
    );

    private static readonly Source Later = Source.Published(
        "IEC 60127-2, sheets 3 and 5, as quoted in makers' data sheets",
        "pre-arcing times"
    );

    /// <summary>All reasons for and against.</summary>
    public static IReadOnlyList<FitReason> Judge(Fuse place, Fuse offer) =>
        [
            Current(place, offer),
            .. RatedBy(place, offer),
            SpeedOf(place.Speed, offer.Speed),
            .. NoTimes(place, offer),
            .. Breaks(place, offer),
            Volts(place.RatedVolts, offer.RatedVolts),
            SizeOf(place.Size, offer.Size),
        ];

    private static FitReason Current(Fuse place, Fuse offer) =>
        (place.RatedAmperes, offer.RatedAmperes) switch
        {
            (null, _) => FitReason.Against(Safety, "the current that the place asks for is not known: establish it first"),
            ({ } was, null) => FitReason.Against(Safety, () => $"its current is not written, {Figures.Text(was)} A are asked for"),
            ({ } was, { } now) when was == now => FitReason.For(Safety, () => $"{Figures.Text(now)} A: the same"),
            ({ } was, { } now) => FitReason.Against(Safety, () => $"{Figures.Text(now)} A for {Figures.Text(was)} A, expected the same"),
        };

    // Where neither says it, nobody asks; a letter of breaking capacity is of one of them alone.
    private static IEnumerable<FitReason> RatedBy(Fuse place, Fuse offer) =>
        (place.RatedBy, offer.RatedBy) switch
        {
            _ when place.System is null && offer.System is null => [],
            (null, { } now) =>
            [
                FitReason.Missing(Standard, () =>
                    $"rated by {FuseLetters.Systems.WordFor(now)}, and by what the place asks is not written"
                ),
            ],
            ({ } was, null) =>
            [
                FitReason.Unwritten(Standard, () => $"by what it is rated is not written, {FuseLetters.Systems.WordFor(was)} is asked for"),
            ],
            ({ } was, { } now) when was == now => [FitReason.For(Standard, () => $"rated by {FuseLetters.Systems.WordFor(now)} as well")],
            ({ } was, { } now) =>
            [
                FitReason.Doubt(
                    Standard,
                    () =>
                        $"rated by {FuseLetters.Systems.WordFor(now)} for {FuseLetters.Systems.WordFor(was)}: "
                        + "the one opens at 1.35 x its rating "
                        + "within an hour, the other carries 1.5 x "
                        + "for one, so the same figure is another fuse",
                    Systems
                ),
            ],
            _ => [],
        };

    // One letter is one speed within a sheet of the standard, and these have none here.
    private static IEnumerable<FitReason> NoTimes(Fuse place, Fuse offer) =>
        place.Speed is FuseSpeed.FF or FuseSpeed.M or FuseSpeed.TT && place.Speed == offer.Speed
            ?
            [
                FitReason.Doubt(Speed, () =>
                    $"{FuseFigures.WhyNone(offer.System, offer.Speed, null) ?? $"times of {offer.Speed} differ by maker"}: compare the "
                    + "data sheets of both"
                ),
            ]
            : [];

    private static FitReason SpeedOf(FuseSpeed? place, FuseSpeed? offer) =>
        (place, offer) switch
        {
            (null, null) => FitReason.Unwritten(Speed, "neither speed is written"),
            (null, _) => FitReason.Missing(Speed, "whether the place wants a slow or a quick one is not written"),
            ({ } was, null) => FitReason.Unwritten(Speed, () => $"its speed is not written, {was} is asked for"),
            ({ } was, { } now) when was == now => FitReason.For(Speed, () => $"{now}: the same speed"),
            ({ } was, { } now) => FitReason.Against(Speed, () => $"{now}, {FuseLetters.Words(now)}, for {was}, {FuseLetters.Words(was)}"),
        };

    private static IEnumerable<FitReason> Breaks(Fuse place, Fuse offer)
    {
        yield return (place.Breaking, offer.Breaking) switch
        {
            (null, FuseBreaking.H) => FitReason.For(Breaking, "H: none breaks more"),
            (null, null) => FitReason.Unwritten(Breaking, "what it can interrupt is not written"),
            (null, _) => FitReason.Missing(Breaking, "what the place asks a fuse to interrupt is not written"),
            ({ } was, null) => FitReason.Unwritten(Breaking, () => $"what it can interrupt is not written, {was} is asked for"),
            ({ } was, { } now) when now < was => FitReason.Against(Breaking, () =>
                $"{now}, {FuseLetters.Words(now)}, where {was} stood: it may burst"
            ),
            ({ } was, { } now) => FitReason.For(Breaking, () =>
                now == was ? $"{now}: the same breaking capacity" : $"{now} for {was}: it interrupts more"
            ),
        };

        if (
            place.Speed is not null
            && place.Speed == offer.Speed
            && (place.Breaking == FuseBreaking.E) != (offer.Breaking == FuseBreaking.E)
            && place.Breaking < offer.Breaking
        )
        {
            yield return FitReason.Doubt(Speed, () =>
                $"{FuseFigures.WhyNone(null, null, FuseBreaking.E)}: whether {offer.Breaking} opens as soon as {place.Breaking} is not "
                + "known, compare the data sheets of both"
            );
        }

        // The two sheets of slow fuses part at small overloads.
        if (place is { Speed: FuseSpeed.T, Breaking: FuseBreaking.L } && offer is { Speed: FuseSpeed.T, Breaking: FuseBreaking.H })
        {
            yield return FitReason.Doubt(
                Speed,
                "a slow one of high breaking capacity may carry 2.1 x its rating for 30 min, where one of low opens within 2 min",
                Later
            );
        }
    }

    private static FitReason Volts(decimal? place, decimal? offer) =>
        (place, offer) switch
        {
            (null, null) => FitReason.Unwritten(Voltage, "neither rated voltage is known"),
            (null, _) => FitReason.Missing(Voltage, "the voltage that the place asks for is not written"),
            ({ } was, null) => FitReason.Unwritten(Voltage, () =>
                $"its voltage rating is not written, {Figures.Text(was)} V are asked for"
            ),
            ({ } was, { } now) when now < was => FitReason.Against(Voltage, () => $"{Figures.Text(now)} V is under {Figures.Text(was)} V"),
            ({ } was, { } now) => FitReason.For(Voltage, () => $"{Figures.Text(now)} V is not under {Figures.Text(was)} V"),
        };

    // Two sizes that are both some other one are not one size.
    private static FitReason SizeOf(FuseSize? place, FuseSize? offer) =>
        (Known(place), Known(offer)) switch
        {
            (null, _) => FitReason.Missing(Size, "the size of the original is not written"),
            ({ } was, null) => FitReason.Missing(Size, () => $"its size is not written, {Word(was)} is asked for"),
            ({ } was, { } now) when was == now => FitReason.For(Size, () => $"{Word(now)}: the same size"),
            ({ } was, { } now) => FitReason.Against(Size, () => $"{Word(now)} where {Word(was)} goes in"),
        };

    private static FuseSize? Known(FuseSize? size) => size is FuseSize.Other ? null : size;

    private static string Word(FuseSize size) => FuseLetters.Sizes.WordFor(size);
}
