using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Tests.Findings;

public sealed class FindingListTests
{
    [Fact]
    public void A_thousand_of_one_check_are_told_and_the_last_says_how_many_more_there_are()
    {
        var list = new FindingList();
        list.AddRange(Enumerable.Range(1, 1_234).Select(line => At("boards/a.md", line)));
        var told = list.ToImmutable();
        Assert.Equal(1_000, told.Length);
        Assert.Equal("a thing; 234 more in this file", told[^1].Message);
        Assert.Equal(234, told[^1].More);
        Assert.All(told.AsSpan()[..^1].ToArray(), finding => Assert.Equal(("a thing", 0), (finding.Message, finding.More)));
    }

    [Fact]
    public void Each_file_and_each_check_is_counted_by_itself()
    {
        var list = new FindingList();
        list.AddRange(Enumerable.Range(1, 1_000).Select(line => At("boards/a.md", line)));
        list.Add(At("boards/b.md", 1));
        list.Add(At("boards/a.md", 1, "another-check"));
        Assert.Equal(1_002, list.ToImmutable().Length);
        Assert.All(list.ToImmutable(), finding => Assert.Equal(0, finding.More));
    }

    [Fact]
    public void What_was_added_last_can_be_taken_back_whether_it_is_told_or_counted()
    {
        var list = new FindingList();
        list.AddRange(Enumerable.Range(1, 1_001).Select(line => At("boards/a.md", line)));
        list.TakeBackLast();
        Assert.Equal((1_000, 0), (list.Count, list.ToImmutable()[^1].More));
        list.Add(At("boards/b.md", 1));
        list.TakeBackLast();
        Assert.Equal(1_000, list.Count);
        list.Add(At("boards/b.md", 2));
        Assert.Equal(2, list.ToImmutable()[^1].Place.Line);
    }

    [Fact]
    public void Whoever_asks_first_need_not_make_the_words_of_what_is_only_counted()
    {
        var list = new FindingList();
        for (var line = 1; line <= 30; line++)
        {
            if (!list.CountsIfFull("a-check", "boards/a.md", 20))
            {
                list.Add(At("boards/a.md", line), 20);
            }
        }

        Assert.Equal((20, 10), (list.Count, list.ToImmutable()[^1].More));
    }

    private static Finding At(string path, int line, string check = "a-check") =>
        new(check, Severity.Error, new Place(path, line, 1), "a thing");
}
