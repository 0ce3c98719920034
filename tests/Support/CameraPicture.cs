using System.Buffers.Binary;
using SkiaSharp;

namespace Ohmstead.Tests.Support;

/// <summary>A picture as a camera writes it, made for a test: red on the left and blue on the right, with whatever is asked for beside
/// it.</summary>
internal static class CameraPicture
{
    /// <summary>A JPEG picture.</summary>
    public static byte[] Jpeg(int width, int height) => Encoded(width, height, SKEncodedImageFormat.Jpeg);

    /// <summary>A PNG picture.</summary>
    public static byte[] Png(int width, int height) => Encoded(width, height, SKEncodedImageFormat.Png);

    /// <summary>
    /// The same JPEG with an Exif block (Exif 2.32, from memory): how the camera was held, its serial number, and a GPS directory with 51°
    /// 30' N; and with a comment that names the place.
    /// </summary>
    /// <param name="jpeg">The picture.</param>
    /// <param name="orientation">Tag 274, from 1 to 8.</param>
    public static byte[] WithGps(byte[] jpeg, ushort orientation)
    {
        // TIFF header, directory 0 with two entries at 8, GPS directory with two entries at 38, three rationals at 68.
        var tiff = new byte[92];
        "MM\0*"u8.CopyTo(tiff);
        BinaryPrimitives.WriteUInt32BigEndian(tiff.AsSpan(4), 8);
        BinaryPrimitives.WriteUInt16BigEndian(tiff.AsSpan(8), 2);
        Entry(tiff.AsSpan(10), 0x0112, 3, 1, (uint)orientation << 16);
        Entry(tiff.AsSpan(22), 0x8825, 4, 1, 38);
        BinaryPrimitives.WriteUInt16BigEndian(tiff.AsSpan(38), 2);
        Entry(tiff.AsSpan(40), 1, 2, 2, (uint)'N' << 24);
        Entry(tiff.AsSpan(52), 2, 5, 3, 68);
        uint[] degrees = [51, 1, 30, 1, 7777, 1000];
        for (var i = 0; i < degrees.Length; i++)
        {
            BinaryPrimitives.WriteUInt32BigEndian(tiff.AsSpan(68 + (4 * i)), degrees[i]);
        }

        return
        [
            .. jpeg.AsSpan(0, 2),
            .. Segment(0xE1, [.. "Exif\0\0"u8, .. tiff]),
            .. Segment(0xFE, "taken at the Tidewatch Cottage"u8),
            .. jpeg.AsSpan(2),
        ];
    }

    /// <summary>A PNG picture that claims a size and holds next to nothing.</summary>
    public static byte[] Bomb(uint width, uint height)
    {
        var png = Png(8, 8);
        BinaryPrimitives.WriteUInt32BigEndian(png.AsSpan(16), width);
        BinaryPrimitives.WriteUInt32BigEndian(png.AsSpan(20), height);
        return png;
    }

    private static void Entry(Span<byte> at, ushort tag, ushort type, uint count, uint value)
    {
        BinaryPrimitives.WriteUInt16BigEndian(at, tag);
        BinaryPrimitives.WriteUInt16BigEndian(at[2..], type);
        BinaryPrimitives.WriteUInt32BigEndian(at[4..], count);
        BinaryPrimitives.WriteUInt32BigEndian(at[8..], value);
    }

    private static byte[] Segment(byte marker, ReadOnlySpan<byte> content) =>
        [0xFF, marker, (byte)((content.Length + 2) >> 8), (byte)((content.Length + 2) & 0xFF), .. content];

    private static byte[] Encoded(int width, int height, SKEncodedImageFormat format)
    {
        using var bitmap = new SKBitmap(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(bitmap);
        using var blue = new SKPaint { Color = SKColors.Blue };
        canvas.Clear(SKColors.Red);
        canvas.DrawRect(width / 2f, 0, width, height, blue);
        canvas.Flush();
        using var data = bitmap.Encode(format, 95);
        return data.ToArray();
    }
}
