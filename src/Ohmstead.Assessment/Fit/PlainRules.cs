using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>
/// Whether a part may stand for another where no rules for its kind exist: by value, by ratings that are not lower, by type. Common
/// practice. Parts that capacitors' own rules cannot judge, for want of a capacitance, are held to their ratings here.
/// </summary>
internal static class PlainRules
{
    internal static IEnumerable<FitReason> Reasons(IFitPart place, IFitPart offer)
    {
        var family = place.Kind.Value.Family;
        if (family != offer.Kind.Value.Family)
        {
            return [FitReason.Against(FitAspects.Kind, () => $"{offer.Kind.Text} for {place.Kind.Text}: another sort of part")];
        }

        IEnumerable<FitReason> own = family switch
        {
            PartFamily.Capacitor => Capacitor(place, offer),
            PartFamily.Resistor => ResistorRules.Reasons(place, offer),
            PartFamily.Inductor => Inductor(place, offer),
            PartFamily.Crystal => [KindAlike(place, offer), .. Equal(FitAspects.Value, place.Frequency, offer.Frequency)],
            PartFamily.Fuse => [KindAlike(place, offer), .. FuseRules.Reasons(place, offer)],
            _ => TypeRules.Reasons(place, offer),
        };
        return
        [
            .. own,
            .. AtLeast(FitAspects.Temperature, place.Temperature, offer.Temperature, IsSafety(place)),
            .. Mounting(place, offer),
        ];
    }

    /// <summary>
    /// Whether people rely on what stands in a place not to be shocked or burned: there what is not written speaks against a part.
    /// </summary>
    internal static bool IsSafety(IFitPart place) => IsOnMains(place) || place.Kind.Value.Family == PartFamily.Fuse;

    /// <summary>Whether a place is on the mains, whatever its role says.</summary>
    internal static bool IsOnMains(IFitPart place) =>
        place.SafetyClass is not null
        || place.Kind.Value == PartKinds.SuppressionCapacitor
        || place.Role is { Value: PartRole.MainsSuppression };

    internal static IEnumerable<FitReason> WithinTolerance(IFitPart place, IFitPart offer, Func<IFitPart, Written<Quantity>?> value)
    {
        if (value(place) is not { } was)
        {
            yield return FitReason.Missing(FitAspects.Value, "the value of the place is not written");
            yield break;
        }

        if (value(offer) is not { } now)
        {
            yield return IsSafety(place)
                ? FitReason.Against(FitAspects.Value, () => $"its value is not written, {Text(was)} is asked for")
                : FitReason.Unwritten(FitAspects.Value, () => $"its value is not written, {Text(was)} is asked for");
            yield break;
        }

        if (Circuit(place, now) is { } circuit)
        {
            yield return circuit;
            yield break;
        }

        yield return now.Value == was.Value ? FitReason.For(FitAspects.Value, () => $"{Text(now)}: the same value")
        : place.Tolerance is { } tolerance && tolerance.Value.Apply(was.Value).Contains(now.Value)
            ? FitReason.For(FitAspects.Value, () => $"{Text(now)} for {Text(was)}: inside its tolerance of {tolerance.Value}")
        : FitReason.Against(FitAspects.Value, () =>
            $"{Text(now)} for {Text(was)}" + (place.Tolerance is { } wide ? $", expected inside {wide.Value}" : ", expected the same value")
        );
    }

    /// <summary>A rating that must not be lower than what the place asks for; nothing is said where it asks for none.</summary>
    internal static IEnumerable<FitReason> AtLeast(string aspect, Written<Quantity>? was, Written<Quantity>? now, bool isSafety) =>
        Rated(aspect, was, now, isAsked: false, isSameType: false, isSafety);

    /// <summary>A rating that must not be lower than what the place asks for.</summary>
    /// <param name="aspect">What it is.</param>
    /// <param name="was">What the place asks for.</param>
    /// <param name="now">What the part has.</param>
    /// <param name="isAsked">True where a part without it is not known whatever the place says of itself.</param>
    /// <param name="isSameType">True where the type says that what is not written is the same.</param>
    /// <param name="isSafety">True where what is not written speaks against the part.</param>
    internal static IEnumerable<FitReason> Rated(
        string aspect,
        Written<Quantity>? was,
        Written<Quantity>? now,
        bool isAsked,
        bool isSameType,
        bool isSafety
    )
    {
        if (was is null)
        {
            return now is null && isAsked ? [FitReason.Unwritten(aspect, () => $"its {aspect} rating is not written")] : [];
        }

        return now is null
            ? isSameType
                ? []
                : [Unknown(aspect, was, isSafety)]
            : now.Value.Value < was.Value.Value
                ? [FitReason.Against(aspect, () => $"{Text(now)} is under {Text(was)}")]
                : [FitReason.For(aspect, () => $"{Text(now)} is not under {Text(was)}")];
    }

