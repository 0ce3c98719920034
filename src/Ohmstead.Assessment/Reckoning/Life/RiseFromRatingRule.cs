using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Life;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Life;

/// <summary>The rise from the rated one.</summary>
internal static class RiseFromRatingRule
{
    private static readonly ReckonInput RatedRise = ReckonInput
        .Kelvin("rated-rise", "dT0, the core's rise at rated ripple: 5 K for most 105 degree parts")
        .Within(0m, 39m)
        .Usually("5K");
    private static readonly ReckonInput Rated = ReckonInput
        .Create("rated-current", Dimension.Current, "I0, the rated ripple current")
        .Within(0.0001m, 1000m);

    private const decimal MostTimes = 5m;

    internal static ReckonRule Rule { get; } =
        new(
            "rise-from-rating",
            "how much a ripple current warms the core, from the rated ripple current",
            [SharedInputs.Current, Rated, RatedRise],
            "current=0.5A rated-current=1A",
            given =>
                given[SharedInputs.Current] > MostTimes * given[Rated]
                    ? Outcome<Reckoned>.Refused(
                        $"current: {given.Text(SharedInputs.Current)} is more than "
                            + $"{Answers.Text(MostTimes, ShownAs.Plain)} times the rated "
                            + $"{given.Text(Rated)}, where the square no longer holds and the part vents"
                    )
                    : Answers.All(
                        Answers.Line(
                            "rise of the core",
                            RippleHeating.RiseFromRating(given.Double(RatedRise), given.Double(SharedInputs.Current), given.Double(Rated)),
                            "K"
                        )
                    )
        )
        {
            Formula = "dT = dT0 (I / I0)²",
            Validity = "3.5 to 10 K is the rated rise of other parts: the maker's figure comes first",
        };
}
