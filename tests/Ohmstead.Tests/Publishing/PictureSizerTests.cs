using Ohmstead.Pictures;
using Ohmstead.Tests.Support;
using SkiaSharp;

namespace Ohmstead.Tests.Publishing;

public sealed class PictureSizerTests
{
    private static readonly Room Page = new(1200, 1600);
    private static readonly Room Thumb = new(480, 640);

    [Fact]
    public void Nothing_that_the_camera_wrote_beside_the_picture_is_left()
    {
        var source = CameraPicture.WithGps(CameraPicture.Jpeg(200, 100), 1);
        // 7777/1000 is a rational of the GPS directory; the source must hold it for its absence to say anything.
        byte[] seconds = [0, 0, 0x1E, 0x61, 0, 0, 0x03, 0xE8];
        Assert.Equal((true, true, true), (Holds(source, seconds), Holds(source, "Exif"u8), Holds(source, "Tidewatch"u8)));
        Assert.All(Made(source, PictureForm.Jpeg), made =>
        {
            Assert.Equal(
                (false, false, false),
                (Holds(made.Bytes.Span, seconds), Holds(made.Bytes.Span, "Exif"u8), Holds(made.Bytes.Span, "Tidewatch"u8))
            );
            // Application segments 1 to 15 and comments (ITU-T T.81, B.2.4) hold whatever is no picture; the JFIF segment 0 may stay.
            Assert.DoesNotContain(Markers(made.Bytes.Span), marker => marker is (>= 0xE1 and <= 0xEF) or 0xFE);
        });
    }

    // Exif 2.32, tag 274 (from memory): what stands on the left of the file stands there: 1 left, 2 right, 3 right, 4 left, 5 top, 6 top, 7
    // bottom, 8 bottom.
    [Theory]
    [InlineData(1, 200, 100, "left")]
    [InlineData(2, 200, 100, "right")]
    [InlineData(3, 200, 100, "right")]
    [InlineData(4, 200, 100, "left")]
    [InlineData(5, 100, 200, "top")]
    [InlineData(6, 100, 200, "top")]
    [InlineData(7, 100, 200, "bottom")]
    [InlineData(8, 100, 200, "bottom")]
    public void A_picture_is_turned_upright(ushort orientation, int width, int height, string red)
    {
        var made = Made(CameraPicture.WithGps(CameraPicture.Jpeg(200, 100), orientation), PictureForm.Jpeg)[0];
        Assert.Equal((width, height), (made.Width, made.Height));
        using var bitmap = SKBitmap.Decode(made.Bytes.Span);
        var at = red switch
        {
            "left" => (20, height / 2),
            "right" => (width - 20, height / 2),
            "top" => (width / 2, 20),
            _ => (width / 2, height - 20),
        };
        Assert.InRange(bitmap.GetPixel(at.Item1, at.Item2).Red, 240, 255);
        Assert.InRange(bitmap.GetPixel(width - at.Item1, height - at.Item2).Blue, 240, 255);
    }

    [Theory]
    [InlineData(2400, 1200, 1200, 600, 480, 240)]
    [InlineData(1000, 4000, 400, 1600, 160, 640)]
    [InlineData(300, 200, 300, 200, 300, 200)]
    public void A_picture_is_made_to_fit_and_never_larger_than_it_was(
        int width,
        int height,
        int pageWidth,
        int pageHeight,
        int thumbWidth,
        int thumbHeight
    )
    {
        var made = Made(CameraPicture.Jpeg(width, height), PictureForm.Jpeg);
        Assert.Equal([(pageWidth, pageHeight), (thumbWidth, thumbHeight)], made.Select(picture => (picture.Width, picture.Height)));
    }

    [Fact]
    public void The_same_picture_gives_the_same_bytes()
    {
        var source = CameraPicture.Png(900, 700);
        Assert.Equal(
            Made(source, PictureForm.Png).Select(made => Convert.ToHexString(made.Bytes.Span)),
            Made(source, PictureForm.Png).Select(made => Convert.ToHexString(made.Bytes.Span))
        );
    }

    [Theory]
    [InlineData(PictureForm.Jpeg)]
    [InlineData(PictureForm.Png)]
    public void A_picture_that_is_cut_short_is_refused(PictureForm form)
    {
        var whole = form == PictureForm.Jpeg ? CameraPicture.Jpeg(800, 600) : CameraPicture.Png(800, 600);
        var refusal = PictureSizer.Make(whole[..(whole.Length / 2)], form, Page).Refusal;
        Assert.Equal("it ends before the picture does", refusal);
    }

    [Fact]
    public void Whatever_bytes_are_broken_nothing_worse_than_a_refusal_or_a_picture_comes_of_it()
    {
        foreach (var form in new[] { PictureForm.Jpeg, PictureForm.Png })
        {
            var whole = form == PictureForm.Jpeg ? CameraPicture.Jpeg(60, 40) : CameraPicture.Png(60, 40);
            for (var at = 2; at < whole.Length; at += 7)
            {
                byte[] broken = [.. whole];
                broken[at] ^= 0xFF;
                using var stream = new MemoryStream(broken);
                if (PictureLimits.Usual.Read(stream, form == PictureForm.Jpeg ? "a.jpg" : "a.png").Is(out var header, out var why))
                {
                    var made = PictureSizer.Make(broken, header.Form, Thumb);
                    Assert.True(made.Refusal is not null || made.Value[0].Width > 0);
                }
                else
                {
                    Assert.NotEmpty(why);
                }
            }
        }
    }

    private static IReadOnlyList<SizedPicture> Made(byte[] source, PictureForm form) => PictureSizer.Make(source, form, Page, Thumb).Value;

    private static bool Holds(ReadOnlySpan<byte> file, ReadOnlySpan<byte> words) => file.IndexOf(words) >= 0;

    private static List<byte> Markers(ReadOnlySpan<byte> jpeg)
    {
        var markers = new List<byte>();
        for (var at = 2; at + 4 <= jpeg.Length && jpeg[at + 1] != 0xDA; at += 2 + (jpeg[at + 2] << 8) + jpeg[at + 3])
        {
            Assert.Equal(0xFF, jpeg[at]);
            markers.Add(jpeg[at + 1]);
        }

        Assert.NotEmpty(markers);
        return markers;
    }
}