    private static FitReason Unknown(string aspect, Written<Quantity> was, bool isSafety)
    {
        var words = new LazyText(() => $"its {aspect} rating is not written, {Text(was)} is asked for");
        return isSafety ? FitReason.Against(aspect, words) : FitReason.Unwritten(aspect, words);
    }

    private static IEnumerable<FitReason> Equal(string aspect, Written<Quantity>? was, Written<Quantity>? now)
    {
        yield return (was, now) switch
        {
            (null, _) => FitReason.Missing(aspect, "what the place asks for is not written"),
            (_, null) => FitReason.Unwritten(aspect, () => $"what it is rated for is not written, {Text(was)} is asked for"),
            _ when was.Value == now.Value => FitReason.For(aspect, () => $"{Text(now)}: the same"),
            _ => FitReason.Against(aspect, () => $"{Text(now)} for {Text(was)}, expected the same"),
        };
    }

    private static FitReason? Circuit(IFitPart place, Written<Quantity> now)
    {
        var limits = new Interval(place.Low?.Value, place.High?.Value);
        return limits is { Lower: null, Upper: null } || (limits.Lower ?? limits.Upper)!.Value.Dimension != now.Value.Dimension ? null
            : limits.Contains(now.Value)
                ? FitReason.For(FitAspects.Value, () => $"{Text(now)} is inside what the circuit stands ({limits})")
            : FitReason.Against(FitAspects.Value, () => $"{Text(now)} where the circuit stands {limits}");
    }

    // Only where the rules for capacitors cannot judge, for want of a capacitance or a kind that they know.
    private static IEnumerable<FitReason> Capacitor(IFitPart place, IFitPart offer)
    {
        IEnumerable<FitReason> voltage = IsOnMains(place)
            ? MainsSubstitution.Judge(
                CapacitorWords.Safety(place.SafetyClass),
                (place.RatedVoltage ?? place.WorkingVoltage)?.Value.Value,
                CapacitorWords.Safety(offer.SafetyClass),
                offer.RatedVoltage?.Value.Value
            )
            : Rated(FitAspects.Voltage, place.RatedVoltage, offer.RatedVoltage, isAsked: true, isSameType: false, isSafety: false);
        return [KindAlike(place, offer), .. WithinTolerance(place, offer, values => values.Capacitance), .. voltage];
    }

    // A transformer has seldom an inductance on it: its type tells what it is.
    private static IEnumerable<FitReason> Inductor(IFitPart place, IFitPart offer)
    {
        var (isSame, isSafety) = (TypeRules.IsSame(place, offer), IsSafety(place));
        IEnumerable<FitReason> value =
            isSame && (place.Inductance is null || offer.Inductance is null)
                ? [FitReason.For(FitAspects.Type, () => $"{offer.Type!.Value}: the same type")]
                : WithinTolerance(place, offer, values => values.Inductance);
        return
        [
            KindAlike(place, offer),
            .. value,
            .. Rated(FitAspects.Current, place.Current, offer.Current, isAsked: !isSame, isSame, isSafety),
            .. Rated(FitAspects.Voltage, place.RatedVoltage, offer.RatedVoltage, isAsked: false, isSame, isSafety),
        ];
    }

    private static FitReason KindAlike(IFitPart place, IFitPart offer) =>
        place.Kind.Value == offer.Kind.Value
            ? FitReason.For(FitAspects.Kind, () => $"{place.Kind.Text}: the same kind")
            : FitReason.Doubt(FitAspects.Kind, () => $"{offer.Kind.Text} for {place.Kind.Text}: compare the data of both");

    private static IEnumerable<FitReason> Mounting(IFitPart place, IFitPart offer)
    {
        if (place.Form is { Value: not PartForm.Other } was && offer.Form is { Value: not PartForm.Other } now)
        {
            yield return was.Value == now.Value ? FitReason.For(FitAspects.Form, "the same form")
            : was.Value == PartForm.Chip || now.Value == PartForm.Chip
                ? FitReason.Against(FitAspects.Form, "leads and surface mounting do not go together")
            : FitReason.Doubt(FitAspects.Form, () => $"{now.Text} in a place for {was.Text}: it needs a mounting of its own");
        }
    }

    private static string Text(Written<Quantity> quantity) => QuantityText.Format(quantity.Value);
}
