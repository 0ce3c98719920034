namespace Ohmstead.Publishing.Tables;

/// <summary>Something found, done, decided or noted at the bench.</summary>
internal readonly record struct BenchRow(string Board, string? Date, string? By)
{
    /// <summary>What kind of entry it is.</summary>
    public string? Entry { get; init; }

    /// <summary>The part or place.</summary>
    public string? At { get; init; }

    /// <summary>What was seen, done, decided or noted.</summary>
    public string? What { get; init; }

    /// <summary>How much a finding matters.</summary>
    public string? Severity { get; init; }

    /// <summary>The lot that was fitted.</summary>
    public string? Lot { get; init; }

    /// <summary>The reason of a decision, or a remark.</summary>
    public string? Note { get; init; }

    /// <summary>The line of the record.</summary>
    public int Line { get; init; }
}
