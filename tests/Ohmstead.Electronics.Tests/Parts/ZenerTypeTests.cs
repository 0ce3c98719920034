using Ohmstead.Electronics.Parts;

namespace Ohmstead.Electronics.Tests.Parts;

public sealed class ZenerTypeTests
{
    // The series by its numbers, the suffix after them: JEDEC registrations, from memory.
    [Theory]
    [InlineData("1N746A", ZenerSeries.Jedec746, 'A')]
    [InlineData("1N4733", ZenerSeries.Jedec4728, null)]
    [InlineData("1n4733a", ZenerSeries.Jedec4728, 'A')]
    [InlineData("1N5231B", ZenerSeries.Jedec5221, 'B')]
    public void A_registered_number_names_its_series_and_suffix(string type, ZenerSeries series, char? suffix) =>
        Assert.Equal(new ZenerType(series, suffix, null), ZenerType.Parse(type));

    // Letter for the tolerance, V for the decimal point: Pro Electron type designation code, from memory.
    [Theory]
    [InlineData("BZX79-C5V1", 'C', "5.1")]
    [InlineData("WX-C9V1", 'C', "9.1")]
    [InlineData("WX-B12", 'B', "12")]
    [InlineData("WX-D15V", 'D', "15")]
    public void A_designation_tells_its_tolerance_and_its_voltage(string type, char suffix, string volts) =>
        Assert.Equal(new ZenerType(ZenerSeries.ProElectron, suffix, Exact.Of(volts)), ZenerType.Parse(type));

    [Theory]
    [InlineData("1N4148")]
    [InlineData("1N")]
    [InlineData("1N746AA")]
    [InlineData("WX-Z91")]
    [InlineData("WX-CV")]
    [InlineData("WX-C1V2V3")]
    [InlineData("C9V1")]
    [InlineData("-")]
    [InlineData("")]
    public void Any_other_number_says_nothing(string type) => Assert.Null(ZenerType.Parse(type));
}
