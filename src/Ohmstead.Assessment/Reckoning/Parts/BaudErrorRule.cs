using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Parts;

/// <summary>How far a divided clock is off.</summary>
internal static class BaudErrorRule
{
    private const decimal MostError = 0.5m;

    private static readonly ReckonInput Clock = ReckonInput.Create("clock", Dimension.Frequency, "the clock").Within(1m, 1e9m);
    private static readonly ReckonInput Divisor = ReckonInput.Count("divisor", "what it is divided by").From(1m);
    private static readonly ReckonInput Oversampling = ReckonInput
        .Count("oversampling", "clocks for each bit")
        .Within(1m, 64m)
        .Usually("16");
    private static readonly ReckonInput Baud = ReckonInput.Count("baud", "the baud rate meant").From(1m);

    internal static ReckonRule Rule { get; } =
        new(
            "baud-error",
            "how far the baud rate of a divided clock is off",
            [Clock, Divisor, Oversampling, Baud],
            "clock=2MHz divisor=13 baud=9600",
            given =>
                Answers.All(
                    Answers
                        .Line(
                            "error",
                            PartsPerMillion.BaudError(given[Clock], given[Divisor], given[Oversampling], given[Baud]).Unless(AnotherRate),
                            ShownAs.Percent
                        )
                        .Remarking("both ends together must stay within about 2 %")
                )
        )
        {
            Formula = "(f / divisor / oversampling - baud) / baud",
        };

    private static string? AnotherRate(Worked<decimal> error) =>
        Math.Abs(error.Value) <= MostError ? null : $"{error.Arithmetic}: another rate altogether and no error of this one";
}
