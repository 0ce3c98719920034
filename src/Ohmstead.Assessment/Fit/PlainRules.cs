using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;
using Reason = Ohmstead.Electronics.Substitution.Reason;

namespace Ohmstead.Assessment.Fit;

/// <summary>
/// Whether a part may stand for another where no rules for its kind exist: by value, by ratings that are not lower, by type. Common practice. Parts that
/// capacitors' own rules cannot judge, for want of a capacitance, are held to their ratings here.
/// </summary>
internal static class PlainRules
{
    internal static IEnumerable<Reason> Reasons(IFitPart place, IFitPart offer)
    {
        var family = place.Kind.Value.Family;
        if (family != offer.Kind.Value.Family)
        {
            return [Reason.Against(FitAspects.Kind, () => $"{offer.Kind.Text} for {place.Kind.Text}: another sort of part")];
        }

        IEnumerable<Reason> own = family switch
        {
            PartFamily.Capacitor => Capacitor(place, offer),
            PartFamily.Resistor => ResistorRules.Reasons(place, offer),
            PartFamily.Inductor => [KindAlike(place, offer), .. WithinTolerance(place, offer, values => values.Inductance), .. AtLeast(FitAspects.Current, place.Current, offer.Current)],
            PartFamily.Crystal => [KindAlike(place, offer), .. Equal(FitAspects.Value, place.Frequency, offer.Frequency)],
            PartFamily.Fuse => [KindAlike(place, offer), .. Fuse(place, offer)],
            _ => ByType(place, offer),
        };
        return [.. own, .. AtLeast(FitAspects.Voltage, place.RatedVoltage, offer.RatedVoltage), .. AtLeast(FitAspects.Temperature, place.Temperature, offer.Temperature), .. Mounting(place, offer)];
    }

    internal static IEnumerable<Reason> WithinTolerance(IFitPart place, IFitPart offer, Func<IFitPart, Written<Quantity>?> value)
    {
        if (value(place) is not { } was)
        {
            yield return Reason.Missing(FitAspects.Value, "the value of the place is not written");
            yield break;
        }

        if (value(offer) is not { } now)
        {
            yield return Reason.Missing(FitAspects.Value, () => $"its value is not written, {Text(was)} is asked for");
            yield break;
        }

        if (Circuit(place, now) is { } circuit)
        {
            yield return circuit;
            yield break;
        }

        yield return now.Value == was.Value ? Reason.For(FitAspects.Value, () => $"{Text(now)}: the same value")
            : place.Tolerance is { } tolerance && tolerance.Value.Apply(was.Value).Contains(now.Value) ? Reason.For(FitAspects.Value, () => $"{Text(now)} for {Text(was)}: inside its tolerance of {tolerance.Value}")
            : Reason.Against(FitAspects.Value, () => $"{Text(now)} for {Text(was)}" + (place.Tolerance is { } wide ? $", expected inside {wide.Value}" : ", expected the same value"));
    }

    internal static IEnumerable<Reason> AtLeast(string aspect, Written<Quantity>? was, Written<Quantity>? now)
    {
        if (was is null)
        {
            yield break;
        }

        yield return now is null ? Reason.Missing(aspect, () => $"its {aspect} rating is not written, {Text(was)} is asked for")
            : now.Value.Value < was.Value.Value ? Reason.Against(aspect, () => $"{Text(now)} is under {Text(was)}")
            : Reason.For(aspect, () => $"{Text(now)} is not under {Text(was)}");
    }

    private static IEnumerable<Reason> Equal(string aspect, Written<Quantity>? was, Written<Quantity>? now)
    {
        yield return (was, now) switch
        {
            (null, _) => Reason.Missing(aspect, "what the place asks for is not written"),
            (_, null) => Reason.Missing(aspect, () => $"what it is rated for is not written, {Text(was)} is asked for"),
            _ when was.Value == now.Value => Reason.For(aspect, () => $"{Text(now)}: the same"),
            _ => Reason.Against(aspect, () => $"{Text(now)} for {Text(was)}, expected the same"),
        };
    }

