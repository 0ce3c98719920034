using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>What multipliers data sheets give.</summary>
internal static class RippleMultiplierRule
{
    private static readonly ReckonInput Grade = ReckonInput.Word("grade", "general-purpose is rated at 120 Hz, low-impedance at 100 kHz", "general-purpose", "low-impedance").Usually("general-purpose");

    internal static ReckonRule Rule { get; } = new(
        "ripple-multiplier", "how much more ripple current of another frequency than the rated one a part bears",
        [Given.Frequency, Grade],
        "frequency=1kHz",
        given => Work(given.Text(Grade) == "low-impedance" ? RippleCurrent.LowImpedance : RippleCurrent.GeneralPurpose, given[Given.Frequency]))
    {
        Validity = "the nearest frequency of the table is told; makers differ widely, the part's own data sheet comes first",
    };

    private static Outcome<Reckoned> Work(IReadOnlyList<RippleMultiplier> table, decimal hertz)
    {
        if (hertz <= 0m)
        {
            return Outcome<Reckoned>.Refused("frequency is 0, expected above 0");
        }

        var row = table.MinBy(known => Math.Abs(Math.Log((double)(known.Hertz / hertz))))!;
        var table1 = $"row of {Answers.Text(row.Hertz, Dimension.Frequency)}";
        return Answers.All(
            Outcome<ReckonedLine>.Of(Answers.Figure("least multiplier", row.Low, ShownAs.Plain, table1, RippleCurrent.MultiplierSource)),
            Outcome<ReckonedLine>.Of(Answers.Figure("greatest multiplier", row.High, ShownAs.Plain, table1, RippleCurrent.MultiplierSource)));
    }
}
