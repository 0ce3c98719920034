using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Drifts;

namespace Ohmstead.Commands;

/// <summary>The drifts of one place, line by line.</summary>
internal static class DriftLines
{
    public static IEnumerable<string> List(BoardAssessment board, string at)
    {
        foreach (var drift in board.Drifts.Where(drift => drift.Reference == at))
        {
            yield return $"drift, {DriftWords.Sentence(drift)}";
            foreach (var line in DriftWords.Working(drift, board.LookAgain))
            {
                yield return $"    {line}";
            }
        }
    }
}
