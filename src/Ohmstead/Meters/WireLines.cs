using System.Diagnostics;
using System.Text;

namespace Ohmstead.Meters;

/// <summary>How the waiting for a line ended.</summary>
internal enum WireEnd
{
    /// <summary>A line came.</summary>
    Line,

    /// <summary>None came in time.</summary>
    Silent,

    /// <summary>Somebody waits no longer.</summary>
    Stopped,

    /// <summary>The wire is dead.</summary>
    Gone,

    /// <summary>What came was no line that a meter sends: far too long.</summary>
    TooLong,
}

/// <summary>Lines from a wire. What a meter said before it was asked is no answer, and a line whose beginning was missed is no line: a
/// figure
/// without its first digit is a figure too.</summary>
/// <param name="wire">The wire.</param>
/// <param name="patience">How long to wait for a line.</param>
internal sealed class WireLines(IWire wire, TimeSpan patience)
{
    /// <summary>How long a line may be.</summary>
    public const int Longest = 512;

    // A meter that has begun a line goes on with it sooner.
    private const int Pause = 200;
    private const int Slice = 50;

    private readonly byte[] bytes = new byte[Longest];
    private readonly List<byte> held = [];

    /// <summary>Drops all that came so far, and the rest of a line that has begun.</summary>
    public void Begin(Func<bool> isStopped)
    {
        var since = Stopwatch.GetTimestamp();
        var isInside = held is [.., not ((byte)'\r' or (byte)'\n')];
        held.Clear();
        while (Stopwatch.GetElapsedTime(since) < patience && !isStopped())
        {
            var count = wire.Read(bytes, isInside ? Pause : 0);
            if (count <= 0)
            {
                return;
            }

            var came = bytes.AsSpan(0, count);
            var end = came.LastIndexOfAny((byte)'\r', (byte)'\n');
            if (isInside && end >= 0 && end < count - 1)
            {
                // What follows the end of that line has begun since: it is a line of its own.
                held.AddRange(came[(end + 1)..]);
                return;
            }

            isInside = end != count - 1;
        }
    }

    /// <summary>Waits a moment to know whether a line has begun already.</summary>
    public void Listen()
    {
        var count = wire.Read(bytes, Pause);
        held.AddRange(bytes.AsSpan(0, Math.Max(count, 0)));
    }

    /// <summary>The next line, without its end; blank ones are passed over.</summary>
    public (WireEnd End, string Line) Next(Func<bool> isStopped, TimeSpan? within = null)
    {
        var since = Stopwatch.GetTimestamp();
        while (true)
        {
            var end = held.FindIndex(one => one is (byte)'\r' or (byte)'\n');
            if (end >= 0)
            {
                // A meter speaks ASCII; whatever else comes is noise, and stays to be seen as such.
                var line = Encoding.Latin1.GetString([.. held[..end]]).Trim();
                held.RemoveRange(0, end + 1);
                if (line.Length > 0)
                {
                    return (WireEnd.Line, line);
                }

                continue;
            }

            if (held.Count > Longest)
            {
                held.Clear();
                return (WireEnd.TooLong, string.Empty);
            }

            if (isStopped())
            {
                return (WireEnd.Stopped, string.Empty);
            }

            if (Stopwatch.GetElapsedTime(since) >= (within ?? patience))
            {
                return (WireEnd.Silent, string.Empty);
            }

            var count = wire.Read(bytes, Slice);
            if (count < 0)
            {
                return (WireEnd.Gone, string.Empty);
            }

            held.AddRange(bytes.AsSpan(0, count));
        }
    }
}
