using Ohmstead.Records.Editing;
using Ohmstead.Writing;

namespace Ohmstead.Starting;

/// <summary>All that changes when a board gets another number, before anything of it is written.</summary>
/// <param name="Names">The two numbers.</param>
/// <param name="Record">The record of the board, which may move.</param>
/// <param name="Moves">The photographs and folders that move.</param>
/// <param name="Changes">The texts, each at the path it has now, that of the board last.</param>
/// <param name="Told">How many names were replaced in each, by the path it has then.</param>
/// <param name="Left">The lines on which the former number still stands.</param>
internal sealed record RenumberingPlan(
    BoardNames Names,
    PathMove Record,
    IReadOnlyList<PathMove> Moves,
    IReadOnlyList<RecordChange> Changes,
    IReadOnlyList<(string Path, int Count)> Told,
    IReadOnlyList<string> Left
)
{
    /// <summary>The path that a file has afterwards.</summary>
    public string Then(string path) => path == Record.From ? Record.To : path;
}
