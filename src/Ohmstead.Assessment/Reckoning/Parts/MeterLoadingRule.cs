using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Parts;

/// <summary>What a meter does to the voltage it reads.</summary>
internal static class MeterLoadingRule
{
    private static readonly ReckonInput Meter = ReckonInput
        .Create("meter", Dimension.Resistance, "the meter's input resistance")
        .Within(100m, 1e13m)
        .Optional();
    private static readonly ReckonInput PerVolt = ReckonInput
        .Create("ohms-per-volt", Dimension.Resistance, "a moving-coil meter's ohm per volt")
        .Within(50m, 1_000_000m)
        .Optional();
    private static readonly ReckonInput Range = ReckonInput
        .Create("range", Dimension.Voltage, "the range it stood on")
        .Within(0.01m, 50_000m)
        .Optional();
    private static readonly ReckonInput Source = ReckonInput
        .Create("source", Dimension.Resistance, "the resistance of what is measured")
        .Within(0m, 1e12m);
    private static readonly ReckonInput Shown = ReckonInput
        .Create("shown", Dimension.Voltage, "what it showed, or the drawing says")
        .Within(-50_000m, 50_000m)
        .Optional();
    private static readonly ReckonInput Other = ReckonInput
        .Create("other-meter", Dimension.Resistance, "the input resistance of another meter")
        .Within(100m, 1e13m)
        .Usually("10M");

    internal static ReckonRule Rule { get; } =
        new(
            "meter-loading",
            "the share of a voltage that a meter shows, and what another meter would show",
            [Source, Meter, PerVolt, Range, Shown, Other],
            "ohms-per-volt=20k range=50V source=470k shown=20V",
            Work
        )
        {
            Formula = "share = Rm / (Rm + Rs); Rm = ohm per volt x range",
            Validity = "d.c.; meter, or ohms-per-volt with range, is needed. Old drawings were often measured with 20 kΩ/V",
        };

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        if (given.Has(Shown) && given.Has(Range) && Math.Abs(given[Shown]) > given[Range])
        {
            return Outcome<Reckoned>.Refused($"shown: {given.Text(Shown)} is more than the range of {given.Text(Range)}");
        }

        var meter =
            given.Has(Meter) ? Outcome<decimal>.From(given[Meter])
            : given.Has(PerVolt) && given.Has(Range) ? MeterLoading.MeterOhms(given[PerVolt], given[Range])
            : Outcome<decimal>.Refused("meter-loading needs meter, or ohms-per-volt with range");
        return meter.Is(out var ohms, out var reason)
            ? Answers.All([
                Answers.Line("share that is shown", MeterLoading.Share(ohms, given[Source]), ShownAs.Percent),
                .. given.Has(Shown)
                    ?
                    [
                        Answers.Line(
                            $"a meter of {given.Text(Other)} would show",
                            MeterLoading.Translate(given[Shown], ohms, given[Other], given[Source]),
                            Dimension.Voltage
                        ),
                    ]
                    : Array.Empty<Outcome<ReckonedLine>>(),
            ])
            : Outcome<Reckoned>.Refused(reason);
    }
}
