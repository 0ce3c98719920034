using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Parts;

/// <summary>What a voltmeter of finite resistance shows of a source with a resistance of its own.</summary>
/// <remarks>Voltages in old drawings were often taken with 20 kohm/V meters: a modern reading is higher without a fault.</remarks>
public static class MeterLoading
{
    private static readonly Source Divider = Source.Practice("voltage divider");

    /// <summary>The share of the true voltage that is shown, Rin / (Rin + Rsource).</summary>
    public static Outcome<Worked<decimal>> Share(decimal meterOhms, decimal sourceOhms) =>
        Domain
            .Require(Domain.Positive("meter resistance", meterOhms), Domain.NotNegative("source resistance", sourceOhms))
            .Compute(() =>
            {
                decimal share = meterOhms / (meterOhms + sourceOhms);
                return new Worked<decimal>(
                    share,
                    $"{Rounded.Ohms(meterOhms)} / ({Rounded.Ohms(meterOhms)} + {Rounded.Ohms(sourceOhms)}) = {Figures.Text(share, 4)}",
                    Divider
                );
            });

    /// <summary>The resistance of a moving-coil meter on a range, ohm per volt times full scale, in ohm.</summary>
    public static Outcome<decimal> MeterOhms(decimal ohmsPerVolt, decimal rangeVolts) =>
        Domain
            .Require(Domain.Positive("ohm per volt", ohmsPerVolt), Domain.Positive("range", rangeVolts))
            .Compute(() => ohmsPerVolt * rangeVolts);

    /// <summary>What a meter of another resistance would show where one meter showed a voltage, in volt.</summary>
    public static Outcome<Worked<decimal>> Translate(decimal shownVolts, decimal oldMeterOhms, decimal newMeterOhms, decimal sourceOhms)
    {
        if (
            !Share(oldMeterOhms, sourceOhms).Is(out Worked<decimal>? before, out string? reason)
            || !Share(newMeterOhms, sourceOhms).Is(out Worked<decimal>? after, out reason)
        )
        {
            return Outcome<Worked<decimal>>.Refused(reason);
        }

        return default(Domain).Compute(() =>
        {
            decimal volts = shownVolts / before.Value * after.Value;
            return new Worked<decimal>(
                volts,
                $"{Figures.Text(shownVolts)} V / {Figures.Text(before.Value, 4)} x {Figures.Text(after.Value, 4)} = "
                    + $"{Figures.Text(volts, 4)} V",
                Divider
            );
        });
    }
}
