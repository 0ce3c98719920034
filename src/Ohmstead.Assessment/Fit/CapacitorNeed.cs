using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Electronics.PreferredValues;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>What to look for in a capacitor for a place, in words: kind, value, voltage, stresses, safety, build.</summary>
internal static class CapacitorNeed
{
    private const decimal Margin = 1.1m;
    private const decimal TantalumMargin = 2m;

    internal static IEnumerable<NeedLine> Lines(CapacitorPlace place) =>
        [.. Kinds(place), .. Value(place), .. Voltage(place), .. Stress(place), .. Safety(place), .. BuildNeed.Lines(place)];

    // Every kind is asked of the rules in turn, alike in all but its kind.
    private static IEnumerable<NeedLine> Kinds(CapacitorPlace place)
    {
        if (place.IsOnMains)
        {
            yield break;
        }

        var (good, care) = (new List<string>(), new List<string>());
        foreach (var (kind, words, most) in KindWords)
        {
            if (place.Farads > most)
            {
                continue;
            }

            var offer = new CapacitorOffer(words, kind, place.Farads, place.RatedVolts) { IsBipolar = place.IsBipolar };
            var weight = CapacitorSubstitution.JudgeKind(place, offer).Is(out var reasons, out _)
                ? reasons.Max(reason => reason.Weight)
                : ReasonWeight.Against;
            (
                weight switch
                {
                    ReasonWeight.For => good,
                    ReasonWeight.Doubt => care,
                    _ => null,
                }
            )?.Add(words);
        }

        string[] lists =
        [
            .. good.Count > 0 ? [List(good, " or ")] : Array.Empty<string>(),
            .. care.Count > 0 ? ["with care " + List(care, " or ")] : Array.Empty<string>(),
        ];
        yield return new(
            FitAspects.Kind,
            lists.Length == 0 ? "no kind that the rules know serves there" : string.Join("; ", lists),
            Source.CommonPractice
        );
        if (place.IsBipolar)
        {
            yield return new(FitAspects.Polarity, "bipolar, since the original is: the voltage may change its sign", Source.CommonPractice);
        }
    }

    private static IEnumerable<NeedLine> Value(CapacitorPlace place)
    {
        if (!CapacitorSubstitution.ValueRange(place).Is(out var range, out var refusal))
        {
            yield return new(FitAspects.Value, refusal, Source.CommonPractice);
            yield break;
        }

        yield return new(FitAspects.Value, $"{range.Value} ({range.Arithmetic})", range.Source);
        yield return new(
            FitAspects.Value,
            PreferredWords.Describe(new Quantity(place.Farads, Dimension.Capacitance), range.Value),
            PreferredWords.Source
        );
    }

    private static IEnumerable<NeedLine> Voltage(CapacitorPlace place)
    {
        if (place.IsOnMains)
        {
            yield return new(
                FitAspects.Voltage,
                place.MainsVolts is { } mains
                    ? $"{Volts(mains)} a.c. or more"
                    : "not known: no part goes into this place until its mains voltage is written as rated_voltage",
                Source.CommonPractice
            );
            yield break;
        }

        var isTantalum = place.Kind == CapacitorKind.TantalumSolid;
        var least = Math.Max(place.RatedVolts ?? 0m, (place.WorstVolts ?? 0m) * (isTantalum ? TantalumMargin : Margin));
        if (least <= 0m)
        {
            yield return new(FitAspects.Voltage, "not known: neither rated_voltage nor working_voltage is written", Source.CommonPractice);
            yield break;
        }

        var volts = new Quantity(least, Dimension.Voltage);
        var why =
            place.WorstVolts is { } worst && least > (place.RatedVolts ?? 0m)
                ? $"{QuantityText.Format(new Quantity(isTantalum ? TantalumMargin : Margin, Dimension.Number))} x the "
                    + $"{Volts(worst)} in its place"
                : "the mark of the original";
        var replaced = RatedVoltages.Replace(volts);
        var words = $"{Volts(least)} or more, {why}";
        if (place.Kind is CapacitorKind.AluminiumWet or CapacitorKind.Polymer)
        {
            words += replaced.Rating is { } rating
                ? (rating.Value == least ? string.Empty : $"; of today's ratings {QuantityText.Format(rating)}")
                    + (replaced.Also.IsEmpty ? string.Empty : $", or {QuantityText.Format(replaced.Also[0])}")
                : string.Empty;
            words += replaced.Note is { } note ? $"; {note}" : string.Empty;
        }

        yield return new(FitAspects.Voltage, words, Source.CommonPractice);
    }

