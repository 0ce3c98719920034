namespace Ohmstead.Running;

/// <summary>How a run ends. The highest that applies counts.</summary>
internal static class ExitCode
{
    /// <summary>Nothing wrong.</summary>
    public const int Clean = 0;

    /// <summary>Findings in records.</summary>
    public const int Findings = 1;

    /// <summary>Wrong command line or configuration, or nothing to look at.</summary>
    public const int Usage = 2;

    /// <summary>Something could not be read or written.</summary>
    public const int Incomplete = 3;

    /// <summary>A bug of this program.</summary>
    public const int Bug = 4;
}
