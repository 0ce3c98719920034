using System.Globalization;

namespace Ohmstead.Machine.Tests.Faults;

/// <summary>One call that does not do what was asked.</summary>
/// <param name="Kind">The kind of call.</param>
/// <param name="At">Which of that kind, from 1.</param>
/// <param name="Error">What comes of it.</param>
internal sealed record SystemFault(CallKind Kind, int At, CallError Error)
{
    /// <summary>True when all calls of that kind fail from then on, as on a disk that is full and stays so.</summary>
    public bool Lasts { get; init; }

    /// <summary>A path that is renamed aside just before the call, and what a link in its place leads to; the call goes on.</summary>
    public (string Path, string LeadsTo)? Swap { get; init; }

    /// <summary>Whether the process is gone after it.</summary>
    public bool Kills => Error is CallError.KilledBefore or CallError.KilledAfter;

    /// <summary>The same for the library.</summary>
    public IEnumerable<(string Name, string Value)> Environment()
    {
        yield return ("OHMSTEAD_FAULT_CALL", NameOf(Kind));
        yield return ("OHMSTEAD_FAULT_AT", At.ToString(CultureInfo.InvariantCulture));
        yield return (
            "OHMSTEAD_FAULT_ERROR",
            Error switch
            {
                CallError.KilledAfter => "killed",
                CallError.KilledBefore => "kill",
                CallError.Half => "half",
                CallError.Hangs => "hang",
                _ => ((int)Error).ToString(CultureInfo.InvariantCulture),
            }
        );
        if (Lasts)
        {
            yield return ("OHMSTEAD_FAULT_LASTS", "yes");
        }

        if (Swap is var (path, leadsTo))
        {
            yield return ("OHMSTEAD_FAULT_AWAY", path);
            yield return ("OHMSTEAD_FAULT_LINK", leadsTo);
        }
    }

    /// <summary>A kind as faults.c names it.</summary>
#pragma warning disable CA1308 // The names are in small letters there.
    public static string NameOf(CallKind kind) => kind.ToString().ToLowerInvariant();
#pragma warning restore CA1308
}
