using Ohmstead.Collections;
using Ohmstead.Records.Findings;
using Ohmstead.Running;

namespace Ohmstead.Writing;

/// <summary>Judges texts before they are written: what they would bring that is wrong is told, and then nothing is written.</summary>
internal static class JudgedFiles
{
    /// <summary>Tells every error that the texts would add to the files they stand for.</summary>
    /// <param name="terminal">Where it is told.</param>
    /// <param name="before">What the run without them found; null where the files are not there yet.</param>
    /// <param name="after">What the run with them found.</param>
    /// <param name="paths">The files.</param>
    /// <param name="typed">How the command takes keys, where the texts follow from what was typed.</param>
    /// <param name="added">The lines that what was typed becomes: nobody can look them up.</param>
    /// <returns>Whether nothing is wrong.</returns>
    public static bool AreSound(
        Terminal terminal,
        RunResult? before,
        RunResult after,
        IReadOnlyCollection<string> paths,
        TypedKeys? typed = null,
        AddedLines? added = null
    )
    {
        var against = after
            .Findings.Where(finding =>
                paths.Contains(finding.Place.Path) && finding.Severity == Severity.Error && !IsKnown(before, finding)
            )
            .ToArray();
        foreach (var finding in against)
        {
            Tell(terminal, finding, typed, added);
        }

        if (against.Length > 0)
        {
            terminal.Error.WriteLine("nothing was written");
        }

        return against.Length == 0;
    }

    /// <summary>Tells one finding that keeps a text from being written.</summary>
    /// <param name="terminal">Where it is told.</param>
    /// <param name="finding">The finding.</param>
    /// <param name="typed">How the command takes keys, where the text follows from what was typed.</param>
    /// <param name="added">The lines that what was typed becomes: nobody can look them up.</param>
    public static void Tell(Terminal terminal, Finding finding, TypedKeys? typed = null, AddedLines? added = null)
    {
        var place = added?.Hold(finding.Place.Line) == true ? string.Empty : $"{Printable.Escape(finding.Place.ToString())}: ";
        terminal.Error.WriteLine($"{place}{terminal.ErrorColours.Wrong(Printable.Escape(finding.Message))} [{finding.Check}]");
        if (finding.NextStep is { } next)
        {
            terminal.Error.WriteLine(Printable.Escape($"  = {typed?.Step(next) ?? next}"));
        }
    }

    // Findings of other lines move with the lines; the check and the words stay.
    private static bool IsKnown(RunResult? before, Finding finding) =>
        before is not null
        && before.Findings.Any(known =>
            known.Place.Path == finding.Place.Path && known.Check == finding.Check && known.Message == finding.Message
        );
}
