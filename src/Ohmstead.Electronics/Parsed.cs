using System.Diagnostics.CodeAnalysis;

namespace Ohmstead.Electronics;

/// <summary>What reading a text gave: a value, or the fault that stopped it. Bad input is a value here, never an exception.</summary>
/// <typeparam name="T">The type of the value read.</typeparam>
public readonly struct Parsed<T>
    where T : notnull
{
    private readonly T? value;

    private Parsed(T? value, ParseFault? fault)
    {
        this.value = value;
        Fault = fault;
    }

    /// <summary>The fault, or null when the text was understood.</summary>
    public ParseFault? Fault { get; }

    /// <summary>The value. Throws when there is a fault: ask <see cref="Is"/> first.</summary>
    public T Value =>
        Fault is null && value is not null ? value : throw new InvalidOperationException("There is no value: the text was not understood.");

    /// <summary>A value that was understood.</summary>
    public static Parsed<T> From(T value) => new(value, null);

    /// <summary>A text that was not understood.</summary>
    public static Parsed<T> Failed(ParseFault fault) => new(default, fault);

    /// <summary>True, with the value, when the text was understood; false, with the fault, when not.</summary>
    public bool Is([NotNullWhen(true)] out T? read, [NotNullWhen(false)] out ParseFault? fault)
    {
        read = value;
        fault = Fault;
        return fault is null;
    }
}

/// <summary>Why a text was not understood, and what to do about it.</summary>
/// <param name="Kind">What kind of fault it is.</param>
/// <param name="Offset">Where in the text it starts, in UTF-16 units from 0.</param>
/// <param name="Length">How many UTF-16 units it spans; at least 1 unless the text is empty.</param>
/// <param name="Message">One line in lower case without a full stop: what was found and what was expected.</param>
/// <param name="NextStep">What to write instead, or null when nothing certain can be said.</param>
public sealed record ParseFault(ParseFaultKind Kind, int Offset, int Length, string Message, string? NextStep);

/// <summary>The kinds of fault a text can have.</summary>
public enum ParseFaultKind
{
    /// <summary>Nothing was written.</summary>
    Empty,

    /// <summary>The text is no number, code or word that belongs here.</summary>
    NotUnderstood,

    /// <summary>A comma: it can be a decimal comma or a thousands separator.</summary>
    Comma,

    /// <summary>A number without a unit where one is needed.</summary>
    UnitMissing,

    /// <summary>A unit that is not known.</summary>
    UnitUnknown,

    /// <summary>A known unit of another quantity (ohm where farad is expected).</summary>
    WrongDimension,

    /// <summary>A character that looks like a digit, a sign or a letter but is another one.</summary>
    LookAlike,

    /// <summary>A value that is too large, too small, too exact or impossible for its quantity.</summary>
    OutOfRange,

    /// <summary>A value that can be read in more than one way, and must say which is meant.</summary>
    Ambiguous,
}
