using System.Reflection;
using Ohmstead.Electronics.Supplies;

namespace Ohmstead.Electronics.Tests.Supplies;

public sealed class UsualRailTests
{
    // TTL 4.75 to 5.25 V, 4000B 3 to 15 V, dynamic memory +/-10 %, ECL +/-10 %, a line driver's mark -15 to -5 V, heaters +/-5 %: data
    // books, from memory.
    [Theory]
    [InlineData(null, "5", "4.75", "5.25")]
    [InlineData("TTL", "5", "4.75", "5.25")]
    [InlineData("TTL 54", "5", "4.5", "5.5")]
    [InlineData("CMOS 4000B", "9", "3", "15")]
    [InlineData("CMOS 4000B", "5", "3", "15")]
    [InlineData("dynamic memory", "12", "10.8", "13.2")]
    [InlineData("ECL", "-5.2", "-5.72", "-4.68")]
    [InlineData("line driver", "-12", "-15", "-5")]
    [InlineData("heater", "6.3", "5.670", "6.930")]
    [InlineData(null, "-15", "-15.75", "-14.25")]
    [InlineData("mains", "230", "207", "253")]
    public void A_rail_may_be_what_its_family_bears(string? rail, string nominal, string low, string high)
    {
        RailLimit? limit = UsualRail.Range(Named(rail), Exact.Of(nominal));
        Assert.NotNull(limit);
        Assert.Equal((Exact.Of(low), Exact.Of(high)), (limit.LowVolts, limit.HighVolts));
    }

    // Harris CD4000B Series technical overview (4000B); data books from memory for all others.
    [Theory]
    [InlineData("DTL 930", "4.5", "5.5")]
    [InlineData("CMOS 4000A", "3", "12")]
    [InlineData("CMOS 4000B", "3", "15")]
    [InlineData("CMOS 74C", "3", "15")]
    [InlineData("CMOS 74HC", "2", "6")]
    [InlineData("CMOS 74HCT", "4.5", "5.5")]
    [InlineData("CMOS 74AC", "2", "6")]
    [InlineData("CMOS 74ACT", "4.5", "5.5")]
    [InlineData("RTL", "3.24", "3.96")]
    [InlineData("NMOS 8080A, -5 V", "-5.25", "-4.75")]
    [InlineData("DRAM 4116, +12 V", "10.8", "13.2")]
    [InlineData("DRAM 4116, -5 V", "-5.7", "-4.5")]
    [InlineData("EPROM 2708, +12 V", "11.4", "12.6")]
    [InlineData("EIA-232 driver, space", "5", "15")]
    [InlineData("early desktop supply, +5 V", "4.8", "5.25")]
    [InlineData("early desktop supply, -5 V", "-5.5", "-4.6")]
    [InlineData("early desktop supply, -12 V", "-13.2", "-10.92")]
    [InlineData("ATX, +12 V", "11.4", "12.6")]
    [InlineData("ATX, +3.3 V", "3.135", "3.465")]
    [InlineData("ATX, -12 V", "-13.2", "-10.8")]
    [InlineData("ATX, -5 V", "-5.5", "-4.5")]
    public void A_family_bears_what_its_book_says(string name, string low, string high)
    {
        var limit = Assert.Single(RailLimits.All, one => one.Family == name);
        Assert.Equal((Exact.Of(low), Exact.Of(high)), (limit.LowVolts, limit.HighVolts));
    }

    [Theory]
    [InlineData(null, "80")]
    [InlineData("TTL", "12")]
    [InlineData("CMOS 4000B", "24")]
    [InlineData("unregulated", "42")]
    public void A_rail_without_a_usual_range_has_none(string? rail, string nominal) =>
        Assert.Null(UsualRail.Range(Named(rail), Exact.Of(nominal)));

    // Logic 50 mV, analogue 10 mV, an unregulated reservoir a tenth of its voltage, high tension a hundredth after the filter: common
    // practice.
    [Theory]
    [InlineData(null, "5", "0.05")]
    [InlineData("TTL", "5", "0.05")]
    [InlineData("op-amp", "-15", "0.01")]
    [InlineData("unregulated", "42", "4.2")]
    [InlineData("high tension", "250", "2.5")]
    public void A_rail_may_ripple_as_much_as_is_usual(string? rail, string nominal, string volts) =>
        Assert.Equal(Exact.Of(volts), UsualRail.Ripple(Named(rail), Exact.Of(nominal))?.UsualFor(Exact.Of(nominal)));

    [Fact]
    public void Ripple_of_an_unknown_rail_has_no_usual_limit() => Assert.Null(UsualRail.Ripple(null, 80m));

    [Fact]
    public void Every_word_but_the_two_that_tell_ripple_alone_names_a_family() =>
        Assert.All(Rail.All.Values.Except([Rail.Unregulated, Rail.HighTension]), rail =>
            Assert.Contains(RailLimits.All, limit => UsualRail.Range(rail, limit.NominalVolts) is not null)
        );

    [Fact]
    public void Every_row_stands_in_the_list_once() =>
        Assert.Equal(
            typeof(Rail)
                .GetProperties(BindingFlags.Public | BindingFlags.Static)
                .Where(property => property.PropertyType == typeof(Rail))
                .Select(property => (Rail)property.GetValue(null)!),
            Rail.All.Values
        );

    private static Rail? Named(string? rail) =>
        rail is null ? null
        : Rail.All.Means(rail, out var known) ? known
        : throw new InvalidOperationException(rail);
}
