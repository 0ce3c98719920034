using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Tests.Shapes;

/// <summary>Every key that a record of any file may hold, however deep.</summary>
internal static class AllKeys
{
    internal static IReadOnlyList<Key> OfClosedLists { get; } =
    [.. FileShapes.All.SelectMany(file => Of(file.Shape, [])).Where(key => key.Words.Count > 0).Distinct()];

    private static IEnumerable<Key> Of(Shape shape, HashSet<Shape> seen) =>
        seen.Add(shape) ? shape.Keys.SelectMany(key => Of(key, seen)) : [];

    private static IEnumerable<Key> Of(Key key, HashSet<Shape> seen) => key.Inner is null ? [key] : Of(key.Inner, seen).Prepend(key);
}
