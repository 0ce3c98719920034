using System.Collections.Immutable;
using Ohmstead.Assessment.History;

namespace Ohmstead.Assessment.Acts;

/// <summary>Boards of one design and one state about which the same is to be done.</summary>
/// <param name="State">Their state.</param>
/// <param name="Design">Their design, or null where they have none.</param>
/// <param name="Do">What is to be done.</param>
/// <param name="Acts">The act of each, in order of their numbers.</param>
public sealed record ActGroup(BoardState State, string? Design, string Do, ImmutableArray<BoardAct> Acts)
{
    /// <summary>Why: of the first of them where they differ in that.</summary>
    public string Why =>
        Acts.All(act => act.Why == Acts[0].Why) ? Acts[0].Why : $"{Acts[0].Board.Id.Value}: {Acts[0].Why}; the others in their own figures";

    /// <summary>Puts together what is alike: what presses most first, within a state what many boards share before what one has.</summary>
    public static IReadOnlyList<ActGroup> Group(IEnumerable<BoardAct> acts) =>
        [
            .. acts.GroupBy(act => (act.Board.State, act.Board.Design, act.Do))
                .Select(group => new ActGroup(
                    group.Key.State,
                    group.Key.Design,
                    group.Key.Do,
                    [.. group.OrderBy(act => act.Board.Id.Value, StringComparer.Ordinal)]
                ))
                .OrderBy(group => BoardStates.Place(group.State))
                .ThenByDescending(group => group.Acts.Length)
                .ThenBy(group => group.Acts[0].Board.Id.Value, StringComparer.Ordinal),
        ];
}
