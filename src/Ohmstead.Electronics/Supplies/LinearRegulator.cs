namespace Ohmstead.Electronics.Supplies;

/// <summary>A three-terminal regulator and what it may deliver.</summary>
/// <param name="Part">Its type number.</param>
/// <param name="LowVolts">The lowest output at 25 degrees, signed.</param>
/// <param name="HighVolts">The highest output at 25 degrees, signed.</param>
/// <param name="LowVoltsOver">The lowest output over line, load and temperature.</param>
/// <param name="HighVoltsOver">The highest output over line, load and temperature.</param>
/// <param name="LeastInputVolts">The least input that holds the output at full load, signed.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record LinearRegulator(
    string Part,
    decimal LowVolts,
    decimal HighVolts,
    decimal LowVoltsOver,
    decimal HighVoltsOver,
    decimal LeastInputVolts,
    Source Source
)
{
    // The two sheets agree but for the least input; the greater of the two stands here.
    private static readonly Source Positive = Source.Published(
        "Fairchild LM78XX data sheet, rev. 1.3.1; Texas Instruments LM340 data sheet, SNOSBT0L",
        "electrical characteristics"
    );
    private static readonly Source Sheets = Source.FromMemory("National LM320 and LM78L data sheets", "electrical characteristics");

    /// <summary>The regulators known here.</summary>
    public static IReadOnlyList<LinearRegulator> All { get; } =
    [
        new("7805C", 4.80m, 5.20m, 4.75m, 5.25m, 7.5m, Positive),
        new("7812C", 11.5m, 12.5m, 11.4m, 12.6m, 14.6m, Positive),
        new("7815C", 14.4m, 15.6m, 14.25m, 15.75m, 17.7m, Positive),
        new("7905C", -5.20m, -4.80m, -5.25m, -4.75m, -7m, Sheets),
        new("78L05AC", 4.80m, 5.20m, 4.75m, 5.25m, 7m, Sheets),
        new("78L05C", 4.60m, 5.40m, 4.5m, 5.5m, 7m, Sheets),
    ];

    /// <summary>The regulator of a type number, or null.</summary>
    public static LinearRegulator? Find(string type) =>
        All.FirstOrDefault(known => string.Equals(known.Part, type, StringComparison.OrdinalIgnoreCase));

    /// <summary>A usual three-terminal regulator for an output voltage, or null: it stands for one whose sheet is not at hand.</summary>
    public static LinearRegulator? LikeFor(decimal outputVolts) =>
        All.FirstOrDefault(known => (known.LowVolts + known.HighVolts) / 2m == outputVolts);

    /// <summary>What an output voltage, with the input beside it, says of the regulator.</summary>
    public RegulatorState Judge(decimal inputVolts, decimal outputVolts)
    {
        if (outputVolts >= LowVoltsOver && outputVolts <= HighVoltsOver)
        {
            return Math.Abs(inputVolts) < Math.Abs(LeastInputVolts) ? RegulatorState.HeadroomMissing : RegulatorState.InRange;
        }

        bool tooMuch = Math.Abs(outputVolts) > Math.Max(Math.Abs(LowVoltsOver), Math.Abs(HighVoltsOver));
        return tooMuch ? RegulatorState.OutputTooHigh
            : Math.Abs(inputVolts) < Math.Abs(LeastInputVolts) ? RegulatorState.InputTooLow
            : RegulatorState.OutputTooLow;
    }

    /// <summary>The heat a regulator makes, (Vin - Vout) I, in watt.</summary>
    public static Outcome<Worked<decimal>> DissipationWatts(decimal inputVolts, decimal outputVolts, decimal amperes) =>
        Domain
            .Require(
                Domain.NotNegative("load current", amperes),
                Domain.That(
                    inputVolts >= 0 == outputVolts >= 0,
                    $"{Figures.Text(outputVolts)} V out of {Figures.Text(inputVolts)} V: a series regulator does not turn the sign"
                ),
                Domain.That(
                    Math.Abs(inputVolts) >= Math.Abs(outputVolts),
                    $"{Figures.Text(outputVolts)} V out of {Figures.Text(inputVolts)} V: a series regulator gives less than it gets"
                )
            )
            .Compute(() =>
            {
                decimal watts = Math.Abs(inputVolts - outputVolts) * amperes;
                string working =
                    $"({Figures.Text(inputVolts)} V - {Figures.Text(outputVolts)} V) x {Figures.Text(amperes)} A = {Figures.Text(watts)} W";
                return new Worked<decimal>(watts, working, Source.Practice("power in a series regulator"));
            });

    /// <summary>What is left between the bottom of the ripple and the least input, in volt; under zero the output dips with each
    /// cycle.</summary>
    public Outcome<Worked<decimal>> HeadroomVolts(decimal meanInputVolts, decimal rippleVoltsPeakToPeak) =>
        Domain
            .Require(
                Domain.NotNegative("ripple", rippleVoltsPeakToPeak),
                Domain.That(
                    meanInputVolts >= 0 == LeastInputVolts >= 0,
                    $"the input of a {Part} has the sign of its output, {Figures.Text(meanInputVolts)} V has not"
                ),
                Domain.That(
                    rippleVoltsPeakToPeak <= 2m * Math.Abs(meanInputVolts),
                    $"a ripple of {Figures.Text(rippleVoltsPeakToPeak)} V does not go with a mean of {Figures.Text(meanInputVolts)} V"
                )
            )
            .Compute(() =>
            {
                decimal bottom = Math.Abs(meanInputVolts) - (rippleVoltsPeakToPeak / 2m);
                decimal headroom = bottom - Math.Abs(LeastInputVolts);
                string working =
                    $"{Figures.Text(Math.Abs(meanInputVolts))} V - {Figures.Text(rippleVoltsPeakToPeak)} V / 2 - "
                    + $"{Figures.Text(Math.Abs(LeastInputVolts))} V = {Figures.Text(headroom)} V";
                return new Worked<decimal>(headroom, working, Source);
            });
}

/// <summary>What an output voltage says of a regulator.</summary>
public enum RegulatorState
{
    /// <summary>Output in range.</summary>
    InRange,

    /// <summary>Output in range at this load, though the input is under the least the sheet asks for.</summary>
    HeadroomMissing,

    /// <summary>Output low because the input is: no fault of the regulator is shown.</summary>
    InputTooLow,

    /// <summary>Output low with enough input: overload or a faulty regulator.</summary>
    OutputTooLow,

    /// <summary>Output above its range: the regulator is faulty, or its ground is open.</summary>
    OutputTooHigh,
}
