using System.Runtime.InteropServices;

namespace Ohmstead.Running;

/// <summary>Ends the process when it is told to stop, after what is half done has been taken back. Exit code: 128 and the number of the
/// signal.</summary>
internal sealed class Interruption : IDisposable
{
    private const int SignalBase = 128;

    private readonly List<PosixSignalRegistration> registrations = [];
    private Action? takeBack;
    private int asked;
    private volatile bool isWayOut;

    /// <summary>Listens for the signals that end a process.</summary>
    public static Interruption OfProcess()
    {
        var interruption = new Interruption();
        foreach (var (signal, number) in new[] { (PosixSignal.SIGHUP, 1), (PosixSignal.SIGINT, 2), (PosixSignal.SIGTERM, 15) })
        {
            interruption.registrations.Add(
                PosixSignalRegistration.Create(signal, context => interruption.End(context, SignalBase + number))
            );
        }

        return interruption;
    }

    /// <summary>Says how to take back what is half done; null when nothing is.</summary>
    public void TakeBackBy(Action? how) => Volatile.Write(ref takeBack, how);

    /// <summary>Says that Ctrl-C is how the command is meant to end: then the exit code is that of a command that did what it was
    /// asked.</summary>
    public void IsWayOut() => isWayOut = true;

    /// <inheritdoc/>
    public void Dispose() => registrations.ForEach(registration => registration.Dispose());

    private void End(PosixSignalContext context, int exitCode)
    {
        // A second signal means at once: the system's own answer follows.
        if (Interlocked.Exchange(ref asked, 1) != 0)
        {
            return;
        }

        context.Cancel = true;
        Volatile.Read(ref takeBack)?.Invoke();
        Environment.Exit(isWayOut && context.Signal == PosixSignal.SIGINT ? ExitCode.Clean : exitCode);
    }
}
