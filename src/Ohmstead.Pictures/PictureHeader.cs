using System.Buffers.Binary;
using Ohmstead.Electronics;

namespace Ohmstead.Pictures;

/// <summary>What the first bytes of a picture say. Nothing is decoded, so whatever size they claim costs nothing.</summary>
/// <remarks>Sources: PNG (ISO/IEC 15948), JPEG (ITU-T T.81), GIF89a, WebP (RFC 9649).</remarks>
/// <param name="Form">How it is kept.</param>
/// <param name="Width">Its width in pixels, before it is turned.</param>
/// <param name="Height">Its height in pixels, before it is turned.</param>
public sealed record PictureHeader(PictureForm Form, int Width, int Height)
{
    private const int Longest = 64;
    private const int MostSegments = 4_096;

    /// <summary>How many pixels it has.</summary>
    public long Pixels => (long)Width * Height;

    /// <summary>Reads the header of a picture.</summary>
    /// <param name="file">The file from its beginning; it can seek.</param>
    public static Outcome<PictureHeader> Read(Stream file)
    {
        Span<byte> start = stackalloc byte[Longest];
        var read = start[..file.ReadAtLeast(start, Longest, throwOnEndOfStream: false)];
        if (read.StartsWith((ReadOnlySpan<byte>)[0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]))
        {
            return read.Length < 24
                ? Cut
                : Create(
                    PictureForm.Png,
                    BinaryPrimitives.ReadUInt32BigEndian(read[16..]),
                    BinaryPrimitives.ReadUInt32BigEndian(read[20..])
                );
        }

        if (read.StartsWith("GIF87a"u8) || read.StartsWith("GIF89a"u8))
        {
            return read.Length < 10
                ? Cut
                : Create(
                    PictureForm.Gif,
                    BinaryPrimitives.ReadUInt16LittleEndian(read[6..]),
                    BinaryPrimitives.ReadUInt16LittleEndian(read[8..])
                );
        }

        if (read.Length >= 12 && read.StartsWith("RIFF"u8) && read[8..12].SequenceEqual("WEBP"u8))
        {
            return read.Length < 30 ? Cut : Webp(read);
        }

        if (read.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]))
        {
            return Jpeg(file);
        }

        return Outcome<PictureHeader>.Refused(
            read.StartsWith("version https://git-lfs"u8)
                ? "it is a pointer to a file that was not fetched"
                : "its first bytes are those of no PNG, JPEG, GIF or WebP picture"
        );
    }

    private static Outcome<PictureHeader> Cut => Outcome<PictureHeader>.Refused("it ends before the picture does");

    private static Outcome<PictureHeader> Create(PictureForm form, uint width, uint height) =>
        width is 0 or > int.MaxValue || height is 0 or > int.MaxValue
            ? Outcome<PictureHeader>.Refused("it claims a width or a height that no picture has")
            : Outcome<PictureHeader>.From(new(form, (int)width, (int)height));

    private static Outcome<PictureHeader> Webp(ReadOnlySpan<byte> read)
    {
        var kind = read[12..16];
        if (kind.SequenceEqual("VP8X"u8))
        {
            return Create(PictureForm.Webp, 1u + Three(read[24..]), 1u + Three(read[27..]));
        }

        if (kind.SequenceEqual("VP8L"u8))
        {
            var bits = BinaryPrimitives.ReadUInt32LittleEndian(read[21..]);
            return Create(PictureForm.Webp, 1u + (bits & 0x3FFF), 1u + ((bits >> 14) & 0x3FFF));
        }

        return Create(
            PictureForm.Webp,
            BinaryPrimitives.ReadUInt16LittleEndian(read[26..]) & 0x3FFFu,
            BinaryPrimitives.ReadUInt16LittleEndian(read[28..]) & 0x3FFFu
        );
    }

    private static uint Three(ReadOnlySpan<byte> bytes) => bytes[0] | ((uint)bytes[1] << 8) | ((uint)bytes[2] << 16);

    // The size stands in the first frame header, behind segments that each say how long they are.
    private static Outcome<PictureHeader> Jpeg(Stream file)
    {
        Span<byte> segment = stackalloc byte[9];
        file.Position = 2;
        for (var count = 0; count < MostSegments; count++)
        {
            if (file.ReadAtLeast(segment, segment.Length, throwOnEndOfStream: false) < segment.Length)
            {
                return Cut;
            }

            var length = BinaryPrimitives.ReadUInt16BigEndian(segment[2..]);
            switch (segment[1])
            {
                case var _ when segment[0] != 0xFF:
                    return Outcome<PictureHeader>.Refused("it begins as a JPEG picture and does not go on as one");
                case 0xFF:
                    file.Position -= segment.Length - 1;
                    break;
                case >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC):
                    return Create(
                        PictureForm.Jpeg,
                        BinaryPrimitives.ReadUInt16BigEndian(segment[7..]),
                        BinaryPrimitives.ReadUInt16BigEndian(segment[5..])
                    );
                case 0xD9 or 0xDA:
                case var _ when length < 2:
                    return Outcome<PictureHeader>.Refused("it begins as a JPEG picture and does not go on as one");
                default:
                    file.Position += 2 + length - segment.Length;
                    break;
            }
        }

        return Outcome<PictureHeader>.Refused("it begins as a JPEG picture and does not go on as one");
    }
}
