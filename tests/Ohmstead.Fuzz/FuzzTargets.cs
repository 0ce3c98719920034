using Ohmstead.Fuzz.Targets;

namespace Ohmstead.Fuzz;

/// <summary>All targets by name.</summary>
internal static class FuzzTargets
{
    public static IReadOnlyList<FuzzTarget> All { get; } =
    [
        new("readers", ReadersTarget.Try),
        new("record", RecordTarget.Try),
        new("shared", SharedFilesTarget.Try),
        new("layout", LayoutTarget.Try),
        new("story", StoryTarget.Try),
        new("table", TableTarget.Try),
        new("quantity", QuantityTarget.Try),
        new("marking", MarkingTarget.Try),
        new("command", CommandTarget.Try),
    ];

    public static FuzzTarget? Named(string name) => All.FirstOrDefault(target => target.Name == name);
}
