using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>What a correction took the place of, in words: whoever reads what counts should hear what counts no more.</summary>
public static class CorrectionWords
{
    /// <summary>What is told of a reading, and what it had said before it was corrected.</summary>
    public static string Beside(string words, AssessedReading reading) => Told(reading) is { } told ? $"{words}; {told}" : words;

    /// <summary>What is told of a proof, and what it had said before it was corrected.</summary>
    public static string Beside(string words, AssessedProof proof) => Told(proof) is { } told ? $"{words}; {told}" : words;

    /// <summary>What a reading had said before it was corrected, and why; null where it was not.</summary>
    public static string? Told(AssessedReading reading) =>
        reading.Corrects is { } old ? Told(Said(old.Reading), old.Overall, reading.Reading.Because) : null;

    /// <summary>What a proof had said before it was corrected, and why; null where it was not.</summary>
    public static string? Told(AssessedProof proof) =>
        proof.Corrects is { } old ? Told(Said(old.Proof.Values, old.Proof.Result), old.Outcome, proof.Proof.Because) : null;

    private static string Told(string said, VerdictOutcome outcome, Written<string>? because) =>
        $"corrected, it had said {said} ({VerdictWords.Describe(outcome)}): {because?.Value}";

    private static string Said(Reading reading) =>
        Said(reading.Values, reading.Result)
        + reading.Circuit?.Value switch
        {
            Circuit.In => " in circuit",
            Circuit.Out => " out of circuit",
            _ => string.Empty,
        };

    private static string Said(IEnumerable<ReadValue> values, Written<TestResult>? result) =>
        string.Join(
            ", ",
            values
                .Select(static value => $"{VerdictWords.Describe(value.Measured)} {value.Value.Text}")
                .Concat(result is null ? [] : [result.Text])
        );
}
