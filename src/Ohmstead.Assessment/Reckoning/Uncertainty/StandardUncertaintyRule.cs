using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;

namespace Ohmstead.Assessment.Reckoning.Uncertainty;

/// <summary>From what is known of an error to its standard uncertainty.</summary>
internal static class StandardUncertaintyRule
{
    private static readonly ReckonInput Shape = ReckonInput.Word(
        "shape",
        "what is known: an even, triangular or U-shaped range, the step of a display, a certificate's U",
        "rectangular",
        "triangular",
        "u-shaped",
        "resolution",
        "certificate"
    );
    private static readonly ReckonInput Value = ReckonInput.Create("value", Dimension.Number, "half the range, the step, or U").From(0m);
    private static readonly ReckonInput Coverage = ReckonInput
        .Create("k", Dimension.Number, "the certificate's coverage factor")
        .Within(1m, 5m)
        .Usually("2");

    internal static ReckonRule Rule { get; } =
        new(
            "standard-uncertainty",
            "the standard uncertainty that a range, a step or a certificate stands for",
            [Shape, Value, Coverage],
            "shape=resolution value=0.1",
            given =>
                given[Value] >= 0m && given[Coverage] > 0m
                    ? Work(given)
                    : Outcome<Reckoned>.Refused("value is below 0 or k is not above 0, expected a value of 0 or more and such as k=2")
        )
        {
            Formula = "a / sqrt 3, a / sqrt 6, a / sqrt 2, step / sqrt 12, U / k",
        };

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        var (value, text) = (given.Double(Value), given.Text(Value));
        var (u, working, source) = given.Text(Shape) switch
        {
            "rectangular" => (StandardUncertainty.Rectangular(value), $"{text} / sqrt(3)", StandardUncertainty.RectangularSource),
            "triangular" => (StandardUncertainty.Triangular(value), $"{text} / sqrt(6)", Guide("4.3.9")),
            "u-shaped" => (StandardUncertainty.UShaped(value), $"{text} / sqrt(2)", Answers.Practice("U-shaped distribution")),
            "resolution" => (StandardUncertainty.OfResolution(value), $"{text} / sqrt(12)", Guide("F.2.2.1")),
            _ => (StandardUncertainty.OfExpanded(value, given.Double(Coverage)), $"{text} / {given.Text(Coverage)}", Guide("4.3.3")),
        };
        return Answers.All(Answers.Line("standard uncertainty", Outcome<double>.From(u), ShownAs.Plain, working, source));
    }

    private static Source Guide(string clause) => new("JCGM 100:2008", clause, SourceBasis.Memory);
}