    private static IEnumerable<NeedLine> Stress(CapacitorPlace place)
    {
        if (place.CelsiusRating is { } celsius)
        {
            var more = place.Kind == CapacitorKind.AluminiumWet ? "; each 10 °C more double the life" : string.Empty;
            yield return new(
                FitAspects.Temperature,
                $"{QuantityText.Format(new Quantity(celsius, Dimension.Temperature))} or more{more}",
                Source.CommonPractice
            );
        }

        if (place.RippleAmperes is { } ripple)
        {
            yield return new(
                FitAspects.Ripple,
                $"{QuantityText.Format(new Quantity(ripple, Dimension.Current))} or more, at the same frequency",
                Source.CommonPractice
            );
        }

        string?[] esr =
        [
            place.LeastEsrOhms is { } low ? $"{Ohms(low)} or more, so that a regulator stays stable" : null,
            place.LargestEsrOhms is { } high ? $"{Ohms(high)} at most" : null,
        ];
        if (esr.Any(words => words is not null))
        {
            yield return new(FitAspects.Esr, string.Join("; ", esr.OfType<string>()), Source.CommonPractice);
        }
    }

    private static IEnumerable<NeedLine> Safety(CapacitorPlace place)
    {
        if (place.SafetyClass != Electronics.Capacitors.SafetyClass.None)
        {
            yield return new(
                FitAspects.Safety,
                $"class {Electronics.Capacitors.SafetyClasses.Name(place.SafetyClass)} or one that may stand for it, with approvals. "
                    + $"{SafetyNotice.Defer}",
                Electronics.Capacitors.SafetyCapacitor.MayReplace(place.SafetyClass, place.SafetyClass).Source
            );
        }
        else if (place.IsOnMains)
        {
            yield return new(
                FitAspects.Safety,
                $"the place is on the mains and its class is not written: establish it first. {SafetyNotice.Defer}",
                Source.CommonPractice
            );
        }
    }

    // With the largest capacitance, in farad, that is usually made of the kind: common practice.
    private static IReadOnlyList<(CapacitorKind Kind, string Words, decimal Most)> KindWords { get; } =
    [
        (CapacitorKind.AluminiumWet, PartKinds.AluminiumElectrolytic.Name, 1m),
        (CapacitorKind.Polymer, PartKinds.PolymerElectrolytic.Name, 3300e-6m),
        (CapacitorKind.TantalumSolid, PartKinds.Tantalum.Name, 1000e-6m),
        (CapacitorKind.Polypropylene, PartKinds.PolypropyleneFilm.Name, 50e-6m),
        (CapacitorKind.Polyester, PartKinds.PolyesterFilm.Name, 50e-6m),
        (CapacitorKind.Polystyrene, PartKinds.PolystyreneFilm.Name, 0.1e-6m),
        (CapacitorKind.CeramicClass1, PartKinds.CeramicClass1.Name, 0.1e-6m),
        (CapacitorKind.CeramicClass2, PartKinds.CeramicClass2.Name, 47e-6m),
        (CapacitorKind.Mica, PartKinds.Mica.Name, 0.1e-6m),
    ];

    internal static string List(IReadOnlyList<string> words, string last) =>
        words.Count == 1 ? words[0] : string.Join(", ", words.SkipLast(1)) + last + words[^1];

    private static string Volts(decimal volts) => QuantityText.Format(new Quantity(volts, Dimension.Voltage));

    private static string Ohms(decimal ohms) => QuantityText.Format(new Quantity(ohms, Dimension.Resistance));
}
