using System.Globalization;

namespace Ohmstead.Benchmarks;

/// <summary>What is asked of the benchmark.</summary>
/// <param name="Sizes">Collections of how many boards.</param>
/// <param name="Runs">How often each command runs on a whole collection; the median counts.</param>
/// <param name="Compare">Another command to time on the same folders, or null. <c>{dir}</c> and <c>{out}</c> in it become the collection
/// and an output folder.</param>
/// <param name="Against">The command of the product that it is compared with: check or report.</param>
/// <param name="StagesOnly">True when only the stages inside one process are measured.</param>
/// <param name="Peers">True when the product is measured beside general-purpose programs, and nothing else.</param>
/// <param name="Program">A product that is built already, or null to publish it first.</param>
public sealed record Options(
    IReadOnlyList<int> Sizes,
    int Runs,
    string? Compare,
    string Against,
    bool StagesOnly,
    bool Peers,
    string? Program
)
{
    /// <summary>How the program is called.</summary>
    public const string Usage =
        "[--boards 1000,3000,10000] [--runs 3] [--compare \"COMMAND {dir} {out}\"] [--against check|report] [--stages-only] "
        + "[--peers] [--product PROGRAM]";

    /// <summary>Reads the arguments, or gives null when they make no sense.</summary>
    public static Options? Read(IReadOnlyList<string> arguments)
    {
        var options = new Options([1_000, 3_000, 10_000], 3, null, "check", false, false, null);
        for (var at = 0; at < arguments.Count; at++)
        {
            if (Switch(options, arguments[at]) is { } switched)
            {
                options = switched;
                continue;
            }

            if (++at == arguments.Count || With(options, arguments[at - 1], arguments[at]) is not { } next)
            {
                return null;
            }

            options = next;
        }

        return options;
    }

    private static Options? Switch(Options options, string name) =>
        name switch
        {
            "--stages-only" => options with { StagesOnly = true },
            "--peers" => options with { Peers = true },
            _ => null,
        };

    private static Options? With(Options options, string name, string value) =>
        name switch
        {
            "--boards" when value.Split(',').Select(Number).ToList() is var sizes && !sizes.Contains(0) => options with
            {
                Sizes = [.. sizes.Order()],
            },
            "--runs" when Number(value) is > 0 and var runs => options with { Runs = runs },
            "--compare" => options with { Compare = value },
            "--against" when value is "check" or "report" => options with { Against = value },
            "--product" => options with { Program = Path.GetFullPath(value) },
            _ => null,
        };

    private static int Number(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number < 100_000 ? number : 0;
}
