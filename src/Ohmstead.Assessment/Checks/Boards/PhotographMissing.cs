using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A photograph that a record names is not there, is no picture, or lies outside the collection.</summary>
public sealed class PhotographMissing : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("photograph-missing", Severity.Error, "a photograph that a record names is not there, is no picture, or lies outside the collection");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var photo in board.Assessment.Visits.SelectMany(visit => visit.Photos))
        {
            var (message, next) = board.Pictures.At(photo.File.Value) switch
            {
                PictureState.Missing when board.Pictures.Near(photo.File.Value) is { } near => (Nearest.Told($"there is no picture '{photo.File.Value}'", near), $"write file: {near}, or add the file; capitals count"),
                PictureState.Missing => ($"there is no picture '{photo.File.Value}'", "add the file, or mend the name; capitals count"),
                PictureState.Outside => ($"'{photo.File.Value}' leads out of the collection", $"write a path below the collection, such as photos/{board.Board.Id.Value}/{photo.File.Value.Split('/', '\\')[^1]}"),
                PictureState.NoPicture => ($"'{photo.File.Value}' is no picture", "name a file that ends in .png, .jpg, .jpeg, .gif or .webp and is one"),
                _ => (null, (string?)null),
            };
            if (message is not null)
            {
                yield return board.Finding(Description, photo.File.Spot, message, next);
            }
        }
    }
}
