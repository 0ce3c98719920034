using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Parts;

/// <summary>How far a divided clock is off.</summary>
internal static class BaudErrorRule
{
    private static readonly ReckonInput Clock = ReckonInput.Of("clock", Dimension.Frequency, "the clock");
    private static readonly ReckonInput Divisor = ReckonInput.Count("divisor", "what it is divided by");
    private static readonly ReckonInput Oversampling = ReckonInput.Count("oversampling", "clocks for each bit").Usually("16");
    private static readonly ReckonInput Baud = ReckonInput.Count("baud", "the baud rate meant");

    internal static ReckonRule Rule { get; } = new(
        "baud-error", "how far the baud rate of a divided clock is off",
        [Clock, Divisor, Oversampling, Baud],
        "clock=2MHz divisor=13 baud=9600",
        given => Answers.All(Answers.Line("error", PartsPerMillion.BaudError(given[Clock], given[Divisor], given[Oversampling], given[Baud]), ShownAs.Percent)
            .Remarking("both ends together must stay within about 2 %")))
    {
        Formula = "(f / divisor / oversampling - baud) / baud",
    };
}
