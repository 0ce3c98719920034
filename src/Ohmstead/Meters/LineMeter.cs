using Ohmstead.Records.Model;

namespace Ohmstead.Meters;

/// <summary>A meter that sends a line for each reading, and to which nothing is sent.</summary>
/// <param name="wire">The wire to it.</param>
/// <param name="patience">How long to wait for a line.</param>
/// <param name="meter">What its line holds.</param>
internal sealed class LineMeter(IWire wire, TimeSpan patience, Meter meter) : IMeter
{
    private readonly WireLines lines = new(wire, patience);
    private bool isKnown;

    /// <inheritdoc/>
    public MeterAnswer Read(Func<bool> isStopped)
    {
        if (!isKnown)
        {
            // It may be in the midst of a line when it is first listened to.
            lines.Listen();
            isKnown = true;
        }

        lines.Begin(isStopped);
        var (end, line) = lines.Next(isStopped);
        return end == WireEnd.Line ? new LineMeaning(meter).Read(line) : MeterAnswer.Without(WireFault.Told(end));
    }

    /// <inheritdoc/>
    public void Dispose() => wire.Dispose();
}
