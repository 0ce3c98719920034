namespace Ohmstead.Meters;

/// <summary>A meter that tells what it shows.</summary>
internal interface IMeter : IDisposable
{
    /// <summary>What it shows, taken after this was asked.</summary>
    /// <param name="isStopped">Asked again and again while it is waited for: whether nobody wants to wait any more.</param>
    MeterAnswer Read(Func<bool> isStopped);
}

/// <summary>What a meter told, or why there is nothing to take.</summary>
/// <param name="Reading">The reading; null where there is none.</param>
/// <param name="Fault">Why there is none, safe to print.</param>
internal sealed record MeterAnswer(MeterReading? Reading, string? Fault)
{
    /// <summary>A reading.</summary>
    public static MeterAnswer With(MeterReading reading) => new(reading, null);

    /// <summary>No reading.</summary>
    public static MeterAnswer Without(string fault) => new(null, fault);
}

/// <summary>What a meter told of one thing that it measured.</summary>
/// <param name="Values">Keys of a record and their values as a record has them, what was measured first.</param>
internal sealed record MeterReading(IReadOnlyList<(string Key, string Value)> Values)
{
    /// <summary>In a line.</summary>
    public string Told => string.Join(", ", Values.Select(value => $"{value.Key.Replace('_', ' ')} {value.Value}"));
}
