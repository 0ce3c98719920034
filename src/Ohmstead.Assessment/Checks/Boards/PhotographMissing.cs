using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A photograph that a record names is not there, is no picture, or lies outside the collection.</summary>
public sealed class PhotographMissing : IBoardCheck
{
    // A board has its pictures in one folder; whoever names a hundred gets no advice on the names in the rest.
    private const int MostFolders = 10;

    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "photograph-missing",
            Severity.Error,
            "a photograph that a record names is not there, is no picture, or lies outside the collection",
            CheckEffect.HoldsBackAsError,
            "the record names evidence that is not there"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        var folders = new Dictionary<string, KnownNames>(StringComparer.Ordinal);
        foreach (var photo in board.Assessment.Visits.SelectMany(visit => visit.Photos))
        {
            var (message, next) = board.Pictures.At(photo.File.Value) switch
            {
                PictureState.Missing when Near(board.Pictures, photo.File.Value, folders) is { } near => (
                    Nearest.Told($"there is no picture '{photo.File.Value}'", near),
                    $"write file: {near}, or add the file; capitals count"
                ),
                PictureState.Missing => (
                    $"there is no picture '{photo.File.Value}'",
                    "write file: with the path from the folder of the collection, or add the file there; capitals count"
                ),
                PictureState.Outside => (
                    $"'{photo.File.Value}' leads out of the collection",
                    $"write a path below the collection, such as photos/{board.Board.Id.Value}/{photo.File.Value.Split('/', '\\')[^1]}"
                ),
                PictureState.NotAddressable => (
                    $"'{photo.File.Value}' holds a character that an address or another system takes for something else",
                    "give the file a name without \\ : % and control characters, and write that one"
                ),
                PictureState.NoPicture => (
                    $"'{photo.File.Value}' is no picture",
                    "name a file that ends in .png, .jpg, .jpeg, .gif or .webp and is one"
                ),
                _ => (null, (string?)null),
            };
            if (message is not null)
            {
                yield return board.Finding(Description, photo.File.Spot, message, next);
            }
        }
    }

    private static string? Near(IPictures pictures, string path, Dictionary<string, KnownNames> folders)
    {
        var folder = path[..(path.LastIndexOf('/') + 1)];
        if (!folders.TryGetValue(folder, out var names))
        {
            if (folders.Count == MostFolders)
            {
                return null;
            }

            folders.Add(folder, names = new(pictures.NamesInFolder(path)));
        }

        return names.NearestTo(path[folder.Length..]) is { } name ? folder + name : null;
    }
}
