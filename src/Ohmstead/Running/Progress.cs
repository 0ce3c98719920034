using System.Diagnostics;
using System.Globalization;

namespace Ohmstead.Running;

/// <summary>Says how far a run is once it has taken a second; on a terminal only, on one line, ten times a second at most.</summary>
internal sealed class Progress(Terminal terminal, int total) : IDisposable
{
    private readonly Stopwatch watch = Stopwatch.StartNew();
    private readonly Lock gate = new();
    private long shownAt = 1_000;
    private bool shown;

    /// <summary>Told how many are done.</summary>
    public void Report(int done)
    {
        if (!terminal.ShowsProgress || watch.ElapsedMilliseconds < Volatile.Read(ref shownAt))
        {
            return;
        }

        lock (gate)
        {
            var now = watch.ElapsedMilliseconds;
            if (now < shownAt)
            {
                return;
            }

            shownAt = now + 100;
            shown = true;
            var rate = done * 1000L / Math.Max(1, now);
            terminal.Error.Write(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"\r{done} of {total} boards, {rate} a second, {(total - done) / Math.Max(1, rate)} s left   "
                )
            );
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (shown)
        {
            terminal.Error.Write("\r" + new string(' ', 70) + "\r");
        }
    }
}
