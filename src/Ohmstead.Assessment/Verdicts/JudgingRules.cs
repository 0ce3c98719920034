namespace Ohmstead.Assessment.Verdicts;

/// <summary>The rules by which records are judged, as a whole.</summary>
public static class JudgingRules
{
    /// <summary>
    /// Their number. It is raised by whatever may judge a record otherwise than the last release did: a limit, a formula, what proves a
    /// board. Tests hold it against what earlier releases judged, and against the changelog, which tells what changed.
    /// </summary>
    public const int Number = 1;
}
