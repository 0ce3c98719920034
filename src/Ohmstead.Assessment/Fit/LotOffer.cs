using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>A lot as something that may go into a place: what its record says, and what was measured of it.</summary>
/// <param name="Name">The lot.</param>
/// <param name="Values">What its parts are.</param>
/// <param name="MeasuredEsr">ESR readings of its parts before they were fitted, in ohm.</param>
public sealed record LotOffer(string Name, PartValues Values, IReadOnlyList<decimal> MeasuredEsr)
{
    /// <summary>The lot as the rules for capacitors take it for a place; null when it is none of theirs, or has no capacitance.</summary>
    public CapacitorOffer? For(CapacitorPlace place) =>
        Values.Kind.Value.Capacitor is { } kind && Values.Capacitance is { Value.Value: > 0 and var farads }
            ? new(Name, kind, farads, Values.RatedVoltage?.Value.Value)
            {
                CelsiusRating = Values.Temperature?.Value.Value,
                RippleAmperes = Values.RippleCurrent?.Value.Value,
                EsrOhms = EsrFor(place),
                IsBipolar = CapacitorWords.IsBipolar(Values) || Values.Polarity is { Value: PartPolarity.None },
                SafetyClass = CapacitorWords.Safety(Values.SafetyClass),
                Form = CapacitorWords.Form(Values.Form?.Value),
                Diameter = CapacitorWords.Millimetres(Values.Diameter),
                Height = CapacitorWords.Millimetres(Values.Height),
                Pitch = CapacitorWords.Millimetres(Values.LeadPitch),
            }
            : null;

    // Of several readings the one that is worst for the place counts. A data sheet's limit says how high an ESR may be, never how low.
    private decimal? EsrFor(CapacitorPlace place)
    {
        if (MeasuredEsr.Count == 0)
        {
            return place.LeastEsrOhms is null ? Values.EsrLimit?.Value.Value : null;
        }

        var highest = MeasuredEsr.Max();
        return place.LeastEsrOhms is null || highest > place.LargestEsrOhms ? highest : MeasuredEsr.Min();
    }
}
