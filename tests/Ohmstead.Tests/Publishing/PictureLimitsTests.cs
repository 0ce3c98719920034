using System.Text;
using Ohmstead.Pictures;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Publishing;

public sealed class PictureLimitsTests
{
    [Theory]
    [InlineData("a.jpg", PictureForm.Jpeg)]
    [InlineData("A.JPEG", PictureForm.Jpeg)]
    public void A_header_behind_other_segments_is_found(string name, PictureForm form) =>
        Assert.Equal(new PictureHeader(form, 320, 200), Read(CameraPicture.WithGps(CameraPicture.Jpeg(320, 200), 6), name).Header);

    [Fact]
    public void A_picture_that_claims_to_fill_the_memory_is_refused_before_it_is_opened() =>
        Assert.Equal(
            "it claims 60000 by 60000 pixels, at most 40000000 are opened",
            Read(CameraPicture.Bomb(60_000, 60_000), "a.png").Refusal
        );

    [Fact]
    public void A_width_that_no_picture_has_is_refused() =>
        Assert.Equal("it claims a width or a height that no picture has", Read(CameraPicture.Bomb(uint.MaxValue, 1), "a.png").Refusal);

    [Fact]
    public void A_name_that_says_something_else_than_the_file_is_refused() =>
        Assert.Equal("it is named .jpg and is a PNG picture", Read(CameraPicture.Png(8, 8), "a.jpg").Refusal);

    [Fact]
    public void A_drawing_that_can_hold_scripts_is_refused() =>
        Assert.Equal(
            "it is an SVG drawing, which can hold scripts",
            Read(Encoding.ASCII.GetBytes("<svg xmlns=\"http://www.w3.org/2000/svg\"><script>alert(1)</script></svg>"), "a.svg").Refusal
        );

    [Theory]
    [InlineData("<html></html>", "its first bytes are those of no PNG, JPEG, GIF or WebP picture")]
    [InlineData("version https://git-lfs.github.com/spec/v1\noid sha256:0\nsize 1\n", "it is a pointer to a file that was not fetched")]
    [InlineData("", "its first bytes are those of no PNG, JPEG, GIF or WebP picture")]
    public void What_is_no_picture_is_refused(string text, string why) =>
        Assert.Equal(why, Read(Encoding.ASCII.GetBytes(text), "a.png").Refusal);

    [Fact]
    public void A_file_that_is_too_long_is_refused_unread()
    {
        using var file = new MemoryStream(CameraPicture.Png(8, 8));
        Assert.Equal(
            "it has " + file.Length + " bytes, at most 10 are opened",
            new PictureLimits(10, 1000, 1000).Read(file, "a.png").Refusal
        );
        Assert.Equal(0, file.Position);
    }

    private static (PictureHeader? Header, string? Refusal) Read(byte[] bytes, string name)
    {
        using var file = new MemoryStream(bytes);
        return PictureLimits.Usual.Read(file, name).Is(out var header, out var why) ? (header, null) : (null, why);
    }
}
