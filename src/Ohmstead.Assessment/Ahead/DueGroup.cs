using System.Collections.Immutable;

namespace Ohmstead.Assessment.Ahead;

/// <summary>What falls due for one reason: of boards of one design together, anything else alone.</summary>
/// <param name="Kind">Why.</param>
/// <param name="Design">The design of the boards, or null.</param>
/// <param name="Items">What falls due, the oldest first.</param>
public sealed record DueGroup(DueKind Kind, string? Design, ImmutableArray<DueItem> Items)
{
    /// <summary>Puts together what is due for boards of one design; the oldest first.</summary>
    /// <param name="items">What is due, the oldest first.</param>
    /// <param name="designs">The design of a board, or null.</param>
    public static IReadOnlyList<DueGroup> Group(IEnumerable<DueItem> items, Func<string, string?> designs) =>
        [
            .. items
                .GroupBy(item =>
                    DueKinds.IsOfBoard(item.Kind) && designs(item.Whom) is { } design
                        ? (item.Kind, Design: design, What: item.Kind == DueKind.Wait ? item.What : string.Empty)
                        : (item.Kind, Design: null, What: $"{item.At} {item.What}")
                )
                .Select(group => new DueGroup(group.Key.Kind, group.Key.Design, [.. group]))
                .OrderBy(group => group.Items[0].First),
        ];
}
