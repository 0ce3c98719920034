namespace Ohmstead.Electronics;

/// <summary>Where a rule or a figure comes from, so that whoever reads a result can look it up.</summary>
/// <param name="Title">The standard, handbook, paper or data sheet, with its edition where it has one.</param>
/// <param name="Clause">The clause, table or page, or null when the whole is meant.</param>
/// <param name="Basis">How well the figure is known to stand there.</param>
public sealed record Source(string Title, string? Clause, SourceBasis Basis)
{
    /// <summary>What workshops do, with no normative text behind it.</summary>
    public static Source CommonPractice { get; } = new("common practice", null, SourceBasis.CommonPractice);

    /// <summary>The source on one line, saying when it was not read for this rule: "IEC 60384-4:2016, 2.2.7 (from memory)".</summary>
    public string Text { get; } = Cited(Clause is null ? Title : $"{Title}, {Clause}", Title, Basis);

    /// <inheritdoc cref="Text"/>
    public override string ToString() => Text;

    internal static Source Published(string title, string? clause = null) => new(title, clause, SourceBasis.Published);

    internal static Source FromMemory(string title, string? clause = null) => new(title, clause, SourceBasis.Memory);

    internal static Source Practice(string title) => new(title, null, SourceBasis.CommonPractice);

    private static string Cited(string place, string title, SourceBasis basis) => basis switch
    {
        SourceBasis.Memory => $"{place} (from memory)",
        SourceBasis.CommonPractice when title != "common practice" => $"{place} (common practice)",
        _ => place,
    };
}

/// <summary>How well a figure is known to stand in its source.</summary>
public enum SourceBasis
{
    /// <summary>Read in the published text, or in a copy that quotes it.</summary>
    Published,

    /// <summary>Remembered from the named text; check the paper before calling it normative.</summary>
    Memory,

    /// <summary>Usual in workshops or plain algebra; no normative text.</summary>
    CommonPractice,
}
