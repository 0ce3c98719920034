using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>The file of a board or of a photograph of it has a name that some systems cannot keep.</summary>
public sealed class FileNameUnusable : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "file-name-unusable",
            Severity.Warning,
            "the file of a board or of a photograph of it has a name that some systems cannot keep"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        if (KeptNames.FaultIn(board.Board.Path) is { } fault)
        {
            yield return board.Finding(Description, board.Board.Id.Spot, KeptNames.Say(board.Board.Path, fault), KeptNames.NextStep);
        }

        foreach (var visit in board.Assessment.Visits)
        {
            foreach (var photo in visit.Photos)
            {
                if (KeptNames.FaultIn(photo.File.Value) is { } why && board.Pictures.At(photo.File.Value) == PictureState.Present)
                {
                    yield return board.Finding(Description, photo.File.Spot, KeptNames.Say(photo.File.Value, why), KeptNames.NextStep);
                }
            }
        }
    }
}
