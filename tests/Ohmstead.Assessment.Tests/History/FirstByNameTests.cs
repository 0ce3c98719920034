using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.History;

namespace Ohmstead.Assessment.Tests.History;

public sealed class FirstByNameTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(16)]
    [InlineData(17)]
    [InlineData(1000)]
    public void The_first_of_a_name_is_found_however_often_one_asks(int times)
    {
        ImmutableArray<string> items = ["R1 first", "R2 first", "R1 second"];
        var named = new FirstByName<string>(items, item => item[..2]);
        for (var time = 0; time < times; time++)
        {
            Assert.Equal("R1 first", named.Find("R1"));
            Assert.Equal("R2 first", named.Find("R2"));
            Assert.Null(named.Find("r1"));
        }
    }

    [Fact]
    public void A_thousand_questions_look_at_each_item_no_more_often_than_a_few()
    {
        var looks = 0;
        ImmutableArray<string> items = [.. Enumerable.Range(0, 1000).Select(i => i.ToString(CultureInfo.InvariantCulture))];
        var named = new FirstByName<string>(items, item =>
        {
            looks++;
            return item;
        });
        foreach (var item in items.Reverse())
        {
            Assert.Same(item, named.Find(item));
        }

        Assert.InRange(looks, 1000, 20 * 1000);
    }
}
