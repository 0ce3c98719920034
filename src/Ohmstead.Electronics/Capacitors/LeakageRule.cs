namespace Ohmstead.Electronics.Capacitors;

/// <summary>A rule for the largest leakage current of a wet aluminium electrolytic at its rated voltage and 20 degrees Celsius.</summary>
/// <remarks>A leakage reading without the minute it was taken at cannot be compared with any of these.</remarks>
/// <param name="Name">What parts it is for.</param>
/// <param name="Form">Its formula.</param>
/// <param name="Minutes">How long the voltage has been on when the current is read; where the rule allows some, the longest.</param>
/// <param name="FromVolts">The lowest rated voltage it holds for.</param>
/// <param name="ToVolts">The highest rated voltage it holds for.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record LeakageRule(string Name, LeakageForm Form, decimal Minutes, decimal FromVolts, decimal ToVolts, Source Source)
{
    /// <summary>The limit in microampere, with its working, or a refusal when the rule does not hold for the part.</summary>
    public Outcome<Worked<decimal>> LimitMicroAmperes(decimal farads, decimal ratedVolts) =>
        Domain
            .Require(
                Domain.Positive("capacitance", farads),
                Domain.Positive("rated voltage", ratedVolts),
                ratedVolts >= FromVolts && ratedVolts <= ToVolts ? null : OutsideVolts(ratedVolts)
            )
            .Compute(() => Limit(farads, ratedVolts));

    private Worked<decimal> Limit(decimal farads, decimal ratedVolts)
    {
        decimal cv = farads * 1_000_000m * ratedVolts;
        return new Worked<decimal>(
            Form.MicroAmperes(cv),
            new(() => Form.Working($"{Figures.Text(farads * 1_000_000m)} µF x {Figures.Text(ratedVolts)} V", cv)),
            Source
        )
        {
            Remarks = [$"read after {Figures.Text(Minutes)} min at rated voltage, 20 degrees Celsius"],
        };
    }

    private string OutsideVolts(decimal ratedVolts) =>
        $"the rule \"{Name}\" holds for {Figures.Text(FromVolts)} to {Figures.Text(ToVolts)} V, the part is rated "
        + $"{Figures.Text(ratedVolts)} V";
}
