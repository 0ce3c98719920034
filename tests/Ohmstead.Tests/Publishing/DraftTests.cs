using System.Text;
using Ohmstead.Publishing;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Publishing;

/// <summary>A file of the report that is too long to be held: its pieces wait on the disk, and it is put by whole.</summary>
public sealed class DraftTests
{
    [Theory]
    [InlineData(10)]
    [InlineData(400_000)]
    public void A_file_is_put_by_whole_however_long_it_is(int lines)
    {
        using var copy = CollectionCopy.Empty();
        var told = Report(copy, lines, draft => draft.Put("long.html"));
        Assert.Equal(Text(lines), copy.Read("pages/long.html"));
        // The mark of the folder is a file, too.
        Assert.Equal((2, 0), told);

        // Nothing has changed: the file that is there stays.
        Assert.Equal((0, 2), Report(copy, lines, draft => draft.Put("long.html")));
        Assert.Equal(Text(lines), copy.Read("pages/long.html"));
    }

    [Theory]
    [InlineData(10)]
    [InlineData(400_000)]
    public void What_waits_comes_back_as_it_was_written(int lines)
    {
        using var copy = CollectionCopy.Empty();
        using var target = ReportFolder.Open(copy.At("pages"), copy.Root);
        using var draft = new Draft(target);
        Write(draft, lines);
        Assert.InRange(draft.Buffer.Written.Length, 1, 4 << 20);
        foreach (var drafted in (Drafted[])[draft.Taken(), draft.Whole()])
        {
            var text = new StringBuilder();
            drafted.CopyTo(target, piece => text.Append(Encoding.UTF8.GetString(piece)));
            Assert.Equal(Text(lines), text.ToString());
        }
    }

    [Fact]
    public void One_draft_makes_a_long_file_and_then_a_short_one()
    {
        using var copy = CollectionCopy.Empty();
        Report(copy, 400_000, draft =>
        {
            draft.Put("long.html");
            draft.Buffer.Clear();
            Write(draft, 1);
            draft.Put("short.html");
        });
        Assert.Equal(Text(400_000), copy.Read("pages/long.html"));
        Assert.Equal(Text(1), copy.Read("pages/short.html"));
    }

    private static (int Written, int Unchanged) Report(CollectionCopy copy, int lines, Action<Draft> put)
    {
        using var target = ReportFolder.Open(copy.At("pages"), copy.Root);
        using (var draft = new Draft(target))
        {
            Write(draft, lines);
            put(draft);
        }

        target.Finish();
        return (target.Written, target.Unchanged);
    }

    private static void Write(Draft draft, int lines)
    {
        for (var line = 0; line < lines; line++)
        {
            draft.Buffer.Append("one line µ\n"u8);
        }
    }

    private static string Text(int lines) => string.Concat(Enumerable.Repeat("one line µ\n", lines));
}
