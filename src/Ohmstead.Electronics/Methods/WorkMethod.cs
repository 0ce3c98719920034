using Ohmstead.Electronics.Hazards;

namespace Ohmstead.Electronics.Methods;

/// <summary>A way of cleaning, drying, soldering or handling, with its usual values and cautions.</summary>
/// <param name="Name">A short name to refer to it by.</param>
/// <param name="Title">What it is for.</param>
/// <param name="Values">Its usual values, each as what it is of and what it is: temperatures in °C, times in s or h.</param>
/// <param name="Cautions">The usual cautions. The last is always <see cref="SafetyNotice.Defer"/>.</param>
/// <param name="Source">Where the values come from.</param>
public sealed record WorkMethod(
    string Name,
    string Title,
    IReadOnlyList<(string Of, string Value)> Values,
    IReadOnlyList<string> Cautions,
    Source Source
)
{
    /// <summary>Other words that records use for it.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>True when the board must dry afterwards, before any power.</summary>
    public bool MustDry { get; init; }

    /// <summary>How long it usually dries at room temperature, in hours, where it must dry and nothing else is known.</summary>
    public decimal DryHours { get; init; } = MethodCatalogue.DryAtRoomHours;

    internal static WorkMethod Create(
        string name,
        string title,
        Source source,
        (string Of, string Value)[] values,
        params ReadOnlySpan<string> cautions
    ) => new(name, title, values, [.. cautions, SafetyNotice.Defer], source);
}