    private static Reason? Circuit(IFitPart place, Written<Quantity> now)
    {
        var limits = new Interval(place.Low?.Value, place.High?.Value);
        return limits is { Lower: null, Upper: null } || (limits.Lower ?? limits.Upper)!.Value.Dimension != now.Value.Dimension ? null
            : limits.Contains(now.Value) ? Reason.For(FitAspects.Value, () => $"{Text(now)} is inside what the circuit stands ({limits})")
            : Reason.Against(FitAspects.Value, () => $"{Text(now)} where the circuit stands {limits}");
    }

    // A fuse too small blows, one too large protects nothing.
    private static IEnumerable<Reason> Fuse(IFitPart place, IFitPart offer)
    {
        foreach (var reason in Equal(FitAspects.Safety, place.Current, offer.Current))
        {
            yield return reason.Weight == ReasonWeight.For ? reason with { Words = new LazyText(() => $"{reason.Words}; compare slow or quick, and what it can break") } : reason;
        }
    }

    private static IEnumerable<Reason> Capacitor(IFitPart place, IFitPart offer)
    {
        yield return KindAlike(place, offer);
        foreach (var reason in WithinTolerance(place, offer, values => values.Capacitance))
        {
            yield return reason;
        }

        if (place.SafetyClass is { } asked)
        {
            var may = SafetyCapacitor.MayReplace(CapacitorWords.Safety(asked.Value), CapacitorWords.Safety(offer.SafetyClass?.Value));
            yield return may.Value ? Reason.For(FitAspects.Safety, may.Arithmetic, may.Source) : Reason.Against(FitAspects.Safety, may.Arithmetic, may.Source);
        }
    }

    private static IEnumerable<Reason> ByType(IFitPart place, IFitPart offer)
    {
        yield return (place.Kind.Value, offer.Kind.Value) switch
        {
            var (was, now) when was == PartKinds.SeleniumRectifier && now.Junction == Junction.Rectifying => Reason.Doubt(FitAspects.Kind, "silicon for selenium drops less: the voltage behind it rises, a series resistor takes it up"),
            var (was, now) when was == PartKinds.GermaniumTransistor && now == PartKinds.Transistor => Reason.Doubt(FitAspects.Kind, "silicon for germanium wants another bias"),
            var (was, now) when was != now => Reason.Against(FitAspects.Kind, $"{now} for {was}: another sort of part"),
            var (was, _) => Reason.For(FitAspects.Kind, $"{was}: the same kind"),
        };
        yield return (place.Type?.Value, offer.Type?.Value) switch
        {
            (null, _) => Reason.Missing(FitAspects.Type, "the type of the original is not written"),
            ({ } was, null) => Reason.Missing(FitAspects.Type, () => $"its type is not written, {was} is asked for"),
            var (was, now) when was == now => Reason.For(FitAspects.Type, () => $"{now}: the same type"),
            var (was, now) => Reason.Doubt(FitAspects.Type, () => $"{now} for {was}: compare the data of both"),
        };
        foreach (var reason in AtLeast(FitAspects.Current, place.Current, offer.Current))
        {
            yield return reason;
        }
    }

    private static Reason KindAlike(IFitPart place, IFitPart offer) => place.Kind.Value == offer.Kind.Value
        ? Reason.For(FitAspects.Kind, () => $"{place.Kind.Text}: the same kind")
        : Reason.Doubt(FitAspects.Kind, () => $"{offer.Kind.Text} for {place.Kind.Text}: compare the data of both");

    private static IEnumerable<Reason> Mounting(IFitPart place, IFitPart offer)
    {
        if (place.Form is { Value: not "other" } was && offer.Form is { Value: not "other" } now)
        {
            yield return was.Value == now.Value ? Reason.For(FitAspects.Form, "the same form")
                : was.Value == "chip" || now.Value == "chip" ? Reason.Against(FitAspects.Form, "leads and surface mounting do not go together")
                : Reason.Doubt(FitAspects.Form, () => $"{now.Value} in a place for {was.Value}: it needs a mounting of its own");
        }
    }

    private static string Text(Written<Quantity> quantity) => QuantityText.Format(quantity.Value);
}
