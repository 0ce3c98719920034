using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Life;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Life;

/// <summary>How much ripple warms a can.</summary>
internal static class RippleHeatingRule
{
    private const double MillimetresPerMetre = 1000;
    private const double MostKelvin = 150;

    private static readonly ReckonInput Diameter = ReckonInput
        .Create("diameter", Dimension.Length, "d, the can's diameter")
        .Within(0.003m, 0.1m);
    private static readonly ReckonInput Length = ReckonInput.Create("length", Dimension.Length, "l, the can's length").Within(0.003m, 0.3m);
    private static readonly ReckonInput Surface = ReckonInput
        .Word("surface", "which ends count as cooling", "one-end", "both-ends")
        .Usually("one-end");
    private static readonly ReckonInput Beta = ReckonInput
        .Create("beta", Dimension.Number, "heat given off in mW/(cm² K), 1.0 to 2.2 in free air, falling with size")
        .Within(0.5m, 5m)
        .Usually("2.0");

    internal static ReckonRule Rule { get; } =
        new(
            "ripple-heating",
            "how much a ripple current warms a can above its surroundings",
            [SharedInputs.Current, SharedInputs.Esr, Diameter, Length, Surface, Beta],
            "current=1A esr=0.1ohm diameter=12.5mm length=25mm",
            Work
        )
        {
            Formula = "dT = I² ESR / (beta S)",
            Validity = "ESR at the ripple's frequency; free air, no other heat near",
        };

    private static string? TooHot(Worked<double> kelvin) =>
        kelvin.Value <= MostKelvin ? null : $"{kelvin.Arithmetic}: it vents long before that, look at the current and at the ESR again";

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        var counted = given.Text(Surface) == "both-ends" ? CanSurface.BothEnds : CanSurface.OneEnd;
        if (
            !RippleHeating
                .SurfaceSquareCentimetres(given.Double(Diameter) * MillimetresPerMetre, given.Double(Length) * MillimetresPerMetre, counted)
                .Is(out var surface, out var reason)
        )
        {
            return Outcome<Reckoned>.Refused(reason);
        }

        return Answers.All(
            Answers.Line(
                "rise of the can",
                RippleHeating
                    .RiseKelvin(given.Double(SharedInputs.Current), given.Double(SharedInputs.Esr), surface, given.Double(Beta))
                    .Unless(TooHot),
                "K"
            ),
            Answers.Line(
                "cooling surface",
                Outcome<double>.From(surface),
                "cm²",
                counted == CanSurface.BothEnds ? "pi d l + pi d² / 2" : "pi d l + pi d² / 4",
                Answers.Practice("surface of a cylinder")
            )
        );
    }
}
