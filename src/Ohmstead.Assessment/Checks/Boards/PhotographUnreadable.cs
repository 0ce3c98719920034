using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A photograph is there and cannot be shown: it is damaged, too large, or not what its name says.</summary>
public sealed class PhotographUnreadable : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "photograph-unreadable",
            Severity.Warning,
            "a photograph is there and cannot be shown: it is damaged, too large, or not what its name says",
            CheckEffect.Told,
            "a picture that cannot be shown; nothing is judged by it"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var photo in board.Assessment.Visits.SelectMany(visit => visit.Photos))
        {
            if (board.Pictures.At(photo.File.Value) == PictureState.Present && board.Pictures.Fault(photo.File.Value) is { } fault)
            {
                yield return Found(board.Board.Path, photo, fault);
            }
        }
    }

    /// <summary>The finding about a photograph; also for a fault that shows only when the picture is opened for a page.</summary>
    /// <param name="record">The path of the record.</param>
    /// <param name="photo">The photograph.</param>
    /// <param name="fault">Why it cannot be shown.</param>
    public static Finding Found(string record, Photograph photo, PictureFault fault)
    {
        var description = new PhotographUnreadable().Description;
        return new(
            description.Name,
            description.Severity,
            photo.File.Spot.In(record),
            $"'{photo.File.Value}' cannot be shown: {fault.Message}",
            fault.NextStep
        );
    }
}
