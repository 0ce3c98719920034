using Ohmstead.Report.Drawings;
using Ohmstead.Report.Tests.Labels;

namespace Ohmstead.Report.Tests.Drawings;

public sealed class QrCodeTests
{
    // ISO/IEC 18004:2000, annex G: the symbol 1-M of 01234567, its data codewords.
    [Fact]
    public void The_worked_example_of_the_standard_has_the_codewords_that_the_standard_gives_it()
    {
        var code = QrCode.Of("01234567");
        Assert.Equal(21 + 8, code.Side);
        var read = ReadCode.Of(ReadCode.Modules(code))!;
        Assert.Equal("01234567", read.Text);
        Assert.Equal("10200C566180EC11EC11EC11EC11EC11", Convert.ToHexString(read.RawBytes));
        Assert.Equal("M", read.ResultMetadata[ZXing.ResultMetadataType.ERROR_CORRECTION_LEVEL]);
    }

    [Theory]
    [InlineData("https://boards.example/boards/SP-0007.html")]
    [InlineData("https://boards.example/boards/%C3%96-1.html#p-C_2B_12")]
    [InlineData("https://a.example:8443/~rk/boards/SP-0007.html")]
    [InlineData("https://boards.example/0123456789/0123456789/0123456789/0123456789/0123456789/0123456789/0123456789/0123456789/SP-1.html")]
    public void Another_reader_reads_what_was_written_from_the_modules_of_the_drawing(string address) =>
        Assert.Equal(address, ReadCode.Of(ReadCode.Drawn(QrCode.Of(address)))?.Text);

    [Fact]
    public void Four_modules_around_it_are_light_and_the_next_are_not()
    {
        var code = QrCode.Of("https://boards.example/boards/SP-0007.html");
        for (var at = 0; at < code.Side; at++)
        {
            for (var edge = 0; edge < 4; edge++)
            {
                Assert.False(code.IsDark(edge, at) || code.IsDark(at, edge));
                Assert.False(code.IsDark(code.Side - 1 - edge, at) || code.IsDark(at, code.Side - 1 - edge));
            }
        }

        Assert.True(code.IsDark(4, 4) && code.IsDark(4, code.Side - 5) && code.IsDark(code.Side - 5, 4));
    }
}
