using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Publishing.Tables;

/// <summary>What all values of a reading or proof have in common.</summary>
internal sealed record ReadingRow(string Board, string? Date, string? By, string Name, string Kind)
{
    /// <summary>Whether the part was in the circuit.</summary>
    public string? Circuit { get; init; }

    /// <summary>The instrument.</summary>
    public string? Instrument { get; init; }

    /// <summary>The line of the record.</summary>
    public required string Line { get; init; }
}

/// <summary>One value of a reading or proof, with its verdict.</summary>
internal readonly record struct ReadValueRow(ReadingRow Of, string Measured, string Written, VerdictOutcome Outcome)
{
    /// <summary>The value as a figure.</summary>
    public string? Value { get; init; }

    /// <summary>The unit of the figures.</summary>
    public string? Unit { get; init; }

    /// <summary>The expanded uncertainty of the value.</summary>
    public string? Uncertainty { get; init; }

    /// <summary>The lower end of the limit that governs.</summary>
    public string? Low { get; init; }

    /// <summary>Its upper end.</summary>
    public string? High { get; init; }

    /// <summary>Which kind of limit that is.</summary>
    public string? LimitKind { get; init; }

    /// <summary>Where it comes from.</summary>
    public string? LimitFrom { get; init; }

    /// <summary>The probability that the true value is inside.</summary>
    public string? Probability { get; init; }
}
