using Ohmstead.Assessment.Checks.Basis;

namespace Ohmstead.Assessment.Tests.Support;

/// <summary>Pictures that are there because a case lists them.</summary>
internal sealed class ListedPictures(IReadOnlySet<string> present) : IPictures
{
    internal ListedPictures(IEnumerable<string> present)
        : this(present.ToHashSet(StringComparer.Ordinal)) { }

    public IEnumerable<string> NamesInFolder(string path)
    {
        var folder = path[..(path.LastIndexOf('/') + 1)];
        return present
            .Where(name => name.StartsWith(folder, StringComparison.Ordinal))
            .Select(name => name[folder.Length..])
            .Order(StringComparer.Ordinal);
    }

    // A case says by the name of a picture what is the matter with it.
    public PictureFault? Fault(string path) =>
        Path.GetFileNameWithoutExtension(path) switch
        {
            "cut" => new("it ends before the picture does", "take it from the camera again"),
            _ => null,
        };

    public PictureState At(string path) =>
        path.Split('/').Contains("..", StringComparer.Ordinal) ? PictureState.Outside
        : path.Contains('%', StringComparison.Ordinal) ? PictureState.NotAddressable
        : !present.Contains(path) ? PictureState.Missing
        : Path.GetExtension(path) is ".png" or ".jpg" or ".svg" ? PictureState.Present
        : PictureState.NoPicture;
}
