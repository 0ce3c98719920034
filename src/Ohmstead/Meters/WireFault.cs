namespace Ohmstead.Meters;

/// <summary>Why no line came, in words.</summary>
internal static class WireFault
{
    /// <summary>In words.</summary>
    public static string Told(WireEnd end) =>
        end switch
        {
            WireEnd.Silent => "the meter said nothing in time; look at the cable and at its settings, or give it longer with --wait; "
                + "nothing was taken",
            WireEnd.Stopped => "stopped waiting for the meter; nothing was taken",
            WireEnd.Gone => "the meter is gone: the wire to it is dead; nothing was taken",
            WireEnd.TooLong => "what comes is no line of a meter: it has no end; look at speed and parity; nothing was taken",
            WireEnd.Line => string.Empty,
        };

    /// <summary>So much of a text as is told.</summary>
    public static string Short(string text) => text.Length <= 60 ? text : text[..60] + "…";
}
