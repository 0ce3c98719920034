using System.Security.Cryptography;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Publishing;

/// <summary>The pictures of a report, through the command.</summary>
public sealed class ReportPicturesTests
{
    private const string Front = "photos/SP-0004/c12-print.png";

    [Fact]
    public void A_large_photograph_is_shown_small_and_leads_to_a_larger_one_and_nothing_of_its_place_is_published()
    {
        using var copy = CollectionCopy.Make();
        File.WriteAllBytes(copy.At("photos/SP-0004/front.jpg"), CameraPicture.WithGps(CameraPicture.Jpeg(1600, 1200), 6));
        copy.Write(
            "boards/SP-0004.md",
            copy.Read("boards/SP-0004.md").Replace(Front, "photos/SP-0004/front.jpg", StringComparison.Ordinal)
        );
        Assert.Equal(0, Report(copy).Exit);
        var files = Directory.GetFiles(copy.At("pages/photos/SP-0004"), "*.jpg").Order(StringComparer.Ordinal).ToArray();
        Assert.Equal(2, files.Length);
        Assert.All(files, file => Assert.True(File.ReadAllBytes(file).AsSpan().IndexOf("Exif"u8) < 0));
        Assert.Contains("width=480 height=640 loading=lazy", copy.Read("pages/boards/SP-0004.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_that_was_made_before_is_not_made_again_and_a_changed_one_takes_its_place()
    {
        using var copy = CollectionCopy.Make();
        Report(copy);
        var first = Assert.Single(Directory.GetFiles(copy.At("pages/photos/SP-0004")));
        var again = Report(copy);
        Assert.Equal((0, string.Empty), (again.Exit, again.Error));
        Assert.Contains(" 0 pictures sized", again.Out, StringComparison.Ordinal);
        File.WriteAllBytes(copy.At(Front), CameraPicture.Png(100, 80));
        Assert.Contains(" 1 picture sized", Report(copy).Out, StringComparison.Ordinal);
        var second = Assert.Single(Directory.GetFiles(copy.At("pages/photos/SP-0004")));
        Assert.NotEqual(first, second);
    }

    [Theory]
    [InlineData("cut", "it ends before the picture does")]
    [InlineData("bomb", "it claims 60000 by 60000 pixels")]
    [InlineData("text", "its first bytes are those of no PNG, JPEG, GIF or WebP picture")]
    public void A_picture_that_cannot_be_shown_is_left_out_with_a_finding(string what, string why)
    {
        using var copy = CollectionCopy.Make();
        var png = CameraPicture.Png(300, 200);
        File.WriteAllBytes(
            copy.At(Front),
            what switch
            {
                "cut" => png[..(png.Length / 2)],
                "bomb" => CameraPicture.Bomb(60_000, 60_000),
                _ => [.. "<svg><script>alert(1)</script></svg>"u8],
            }
        );
        Report(copy);
        Assert.Contains(
            $"'{Front}' cannot be shown: {why}",
            System.Net.WebUtility.HtmlDecode(copy.Read("pages/findings.html")),
            StringComparison.Ordinal
        );
        Assert.False(Directory.Exists(copy.At("pages/photos/SP-0004")));
        Assert.DoesNotContain("<img", copy.Read("pages/boards/SP-0004.html"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_report_is_the_same_bytes_whatever_the_zone_the_language_and_the_number_of_workers()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var copy = CollectionCopy.Make();
        for (var i = 0; i < 80; i++)
        {
            copy.Write(
                $"boards/many/SP-9{i:00}.md",
                copy.Read("boards/SP-0004.md").Replace("board: SP-0004", $"board: SP-9{i:00}", StringComparison.Ordinal)
            );
        }

        await Child.ShellAsync("$ohmstead report . --to one --workers 1", copy.Root, ("LC_ALL", "C"), ("TZ", "UTC"));
        await Child.ShellAsync(
            "$ohmstead report . --to two --workers 4",
            copy.Root,
            ("LC_ALL", "tr_TR.UTF-8"),
            ("LANG", "tr_TR.UTF-8"),
            ("TZ", "Pacific/Kiritimati")
        );
        await Child.ShellAsync(
            "$ohmstead report . --to three --workers 7",
            copy.Root,
            ("LC_ALL", "de_CH.UTF-8"),
            ("TZ", "America/St_Johns")
        );
        var one = Digests(copy.At("one"));
        Assert.Contains("boards/SP-979.html", one.Keys);
        Assert.Equal(one, Digests(copy.At("two")));
        Assert.Equal(one, Digests(copy.At("three")));
    }

    private static Run Report(CollectionCopy copy) => Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25");

    private static SortedDictionary<string, string> Digests(string root) =>
        new(
            Directory
                .EnumerateFiles(root, "*", SearchOption.AllDirectories)
                .ToDictionary(
                    file => Path.GetRelativePath(root, file),
                    file => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(file)))
                ),
            StringComparer.Ordinal
        );
}
