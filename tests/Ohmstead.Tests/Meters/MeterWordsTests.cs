using Ohmstead.Electronics.Quantities;
using Ohmstead.Meters;

namespace Ohmstead.Tests.Meters;

/// <summary>Figures and words of IEEE 488.2 and SCPI-99, and where a meter may be.</summary>
public sealed class MeterWordsTests
{
    // IEEE 488.2, 8.7.2 to 8.7.4: NR1, NR2, NR3.
    [Theory]
    [InlineData("391", "391")]
    [InlineData("+4.70123E-05", "0.0000470123")]
    [InlineData("-12.5", "-12.5")]
    [InlineData("1.E3", "1000")]
    [InlineData("9.8E27", "9800000000000000000000000000")]
    public void A_figure_is_read_exactly(string text, string figure) =>
        Assert.Equal(decimal.Parse(figure, System.Globalization.CultureInfo.InvariantCulture), MeterFigure.Parse(text));

    // SCPI-99, volume 1, 7.2.1: 9.9E37, -9.9E37 and 9.91E37.
    [Theory]
    [InlineData("9.9E37")]
    [InlineData("+9.90000000E+37")]
    [InlineData("-9.9E37")]
    [InlineData("9.91E37")]
    [InlineData("1E400")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    public void What_stands_for_no_figure_is_none(string text)
    {
        Assert.True(MeterFigure.IsOverload(text));
        Assert.Null(MeterFigure.Parse(text));
    }

    [Theory]
    [InlineData("")]
    [InlineData("OL")]
    [InlineData("4,7")]
    [InlineData("1_0")]
    [InlineData("0x10")]
    [InlineData("1 2")]
    [InlineData("9.8E37")]
    [InlineData("1E-40")]
    [InlineData("１２")]
    public void What_is_no_figure_of_a_meter_is_refused(string text) => Assert.Null(MeterFigure.Parse(text));

    [Theory]
    [InlineData("\"RES\"", "Resistance")]
    [InlineData("\"VOLT:DC\"", "Voltage")]
    [InlineData("\"VOLTAGE\"", "Voltage")]
    [InlineData("CAP", "Capacitance")]
    [InlineData("\"FRES 1.0E3\"", "Resistance")]
    [InlineData("\"VOLT:AC\"", null)]
    [InlineData("\"CURR:AC\"", null)]
    [InlineData("\"CONT\"", null)]
    [InlineData("", null)]
    public void A_function_is_a_quantity_or_nothing(string answer, string? measured) =>
        Assert.Equal(measured, ScpiWords.Measures(answer)?.Measured.ToString());

    [Theory]
    [InlineData("READ?", true)]
    [InlineData("FETCh?", true)]
    [InlineData("SENSe:RESistance:RANGe?", true)]
    [InlineData("SENS:CAP:RANG:UPP?", true)]
    [InlineData("FREQuency?", true)]
    [InlineData("FETC1?", true)]
    [InlineData("*RST", false)]
    [InlineData("*TST?", false)]
    [InlineData("*CAL?", false)]
    [InlineData("MEAS:VOLT?", false)]
    [InlineData("READ?;:OUTP ON", false)]
    [InlineData("OUTP ON\nREAD?", false)]
    [InlineData("VOLT 500;FETC?", false)]
    [InlineData("FREQ 1000?", false)]
    [InlineData("?", false)]
    public void Only_what_asks_is_ever_sent(string query, bool isHarmless) => Assert.Equal(isHarmless, ScpiWords.IsHarmless(query));

    [Theory]
    [InlineData("serial:/dev/ttyUSB0", "/dev/ttyUSB0 9600 8n1")]
    [InlineData("serial:/dev/ttyS0,19200", "/dev/ttyS0 19200 8n1")]
    [InlineData("serial:/dev/ttyS0,1200,7E1", "/dev/ttyS0 1200 7e1")]
    [InlineData("tcp:192.0.2.7:5025", "192.0.2.7 5025")]
    [InlineData("tcp:[::1]:5025", "::1 5025")]
    [InlineData("tcp:meter.example", null)]
    [InlineData("tcp:meter.example:0", null)]
    [InlineData("tcp:meter.example:70000", null)]
    [InlineData("serial:", null)]
    [InlineData("serial:/dev/ttyS0,fast", null)]
    [InlineData("serial:/dev/ttyS0,9600,9n1", null)]
    [InlineData("/dev/ttyS0", null)]
    public void A_person_says_where_it_is(string said, string? read)
    {
        var (address, fault) = MeterAddress.Parse(said);
        Assert.Equal(address is null, fault is not null);
        Assert.Equal(
            read,
            address is null ? null
                : address.Host is { } host ? $"{host} {address.Port}"
                : $"{address.Path} {address.Serial.Speed} {address.Serial.DataBits}{address.Serial.Parity}{address.Serial.StopBits}"
        );
    }

    [Fact]
    public void A_figure_has_the_unit_that_its_description_says()
    {
        Assert.Equal("47.0123 µF", QuantityText.Format(MeterFigure.With(0.0000470123m, "F", Dimension.Capacitance)!.Value));
        Assert.Equal("4.7 kΩ", QuantityText.Format(MeterFigure.With(4.7m, "kohm", Dimension.Resistance)!.Value));
        Assert.Null(MeterFigure.With(4.7m, "V", Dimension.Resistance));
        Assert.Null(MeterFigure.With(4.7m, string.Empty, Dimension.Resistance));
        Assert.NotNull(MeterFigure.With(0.02m, string.Empty, Dimension.Ratio));
    }
}
