using Ohmstead.Records.Editing;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Editing;

/// <summary>Where the number of a board stands in a text, and where only something like it does.</summary>
public sealed class BoardRenamingTests
{
    private static readonly BoardNames Names = new(
        "SP-0007",
        "SP-0107",
        [("photos/SP-0007/", "photos/SP-0107/"), ("SP-0007.md", "SP-0107.md")]
    );

    [Theory]
    [InlineData("as on SP-0007, too", "as on SP-0107, too")]
    [InlineData("SP-0007.", "SP-0107.")]
    [InlineData("(SP-0007) `SP-0007` SP-0007's \"SP-0007\"", "(SP-0107) `SP-0107` SP-0107's \"SP-0107\"")]
    [InlineData("SP-0007- and the rest", "SP-0107- and the rest")]
    [InlineData("[it](SP-0007.md) [it](../boards/SP-0007.md#story)", "[it](SP-0107.md) [it](../boards/SP-0107.md#story)")]
    [InlineData("![](../photos/SP-0007/c1.png)", "![](../photos/SP-0107/c1.png)")]
    [InlineData("SP-0007 C4", "SP-0107 C4")]
    public void A_name_that_stands_as_a_whole_is_replaced(string text, string becomes) => Assert.Equal(becomes, Names.In(text));

    [Theory]
    [InlineData("SP-00071 SP-0007-2 SP-0007.2 SP-0007b SP-0007_b SP-0007+ XSP-0007 X-SP-0007 sp-0007 SP-0007é")]
    [InlineData("bag SP-0007/1")]
    [InlineData("pictures/SP-0007/c1.png and drawings/SP-0007")]
    [InlineData("https://example.org/boards/SP-0007.md <https://example.org/photos/SP-0007/a.png> (https://example.org/?board=SP-0007)")]
    [InlineData("SP-0007.mdx old-SP-0007.md")]
    public void What_only_looks_like_it_stays(string text) => Assert.Equal(text, Names.In(text));

    [Fact]
    public void Words_remarks_paths_and_the_story_follow_and_what_is_printed_stays()
    {
        const string record = """
            ---
            board: "SP-0007"   # SP-0007 in the register
            title: Sister of SP-0007
            design: SP-0007
            serial: SP-0007
            # SP-0007 came first
            bench:
              - date: 2026-02-14
                work:
                  - { part: C1, did: removed, kept: box SP-0007, note: 'see SP-0007, it''s alike',
                      went_to: SP-0008 C1 }   # of SP-0007
                  - part: C2
                    did: removed
                    kept: >
                      the box of
                      SP-0007
                    note: |
                      both
                      of SP-0007
                photos:
                  - { file: photos/SP-0007/a.png, shows: SP-0007 }
            ---
            SP-0007 stands here.

            ---
            serial: SP-0007
            """;
        var expected = record
            .Replace("\"SP-0007\"   # SP-0007", "\"SP-0107\"   # SP-0107", StringComparison.Ordinal)
            .Replace("Sister of SP-0007", "Sister of SP-0107", StringComparison.Ordinal)
            .Replace("# SP-0007 came", "# SP-0107 came", StringComparison.Ordinal)
            .Replace("see SP-0007", "see SP-0107", StringComparison.Ordinal)
            .Replace("# of SP-0007", "# of SP-0107", StringComparison.Ordinal)
            .Replace("      of SP-0007", "      of SP-0107", StringComparison.Ordinal)
            .Replace("photos/SP-0007/a.png, shows: SP-0007", "photos/SP-0107/a.png, shows: SP-0107", StringComparison.Ordinal)
            .Replace("---\nSP-0007 stands", "---\nSP-0107 stands", StringComparison.Ordinal)
            .Replace("---\nserial: SP-0007", "---\nserial: SP-0107", StringComparison.Ordinal);
        var renamed = Replace(record, Names);
        Assert.Equal(expected, renamed.Outcome.Text);
        Assert.Equal([4, 5, 10, 16], renamed.Left.Select(spot => spot.Line).Order());
    }

    [Fact]
    public void A_number_that_would_be_read_as_something_else_is_quoted() =>
        Assert.Equal(
            "---\nboard: \"0107\"\ntitle: Sister of 0107\n---\n",
            Replace("---\nboard: SP-0007\ntitle: Sister of SP-0007\n---\n", new("SP-0007", "0107", [])).Outcome.Text
        );

    [Fact]
    public void A_name_in_escapes_is_not_passed_over_in_silence() =>
        Assert.NotNull(Replace("---\nboard: SP-0007\ntitle: \"Sister of SP\\x2D0007\"\n---\n", Names).Outcome.Refusal);

    [Fact]
    public void The_number_of_another_board_in_its_own_record_stays() =>
        Assert.Equal(
            "---\nboard: SP-0008\ntitle: Sister of SP-0107\n---\n",
            Replace("---\nboard: SP-0008\ntitle: Sister of SP-0007\n---\n", Names, isOwn: false).Outcome.Text
        );

    private static RenamedText Replace(string text, BoardNames names, bool isOwn = true)
    {
        var editor = RecordEditor.Open("boards/SP-0007.md", text, FileForm.Markdown, new YamlNodeReader(), out var findings);
        Assert.Empty(findings);
        return BoardRenaming.Replace(editor!, FileShapes.Board, names, isOwn);
    }
}
