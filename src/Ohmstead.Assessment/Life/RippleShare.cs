using System.Globalization;
using Ohmstead.Assessment.History;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Life;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Life;

/// <summary>The ripple current of a part as a share of its rating, from the last ripple voltage that was read across what sits there
/// now.</summary>
/// <param name="Share">Ripple current over rated ripple current.</param>
/// <param name="Working">How it was reached.</param>
internal sealed record RippleShare(double Share, LazyText Working)
{
    /// <summary>The share, or null when the rating, the capacitance, a ripple reading or its frequency is not written.</summary>
    internal static RippleShare? Compute(PlaceHistory place)
    {
        if (place.Values.RippleCurrent is not { Value.Value: > 0 } rated || place.Values.Capacitance is not { } capacitance)
        {
            return null;
        }

        foreach (var reading in place.Readings.Reverse())
        {
            if (
                reading.IsNew
                || !ReferenceEquals(reading.Lot, place.FittedLot)
                || reading.Reading.Frequency is not { } frequency
                || reading.Reading.Values.FirstOrDefault(value => value.Measured == Measured.Ripple) is not { Exact: { } peakToPeak } ripple
            )
            {
                continue;
            }

            if (
                RippleHeating
                    .FromVoltage((double)peakToPeak.Value, (double)frequency.Value.Value, (double)capacitance.Value.Value)
                    .Is(out var current, out _)
            )
            {
                var share = current.Value / (double)rated.Value.Value;
                return new(
                    share,
                    new(() =>
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"ripple of {ripple.Value.Text} read on {reading.Visit.Date.Text}: {current.Arithmetic}, {share:0.00} of "
                                + $"the rated {rated.Text} ({current.Source}); {LifeModels.RatedRiseKelvin} K taken for the rise at "
                                + $"rated ripple, makers state 3.5 to 10 K"
                        )
                    )
                );
            }
        }

        return null;
    }
}
