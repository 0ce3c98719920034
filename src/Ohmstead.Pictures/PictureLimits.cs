using Ohmstead.Electronics;

namespace Ohmstead.Pictures;

/// <summary>How much of a picture is opened. A JPEG may be decoded smaller than it is, the others only whole; hence the two figures. Common
/// practice.</summary>
/// <param name="Bytes">The greatest size of a file, in bytes.</param>
/// <param name="JpegPixels">The most pixels of a JPEG picture.</param>
/// <param name="OtherPixels">The most pixels of any other.</param>
public sealed record PictureLimits(long Bytes, long JpegPixels, long OtherPixels)
{
    /// <summary>The usual limits: 50 MiB, 100 million pixels, 40 million pixels.</summary>
    public static PictureLimits Usual { get; } = new(50 << 20, 100_000_000, 40_000_000);

    /// <summary>Reads the header of a picture within the limits, and holds it against the end of its name.</summary>
    /// <param name="file">The file from its beginning; it can seek.</param>
    /// <param name="name">Its name.</param>
    public Outcome<PictureHeader> Read(Stream file, string name)
    {
        if (file.Length > Bytes)
        {
            return Outcome<PictureHeader>.Refused(FormattableString.Invariant($"it has {file.Length} bytes, at most {Bytes} are opened"));
        }

        if (Path.GetExtension(name).Equals(".svg", StringComparison.OrdinalIgnoreCase))
        {
            return Outcome<PictureHeader>.Refused("it is an SVG drawing, which can hold scripts");
        }

        var said = PictureHeader.Read(file);
        if (!said.Is(out var header, out _))
        {
            return said;
        }

        var most = header.Form == PictureForm.Jpeg ? JpegPixels : OtherPixels;
        if (header.Pixels > most)
        {
            return Outcome<PictureHeader>.Refused(
                FormattableString.Invariant($"it claims {header.Width} by {header.Height} pixels, at most {most} are opened")
            );
        }

        var form = Path.GetExtension(name).ToUpperInvariant() switch
        {
            ".PNG" => PictureForm.Png,
            ".JPG" or ".JPEG" => PictureForm.Jpeg,
            ".GIF" => PictureForm.Gif,
            ".WEBP" => PictureForm.Webp,
            _ => (PictureForm?)null,
        };
        return form == header.Form
            ? said
            : Outcome<PictureHeader>.Refused($"it is named {Path.GetExtension(name)} and is {Words(header.Form)}");
    }

    private static string Words(PictureForm form) =>
        form switch
        {
            PictureForm.Png => "a PNG picture",
            PictureForm.Jpeg => "a JPEG picture",
            PictureForm.Gif => "a GIF picture",
            _ => "a WebP picture",
        };
}
