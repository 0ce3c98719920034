using Ohmstead.Report.Addresses;

namespace Ohmstead.Report.Frame;

/// <summary>The pictures of a report: each file of the collection that can be shown, made fit for pages.</summary>
public interface IReportPictures
{
    /// <summary>What stands in the report for a picture of the collection; null when it is not there or cannot be shown.</summary>
    /// <param name="path">Its path below the root of the collection, safe by its words (<see cref="PictureNames"/>).</param>
    ShownPicture? Find(string path);
}

/// <summary>A picture of the report in two sizes.</summary>
/// <param name="Large">The one to look at closely.</param>
/// <param name="Small">The one on the page.</param>
public sealed record ShownPicture(PictureFile Large, PictureFile Small);

/// <summary>One file of a picture.</summary>
/// <param name="Path">Its path from the root of the report.</param>
/// <param name="Width">Its width in pixels.</param>
/// <param name="Height">Its height in pixels.</param>
public sealed record PictureFile(string Path, int Width, int Height);
