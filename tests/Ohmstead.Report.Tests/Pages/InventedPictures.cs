using Ohmstead.Report.Frame;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>Pictures that are all there, but for those named as damaged.</summary>
internal sealed class InventedPictures : IReportPictures
{
    public ShownPicture? Find(string path) =>
        path.Contains("damaged", StringComparison.Ordinal)
            ? null
            : new(new(path + ".0f.jpg", 1200, 900), new(path + ".0f.small.jpg", 480, 360));
}
