using Ohmstead.Running;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>Photographs are copied under names of their own and entered with what they show: all of them, or none.</summary>
public sealed class PhotoCommandTests
{
    private const string Board = "boards/SP-0007.md";
    private const string Visit =
        "  - date: 2026-11-25\n    by: RK\n    photos:\n"
        + "      - { file: photos/SP-0007/2026-11-25-1.png, shows: C3 before }\n"
        + "      - { file: photos/SP-0007/2026-11-25-2.png, shows: \"C3 after, with the clip\" }\n";

    [Fact]
    public void Several_pictures_are_copied_and_entered_in_their_order_and_the_originals_stay()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = Take(
            copy,
            [Picture("SP-0009/underside"), Picture("SP-0001/cell"), "--shows", "C3 before", "--shows", "C3 after, with the clip"]
        );
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Equal(before.Replace("waiting:\n", Visit + "waiting:\n", StringComparison.Ordinal), copy.Read(Board));
        Assert.Equal(File.ReadAllBytes(Picture("SP-0009/underside")), File.ReadAllBytes(copy.At("photos/SP-0007/2026-11-25-1.png")));
        Assert.Equal(File.ReadAllBytes(Picture("SP-0001/cell")), File.ReadAllBytes(copy.At("photos/SP-0007/2026-11-25-2.png")));
        Assert.True(File.Exists(Picture("SP-0009/underside")));
        Assert.Contains("a place that the camera wrote is in them", run.Out, StringComparison.Ordinal);
        Assert.Equal(0, Run.Of("check", copy.Root, "--as-of", "2026-11-25").Exit);
    }

    [Fact]
    public void The_next_one_of_the_day_joins_the_visit_and_gets_the_next_number()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("photos/SP-0007/2026-11-25-7.jpg", "kept from before");
        Assert.Equal(0, Take(copy, [Picture("SP-0009/underside"), "--shows", "one"]).Exit);
        Assert.Equal(0, Take(copy, [Picture("SP-0001/cell"), "--shows", "two"]).Exit);
        Assert.EndsWith(
            "    photos:\n      - { file: photos/SP-0007/2026-11-25-8.png, shows: one }\n"
                + "      - { file: photos/SP-0007/2026-11-25-9.png, shows: two }\n",
            copy.Read(Board).Split("waiting:\n")[0],
            StringComparison.Ordinal
        );
        Assert.Equal("kept from before", copy.Read("photos/SP-0007/2026-11-25-7.jpg"));
    }

    [Fact]
    public void One_of_an_earlier_day_goes_to_the_visit_of_that_day()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = Take(copy, [Picture("SP-0009/underside"), "--shows", "the chassis", "--on", "2026-05-02"]);
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        const string first = "      - { file: photos/SP-0007/c1-new.png, shows: the new C1 in its place }\n";
        Assert.Equal(
            before.Replace(
                first,
                first + "      - { file: photos/SP-0007/2026-05-02-1.png, shows: the chassis }\n",
                StringComparison.Ordinal
            ),
            copy.Read(Board)
        );
    }

    [Fact]
    public void A_trial_writes_nothing()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = Take(copy, [Picture("SP-0009/underside"), "--shows", "one", "--trial"]);
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("would add { file: photos/SP-0007/2026-11-25-1.png, shows: one }", run.Out, StringComparison.Ordinal);
        Nothing(copy, before);
    }

    [Fact]
    public void What_one_of_them_shows_is_asked_where_somebody_sits_there_and_else_an_option_is_needed()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var silent = Take(copy, [Picture("SP-0009/underside"), Picture("SP-0001/cell"), "--shows", "one"]);
        Assert.Equal(2, silent.Exit);
        Assert.Contains("cell.png: nothing says what it shows; write --shows", silent.Error, StringComparison.Ordinal);
        Nothing(copy, before);

        using var input = new StringReader("the cell, wet\n");
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        using var terminal = new Terminal(output, error, showsProgress: false, input) { MayAsk = true };
        using var interruption = new Interruption();
        string[] words = [Picture("SP-0009/underside"), Picture("SP-0001/cell"), "--shows", "one"];
        var exit = CommandLine.Run(["photo", "SP-0007", .. words, "--in", copy.Root, "--as-of", "2026-11-25"], terminal, interruption);
        Assert.Equal(0, exit);
        Assert.Contains("-2.png, shows: \"the cell, wet\" }", copy.Read(Board), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("it is named .jpg and is a PNG picture", "named.jpg")]
    [InlineData("its first bytes are those of no PNG, JPEG, GIF or WebP picture", "text.png")]
    [InlineData("there is no such file", "nowhere.png")]
    [InlineData("it is a folder", "folder.png")]
    [InlineData("it is an SVG drawing, which can hold scripts", "drawing.svg")]
    public void What_is_no_picture_is_refused_and_the_others_with_it(string message, string name)
    {
        using var copy = CollectionCopy.Make();
        using var beside = CollectionCopy.Empty();
        File.Copy(Picture("SP-0001/cell"), beside.At("named.jpg"));
        beside.Write("text.png", "a text");
        beside.Write("drawing.svg", "<svg/>");
        Directory.CreateDirectory(beside.At("folder.png"));
        var before = copy.Read(Board);
        var run = Take(copy, [Picture("SP-0009/underside"), beside.At(name), "--shows", "one", "--shows", "two"]);
        Assert.Equal(2, run.Exit);
        Assert.Contains($"{name}: {message}", run.Error, StringComparison.Ordinal);
        Nothing(copy, before);
    }

    [Fact]
    public void A_picture_that_is_there_already_or_is_given_twice_is_refused()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var known = Take(copy, [Picture("SP-0007/c1-new"), "--shows", "C1"]);
        Assert.Equal(2, known.Exit);
        Assert.Contains("is in the collection already: photos/SP-0007/c1-new.png", known.Error, StringComparison.Ordinal);
        var twice = Take(copy, [Picture("SP-0001/cell"), Picture("SP-0001/cell"), "--shows", "a", "--shows", "b"]);
        Assert.Equal(2, twice.Exit);
        Assert.Contains("is the same picture as", twice.Error, StringComparison.Ordinal);
        Nothing(copy, before);
    }

    [Fact]
    public void A_record_that_takes_no_entry_keeps_no_copy()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(
            0,
            Run.Of(
                "whereabouts",
                "SP-0007",
                "sold",
                "--to",
                "museum",
                "--on",
                "2026-11-20",
                "--in",
                copy.Root,
                "--as-of",
                "2026-11-25"
            ).Exit
        );
        var before = copy.Read(Board);
        Assert.Equal(1, Take(copy, [Picture("SP-0009/underside"), "--shows", "one"]).Exit);
        Nothing(copy, before);
    }

    private static void Nothing(CollectionCopy copy, string before)
    {
        Assert.Equal(before, copy.Read(Board));
        Assert.Equal(["c1-crazed.png", "c1-new.png"], Directory.GetFiles(copy.At("photos/SP-0007")).Select(Path.GetFileName).Order());
    }

    private static string Picture(string name) => Path.Combine(CollectionCopy.Untouched, "photos", name + ".png");

    private static Run Take(CollectionCopy copy, string[] words) =>
        Run.Of(["photo", "SP-0007", .. words, "--by", "RK", "--in", copy.Root, "--as-of", "2026-11-25"]);
}
