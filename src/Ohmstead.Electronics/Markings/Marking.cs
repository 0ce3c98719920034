using System.Collections.Immutable;

namespace Ohmstead.Electronics.Markings;

/// <summary>All that a marking can mean. There is at least one reading; where there are more, the marking alone cannot decide and a
/// measurement must.</summary>
/// <typeparam name="T">What a reading gives.</typeparam>
/// <param name="Readings">The readings, the most usual one first.</param>
public sealed record Marking<T>(ImmutableArray<MarkingReading<T>> Readings)
    where T : notnull
{
    /// <summary>True when the marking has one meaning only.</summary>
    public bool IsCertain => Readings.Length == 1;

    internal static Parsed<Marking<T>> Read(params ReadOnlySpan<MarkingReading<T>> readings) =>
        Parsed<Marking<T>>.From(new Marking<T>([.. readings]));

    internal static Parsed<Marking<T>> Failed(
        ReadOnlySpan<char> text,
        string message,
        string? next = null,
        ParseFaultKind kind = ParseFaultKind.NotUnderstood
    ) => Parsed<Marking<T>>.Failed(new ParseFault(text.IsEmpty ? ParseFaultKind.Empty : kind, 0, text.Length, message, next));
}
