using Ohmstead.Prompt;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Prompt;

/// <summary>Lines of earlier sessions: where they stand, and that they stay a person's own.</summary>
public sealed class HistoryFileTests
{
    [Theory]
    [InlineData("/home/rk", null, null, "/home/rk/.local/state/ohmstead/bench-history")]
    [InlineData("/home/rk", "/state", null, "/state/ohmstead/bench-history")]
    [InlineData("/home/rk", "not/absolute", null, "/home/rk/.local/state/ohmstead/bench-history")]
    [InlineData("/home/rk", null, "off", null)]
    [InlineData(null, null, null, null)]
    public void It_stands_where_a_person_keeps_their_state(string? home, string? state, string? history, string? place)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "the folders of Linux");
        Assert.Equal(
            place,
            HistoryFile.PlaceIn(name =>
                name switch
                {
                    "HOME" => home,
                    "XDG_STATE_HOME" => state,
                    "OHMSTEAD_HISTORY" => history,
                    _ => null,
                }
            )
        );
    }

    [Fact]
    public void The_next_session_has_the_lines_of_the_last_and_of_one_beside_it()
    {
        using var state = CollectionCopy.Empty();
        var path = state.At("ohmstead/bench-history");
        var (one, other) = (new HistoryFile(path, "/nowhere"), new HistoryFile(path, "/nowhere"));
        one.Load();
        other.Load();
        one.Add("C1 391");
        one.Add("C1 391");
        one.Add(" not kept");
        one.Save();
        other.Add("C2 µF 測");
        other.Save();
        var next = new HistoryFile(path, "/nowhere");
        next.Load();
        Assert.Equal(["C1 391", "C2 µF 測"], next.Lines);
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(path));
        }
    }

    [Fact]
    public void It_never_stands_in_the_collection_nor_leaves_it_through_a_link()
    {
        using var copy = CollectionCopy.Empty();
        var history = new HistoryFile(copy.At("state/ohmstead/bench-history"), copy.Root);
        history.Add("C1 391");
        history.Save();
        Assert.Empty(Directory.GetFileSystemEntries(copy.Root));
    }

    [Fact]
    public void Only_the_last_thousand_are_kept_and_hidden_characters_are_no_line()
    {
        using var state = CollectionCopy.Empty();
        state.Write("h", string.Concat(Enumerable.Range(0, 1500).Select(line => $"{line}\n")) + "\e[2J\n");
        var history = new HistoryFile(state.At("h"), "/nowhere");
        history.Load();
        Assert.Equal((HistoryFile.Most, "500", "1499"), (history.Lines.Length, history.Lines[0], history.Lines[^1]));
    }
}
