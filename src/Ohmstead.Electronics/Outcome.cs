using System.Diagnostics.CodeAnalysis;

namespace Ohmstead.Electronics;

/// <summary>A computed value, or the reason why there is none. What a record can contain never throws; it is refused with a
/// reason.</summary>
/// <remarks>The default value is a refusal.</remarks>
/// <typeparam name="T">The type of the value.</typeparam>
public readonly struct Outcome<T>
    where T : notnull
{
    private readonly T? value;
    private readonly bool computed;
    private readonly string? refusal;

    private Outcome(T? value, bool computed, string? refusal)
    {
        this.value = value;
        this.computed = computed;
        this.refusal = refusal;
    }

    /// <summary>Why there is no value, on one line; null when there is one.</summary>
    public string? Refusal => computed ? null : refusal ?? "nothing was computed";

    /// <summary>The value. Throws when it was refused: ask <see cref="Is"/> first.</summary>
    public T Value => computed && value is not null ? value : throw new InvalidOperationException($"There is no value: {Refusal}.");

    /// <summary>A value that was computed.</summary>
    public static Outcome<T> From(T value) => new(value, true, null);

    /// <summary>No value, and why: lower case, no full stop, naming what was found and what was expected.</summary>
    public static Outcome<T> Refused(string reason) => new(default, false, reason);

    /// <summary>True, with the value, when there is one; false, with the reason, when not.</summary>
    public bool Is([NotNullWhen(true)] out T? computedValue, [NotNullWhen(false)] out string? reason)
    {
        computedValue = value;
        reason = Refusal;
        return computed;
    }

    /// <summary>The same outcome with its value turned into another; a refusal stays what it is, and an overflow on the way becomes
    /// one.</summary>
    public Outcome<TOther> Then<TOther>(Func<T, TOther> turn)
        where TOther : notnull
    {
        return Is(out T? known, out string? reason)
            ? default(Domain).Flatten((turn, known), static all => Outcome<TOther>.From(all.turn(all.known)))
            : Outcome<TOther>.Refused(reason);
    }
}
