using Ohmstead.Electronics;
using SkiaSharp;

namespace Ohmstead.Pictures;

/// <summary>Makes pictures fit for pages. They are decoded, turned upright and encoded anew, so nothing that a camera wrote beside the
/// picture is left: no place, no serial number, no comment.</summary>
public static class PictureSizer
{
    private const int JpegQuality = 82;

    /// <summary>Why no picture at all can be made.</summary>
    public const string NoLibrary = "the library that opens pictures does not run on this machine";

    /// <summary>What the bytes of a made picture depend on besides its source: another text, other bytes.</summary>
    public static string Settings { get; } =
        FormattableString.Invariant($"SkiaSharp {typeof(SKBitmap).Assembly.GetName().Version}, JPEG {JpegQuality}");

    /// <summary>The end of the name of what is made from a picture: photographs become JPEG, drawings PNG.</summary>
    public static string ExtensionFor(PictureForm form) => form is PictureForm.Jpeg or PictureForm.Webp ? ".jpg" : ".png";

    /// <summary>Makes a picture in several sizes.</summary>
    /// <param name="source">The file, looked at by <see cref="PictureLimits.Read"/> before.</param>
    /// <param name="form">How it is kept.</param>
    /// <param name="rooms">The room for each.</param>
    public static Outcome<IReadOnlyList<SizedPicture>> Make(byte[] source, PictureForm form, params IReadOnlyList<Room> rooms)
    {
        try
        {
            return Decoded(source, form, rooms);
        }
        catch (Exception problem) when (problem is TypeInitializationException or DllNotFoundException or BadImageFormatException)
        {
            return Refused(NoLibrary);
        }
    }

    private static Outcome<IReadOnlyList<SizedPicture>> Decoded(byte[] source, PictureForm form, IReadOnlyList<Room> rooms)
    {
        using var data = SKData.CreateCopy(source);
        using var codec = SKCodec.Create(data);
        if (codec is null)
        {
            return Refused("it is damaged and cannot be opened");
        }

        var isTurned =
            codec.EncodedOrigin
            is SKEncodedOrigin.LeftTop
                or SKEncodedOrigin.RightTop
                or SKEncodedOrigin.RightBottom
                or SKEncodedOrigin.LeftBottom;
        var upright = isTurned ? new SKSizeI(codec.Info.Height, codec.Info.Width) : new SKSizeI(codec.Info.Width, codec.Info.Height);
        SKSizeI[] sizes = [.. rooms.Select(room => Fit(upright, room))];
        using var srgb = SKColorSpace.CreateSrgb();
        var scale = sizes.Max(size => (float)size.Width / upright.Width);
        var decoded = codec.GetScaledDimensions(scale);
        var info = new SKImageInfo(
            decoded.Width,
            decoded.Height,
            SKColorType.Rgba8888,
            codec.Info.AlphaType == SKAlphaType.Opaque ? SKAlphaType.Opaque : SKAlphaType.Premul,
            srgb
        );
        using var bitmap = new SKBitmap();
        if (!bitmap.TryAllocPixels(info))
        {
            return Refused("there is no room to open it");
        }

        switch (codec.GetPixels(info, bitmap.GetPixels()))
        {
            case SKCodecResult.Success:
                break;
            case SKCodecResult.IncompleteInput:
                return Refused("it ends before the picture does");
            default:
                return Refused("it is damaged and cannot be opened");
        }

        bitmap.SetImmutable();
        using var image = SKImage.FromBitmap(bitmap);
        var made = new List<SizedPicture>(sizes.Length);
        foreach (var size in sizes)
        {
            made.Add(Drawn(image, codec.EncodedOrigin, isTurned, size, form, srgb));
        }

        return Outcome<IReadOnlyList<SizedPicture>>.From(made);
    }

    private static SizedPicture Drawn(
        SKImage image,
        SKEncodedOrigin origin,
        bool isTurned,
        SKSizeI size,
        PictureForm form,
        SKColorSpace srgb
    )
    {
        var isJpeg = ExtensionFor(form) == ".jpg";
        var info = new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, isJpeg ? SKAlphaType.Opaque : SKAlphaType.Premul, srgb);
        using var target = new SKBitmap(info);
        using (var canvas = new SKCanvas(target))
        {
            canvas.Clear(isJpeg ? SKColors.White : SKColors.Transparent);
            var (width, height) = isTurned ? (size.Height, size.Width) : (size.Width, size.Height);
            canvas.SetMatrix(Turn(origin, width, height));
            canvas.DrawImage(image, new SKRect(0, 0, width, height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        }

        // Without a colour space no profile is written; sRGB is what a browser takes it for.
        using var pixels = new SKPixmap(info.WithColorSpace(null), target.GetPixels());
        using var file = isJpeg
            ? pixels.Encode(new SKJpegEncoderOptions(JpegQuality))
            : pixels.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.AllFilters, 9));
        return new(file?.ToArray() ?? throw new InvalidOperationException("pixels in memory were not encoded"), size.Width, size.Height);
    }

    private static SKSizeI Fit(SKSizeI upright, Room room)
    {
        var scale = Math.Min(1m, Math.Min((decimal)room.Width / upright.Width, (decimal)room.Height / upright.Height));
        return new(Math.Max(1, (int)Math.Round(upright.Width * scale)), Math.Max(1, (int)Math.Round(upright.Height * scale)));
    }

    // The eight ways that a camera can be held (Exif 2.32, 4.6.4, tag 274; from memory), for a picture of that size before it is turned.
    private static SKMatrix Turn(SKEncodedOrigin origin, float width, float height) =>
        origin switch
        {
            SKEncodedOrigin.TopRight => new(-1, 0, width, 0, 1, 0, 0, 0, 1),
            SKEncodedOrigin.BottomRight => new(-1, 0, width, 0, -1, height, 0, 0, 1),
            SKEncodedOrigin.BottomLeft => new(1, 0, 0, 0, -1, height, 0, 0, 1),
            SKEncodedOrigin.LeftTop => new(0, 1, 0, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightTop => new(0, -1, height, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightBottom => new(0, -1, height, -1, 0, width, 0, 0, 1),
            SKEncodedOrigin.LeftBottom => new(0, 1, 0, -1, 0, width, 0, 0, 1),
            _ => SKMatrix.Identity,
        };

    private static Outcome<IReadOnlyList<SizedPicture>> Refused(string why) => Outcome<IReadOnlyList<SizedPicture>>.Refused(why);
}
