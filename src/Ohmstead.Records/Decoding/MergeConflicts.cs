using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Decoding;

/// <summary>Finds the marks that a version control system leaves where two changes met and nobody decided.</summary>
public static class MergeConflicts
{
    private const int MarkLength = 7;

    /// <summary>One finding for each conflict, at its first mark, with the other marks beside it.</summary>
    public static void AddTo(FindingList findings, SourceText source)
    {
        var text = source.Text.AsSpan();
        if (!text.Contains("<<<<<<<", StringComparison.Ordinal) && !text.Contains(">>>>>>>", StringComparison.Ordinal))
        {
            return;
        }

        var opened = 0;
        var related = new List<RelatedPlace>();
        for (var line = 1; line <= source.LineCount; line++)
        {
            switch (MarkOf(source.Line(line)))
            {
                case '<':
                    Close(findings, source, opened, related);
                    opened = line;
                    break;
                case '|' when opened > 0:
                    related.Add(Beside(source, line, "what both sides began from"));
                    break;
                case '=' when opened > 0:
                    related.Add(Beside(source, line, "the other side begins here"));
                    break;
                case '>' when opened > 0:
                    related.Add(Beside(source, line, "the conflict ends here"));
                    Close(findings, source, opened, related);
                    opened = 0;
                    break;
                default:
                    break;
            }
        }

        Close(findings, source, opened, related);
    }

    private static char MarkOf(ReadOnlySpan<char> line)
    {
        if (line.Length < MarkLength || line[0] is not ('<' or '|' or '=' or '>'))
        {
            return '\0';
        }

        var run = line.IndexOfAnyExcept(line[0]);
        return run < 0 && line.Length == MarkLength ? line[0]
            : run == MarkLength && line[MarkLength] == ' ' ? line[0]
            : '\0';
    }

    private static RelatedPlace Beside(SourceText source, int line, string note) =>
        new(source.PlaceAt(source.LineStart(line), MarkLength), note);

    private static void Close(FindingList findings, SourceText source, int line, List<RelatedPlace> related)
    {
        if (line == 0)
        {
            return;
        }

        findings.Add(
            new Finding(
                TextChecks.MergeConflict,
                Severity.Error,
                source.PlaceAt(source.LineStart(line), MarkLength),
                "unresolved merge conflict: both sides of a change stand here",
                "keep the lines that are right and remove the three marker lines"
            )
            {
                Related = [.. related],
            }
        );
        related.Clear();
    }
}
