using System.Text;
using Ohmstead.Meters;

namespace Ohmstead.Tests.Meters;

/// <summary>Lines out of what a wire brings, piece by piece.</summary>
public sealed class WireLinesTests
{
    private static readonly TimeSpan Long = TimeSpan.FromMinutes(10);

    [Theory]
    [InlineData("46.1\n")]
    [InlineData("46.1\r\n")]
    [InlineData("46.1\r")]
    [InlineData("\r\n\n  46.1 \r\n")]
    public void A_line_ends_as_its_meter_ends_it(string sent) =>
        Assert.Equal((WireEnd.Line, "46.1"), Next([.. sent.Select(one => one.ToString())]));

    [Fact]
    public void What_was_said_before_it_was_asked_is_no_answer_and_half_a_line_is_none()
    {
        using var wire = new Wire(["11.1\n22.2\n3", "3.3\n", "44.4\n"]);
        var lines = new WireLines(wire, Long);
        lines.Begin(() => false);
        Assert.Equal((WireEnd.Line, "44.4"), lines.Next(() => false));
    }

    // 146.1 whose first digit went by before anybody listened.
    [Fact]
    public void A_line_whose_beginning_was_missed_is_left_out()
    {
        using var wire = new Wire(["46.1\n", "147.2\n"]);
        var lines = new WireLines(wire, Long);
        lines.Listen();
        lines.Begin(() => false);
        Assert.Equal((WireEnd.Line, "147.2"), lines.Next(() => false));
    }

    [Fact]
    public void A_wire_that_never_ends_a_line_is_told() =>
        Assert.Equal(WireEnd.TooLong, Next([.. Enumerable.Repeat(new string('9', 100), 20)]).End);

    [Fact]
    public void A_dead_wire_a_silent_one_and_a_person_who_waits_no_longer_end_the_waiting()
    {
        Assert.Equal(WireEnd.Gone, Next(["46"], isDead: true).End);
        Assert.Equal(WireEnd.Silent, Next(["46"], patience: TimeSpan.Zero).End);
        Assert.Equal(WireEnd.Stopped, Next(["46"], isStopped: true).End);
    }

    private static (WireEnd End, string Line) Next(string[] pieces, bool isDead = false, bool isStopped = false, TimeSpan? patience = null)
    {
        using var wire = new Wire(pieces, isDead);
        return new WireLines(wire, patience ?? Long).Next(() => isStopped);
    }

    private sealed class Wire(string[] pieces, bool isDead = false) : IWire
    {
        private int at;

        public int Read(Span<byte> bytes, int milliseconds)
        {
            // Between its pieces nothing is there at once.
            if (milliseconds == 0 && at > 0)
            {
                return 0;
            }

            return at == pieces.Length ? (isDead ? -1 : 0) : Encoding.Latin1.GetBytes(pieces[at++], bytes);
        }

        public void Write(ReadOnlySpan<byte> bytes) => Assert.Fail("nothing is sent");

        public void Dispose() { }
    }
}
