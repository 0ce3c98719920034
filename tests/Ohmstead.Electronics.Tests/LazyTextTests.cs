namespace Ohmstead.Electronics.Tests;

public sealed class LazyTextTests
{
    [Fact]
    public void Text_is_written_at_the_first_reading_and_once()
    {
        int written = 0;
        LazyText lazy = new(() => $"inside, written {++written} time");
        Assert.Equal(0, written);
        Assert.Equal("inside, written 1 time", lazy.Text);
        Assert.Equal("inside, written 1 time", lazy);
        Assert.Equal(1, written);
    }

    [Fact]
    public void Text_about_a_thing_is_written_once_too()
    {
        List<string> asked = [];
        LazyText lazy = LazyText.For(asked, static asked =>
        {
            asked.Add("asked");
            return "at most 15 mA, as written";
        });
        Assert.Empty(asked);
        Assert.Equal("at most 15 mA, as written", lazy.Text);
        Assert.Equal("at most 15 mA, as written", lazy.ToString());
        Assert.Single(asked);
    }

    [Fact]
    public void Two_texts_are_equal_when_they_read_the_same_however_they_were_made()
    {
        LazyText there = "the marking";
        Assert.Equal(there, new LazyText(() => "the " + "marking"));
        Assert.Equal(there, LazyText.For("marking", static word => "the " + word));
        Assert.Equal(there, new Told("marking"));
        Assert.Equal(there.GetHashCode(), new Told("marking").GetHashCode());
        Assert.NotEqual(there, new Told("data sheet"));
    }

    private sealed class Told(string word) : LazyText
    {
        protected override string Write() => "the " + word;
    }
}
