namespace Ohmstead.Electronics.Markings;

/// <summary>One thing that a print can say.</summary>
/// <param name="As">What it was read as: "resistor, letter code", "date code".</param>
/// <param name="Meaning">What it says then: "4.7 kΩ ±5 %", "1978-W34".</param>
/// <param name="Limits">The limits that follow from it, or null when it gives none.</param>
/// <param name="Rule">How it was read, for a person to follow.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record PrintMeaning(string As, string Meaning, string? Limits, string Rule, Source Source)
{
    /// <summary>The parts that carry such a print.</summary>
    public PrintedOn On { get; init; } = PrintedOn.Any;
}
