namespace Ohmstead.Electronics.Hazards;

/// <summary>Something on a board or in a set that can hurt, with the usual cautions.</summary>
/// <param name="Name">A short name to refer to it by.</param>
/// <param name="Title">What it is.</param>
/// <param name="Cautions">The usual cautions, the figures that matter among them. The last is always
/// <see cref="SafetyNotice.Defer"/>.</param>
/// <param name="Source">Where the cautions come from.</param>
public sealed record Hazard(string Name, string Title, IReadOnlyList<string> Cautions, Source Source)
{
    internal static Hazard Create(string name, string title, Source source, params ReadOnlySpan<string> cautions) =>
        new(name, title, [.. cautions, SafetyNotice.Defer], source);
}
