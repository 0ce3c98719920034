using Ohmstead.Records.Findings;

namespace Ohmstead.Records.Tests.Findings;

public sealed class KnownNamesTests
{
    private const int MostOfUsual = 10_000;

    [Fact]
    public void The_nearest_of_a_list_is_the_one_that_a_search_for_one_word_finds() =>
        Assert.All(["R12", "R21", "C1O", "r-12", "+5V", "nothing like it", "PO-0B"], word =>
        {
            string[] all = ["R1", "R12", "R112", "C10", "C100", "+5V_REF", "PO-01", "PO-08"];
            Assert.Equal(Nearest.To(word, all), new KnownNames(all).NearestTo(word));
        });

    [Fact]
    public void A_name_that_looks_like_a_known_one_is_found_whatever_the_letters() =>
        Assert.Equal("C10", new KnownNames(["C9", "C10"]).LookingLike("C1O"));

    [Theory]
    [InlineData(1_000)]
    [InlineData(2_000)]
    [InlineData(16_000)]
    public void However_many_names_are_unknown_and_known_the_work_of_comparing_them_is_bounded(int count)
    {
        Assert.SkipUnless(TestExtent.IsAll || count < MostOfUsual, TestExtent.LeftOut);
        var known = new KnownNames(Enumerable.Range(0, count).Select(i => $"R{i}"));
        for (var i = 0; i < count; i++)
        {
            known.NearestTo($"Q{i}X");
        }

        // The search during which it is used up goes to its end.
        Assert.InRange(known.Steps, count, KnownNames.MostSteps + (count * 40L));
    }

    [Fact]
    public void A_hundred_slips_in_a_record_of_a_thousand_parts_are_all_told_with_the_nearest_name()
    {
        var known = new KnownNames(Enumerable.Range(0, 1_000).Select(i => $"R{i}"));
        Assert.All(Enumerable.Range(0, 100), i => Assert.NotNull(known.NearestTo($"R{i}X")));
    }
}
