using Ohmstead.Electronics.Hazards;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Life;

/// <summary>How to form one part again: the resistor, what it must bear, the steps and when to give up.</summary>
/// <param name="SeriesOhms">The series resistor.</param>
/// <param name="WorstWatts">The heat in it should the part be shorted, V² / R.</param>
/// <param name="WorstMilliamperes">The current should the part be shorted.</param>
/// <param name="Steps">What to do, in order.</param>
/// <param name="StopWhen">When to give up; common practice.</param>
/// <param name="Arithmetic">The working of the power.</param>
/// <param name="Source">Where the procedure comes from.</param>
public sealed record ReformingPlan(
    decimal SeriesOhms,
    decimal WorstWatts,
    decimal WorstMilliamperes,
    IReadOnlyList<ReformingStep> Steps,
    IReadOnlyList<string> StopWhen,
    string Arithmetic,
    Source Source
)
{
    private static readonly IReadOnlyList<decimal> Shares = [0.25m, 0.50m, 0.75m];

    private static readonly Source Steady = Source.Practice("steps of forming again, letting down, measuring");

    /// <summary>Which parts it may be used on, and for which it is meant.</summary>
    public required string ForParts { get; init; }

    /// <summary>The sentence that stands beside every plan.</summary>
    public static string Caution => SafetyNotice.Defer;

    /// <summary>A plan for a part of a rated voltage by a procedure.</summary>
    /// <param name="ratedVolts">The rated voltage in volt.</param>
    /// <param name="procedure">The procedure.</param>
    /// <param name="leakageLimitMicroAmperes">The leakage limit to end under, or null when none is known.</param>
    public static Outcome<ReformingPlan> For(decimal ratedVolts, ReformingProcedure procedure, decimal? leakageLimitMicroAmperes) =>
        Domain
            .Require(Domain.Within("rated voltage", ratedVolts, 1m, Capacitors.SurgeVoltage.HighestRatedVolts))
            .Compute(() =>
            {
                decimal ohms = ratedVolts <= procedure.BoundVolts ? procedure.OhmsUpTo : procedure.OhmsAbove;
                decimal watts = ratedVolts * ratedVolts / ohms;
                string working =
                    $"({Figures.Text(ratedVolts)} V)² / {Rounded.Ohms(ohms)} = {Figures.Text(watts, 3)} W should the part be shorted";
                return new ReformingPlan(
                    ohms,
                    watts,
                    ratedVolts / ohms * 1000m,
                    [.. Build(ratedVolts, procedure)],
                    Stops(leakageLimitMicroAmperes),
                    working,
                    procedure.Source
                )
                {
                    ForParts = $"{ReformingProcedure.ForParts}; this procedure is for {procedure.Meant}",
                };
            });

    private static IEnumerable<ReformingStep> Build(decimal ratedVolts, ReformingProcedure procedure)
    {
        string current = procedure.LargestMilliamperes is { } milliamperes ? $", keeping under {Figures.Text(milliamperes)} mA" : "";
        if (procedure.Gradual)
        {
            foreach (decimal share in Shares)
            {
                decimal volts = decimal.Round(share * ratedVolts, 1);
                yield return new ReformingStep(
                    volts,
                    null,
                    $"raise to {Figures.Text(volts)} V{current}; go on when the current has fallen and stays",
                    Steady
                );
            }
        }

        yield return new ReformingStep(
            ratedVolts,
            procedure.HoursAtRated,
            $"hold at {Figures.Text(ratedVolts)} V for "
                + $"{Figures.Text(procedure.HoursAtRated)}{(procedure.HoursAtMost is { } most ? $" to {Figures.Text(most)}" : "")} "
                + $"h{current}",
            procedure.Source
        );
        yield return procedure.LetDownOhmsPerVolt is { } perVolt
            ? new ReformingStep(
                0m,
                null,
                $"let down through a wire-wound resistor of about {Rounded.Ohms(perVolt * ratedVolts)} on an insulated probe, and "
                    + "measure that it is down",
                procedure.Source
            )
            : new ReformingStep(
                0m,
                null,
                "let down through a wire-wound resistor of 1 to 20 kΩ on an insulated probe, and measure that it is down",
                Steady
            );
        if (procedure.RestHours is { } rest)
        {
            yield return new ReformingStep(0m, rest, $"rest for {Figures.Text(rest)} to 48 h, shorted", procedure.Source);
        }

        yield return new ReformingStep(
            ratedVolts,
            null,
            "measure the leakage at rated voltage and write down the minute it was read at",
            Steady
        );
    }

    private static IReadOnlyList<string> Stops(decimal? limit) =>
        [
            "the current does not fall within an hour at a step",
            "the can warms",
            limit is { } microAmperes
                ? $"the last leakage is above {Figures.Text(microAmperes)} µA"
                : "the last leakage is above the part's limit",
        ];
}

/// <summary>One step of a plan.</summary>
/// <param name="Volts">The voltage across the supply.</param>
/// <param name="Hours">How long, or null when the part tells.</param>
/// <param name="Do">What to do.</param>
/// <param name="Source">Where this step comes from; not all are the procedure's own.</param>
public sealed record ReformingStep(decimal Volts, decimal? Hours, string Do, Source Source);
