using System.Globalization;
using Ohmstead.Assessment.History;
using Ohmstead.Collections;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;
using Ohmstead.Running;

namespace Ohmstead.Output;

/// <summary>Findings for people: place, message, the line itself with a mark under it, the next step.</summary>
/// <param name="mostPerFile">How many of a file are shown.</param>
/// <param name="mostInAll">How many are shown.</param>
/// <param name="colours">The colours of where they are shown; null for none.</param>
internal sealed class TextFindings(int mostPerFile, int mostInAll, Palette? colours = null) : IFindingsWriter
{
    private const int Widest = 100;

    private Palette Colours => colours ?? Palette.None;

    /// <inheritdoc/>
    public void Write(TextWriter target, RunResult result, CollectionFolder folder, int exitCode)
    {
        var shown = 0;
        foreach (var file in result.Findings.GroupBy(finding => finding.Place.Path, StringComparer.Ordinal))
        {
            // A file that was refused is not looked into for an excerpt either: it may be a link, a pipe or too large.
            var source = file.Any(FileReader.IsPassedOver) ? null : Read(folder, file.Key);
            var ofFile = file.ToArray();
            foreach (var finding in ofFile.Take(mostPerFile).Take(Math.Max(0, mostInAll - shown)))
            {
                WriteOne(target, finding, source);
                shown++;
            }

            if (ofFile.Length > mostPerFile)
            {
                target.WriteLine(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{Printable.Escape(file.Key)}: {All(ofFile) - mostPerFile} more findings in this file are not shown"
                    )
                );
                target.WriteLine();
            }
        }

        if (result.Findings.Length > 1)
        {
            foreach (
                var check in result
                    .Findings.GroupBy(finding => finding.Check, StringComparer.Ordinal)
                    .OrderByDescending(All)
                    .ThenBy(group => group.Key, StringComparer.Ordinal)
            )
            {
                target.WriteLine($"{All(check).ToString(CultureInfo.InvariantCulture).PadLeft(6)}  {check.Key}");
            }

            target.WriteLine();
        }

        target.WriteLine(Summary(result));
    }

    private static string Summary(RunResult result)
    {
        var errors = All(result.Findings.Where(finding => finding.Severity == Severity.Error));
        var warnings = All(result.Findings.Where(finding => finding.Severity == Severity.Warning));
        var states = BoardStates
            .All.Select(state => (State: state, Count: result.Boards.Count(board => board.State == state)))
            .Where(pair => pair.Count > 0)
            .Select(pair =>
                string.Create(CultureInfo.InvariantCulture, $"{pair.Count} {BoardStates.Words(pair.State)}{Beside(pair.State)}")
            );
        var boards = result.Boards.Count == 0 ? string.Empty : $": {string.Join(", ", states)}";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{result.FilesRead} files, {result.Boards.Count} boards{boards}; {errors} errors, {warnings} warnings"
        );

        // A fault is to be seen to anyhow; what counts as fit and was not looked at since is not kept silently.
        string Beside(BoardState state) =>
            state == BoardState.FitToRun && BoardStates.OverdueWords(result.Boards.Count(board => board.IsFitButOverdue)) is { } overdue
                ? $" ({overdue})"
                : string.Empty;
    }

    // Those that are counted behind one that is told, too.
    private static int All(IEnumerable<Finding> findings) => findings.Sum(finding => 1 + finding.More);

    private void WriteOne(TextWriter target, Finding finding, SourceText? source)
    {
        var severity = finding.Severity switch
        {
            Severity.Error => Colours.Wrong("error"),
            Severity.Warning => Colours.Doubtful("warning"),
            _ => "note",
        };
        target.WriteLine(
            $"{Printable.Escape(finding.Place.ToString())}: {severity}: {Printable.Escape(finding.Message)} [{finding.Check}]"
        );
        if (source is not null)
        {
            Excerpt(target, finding.Place, source);
        }

        if (finding.NextStep is { } next)
        {
            target.WriteLine($"    = {Printable.Escape(next)}");
        }

        foreach (var related in finding.Related)
        {
            target.WriteLine($"    = {Printable.Escape(related.Place.ToString())}: {Printable.Escape(related.Note)}");
        }

        target.WriteLine($"    = ohmstead explain {finding.Check}");
        target.WriteLine();
    }

    // The mark stands under the cell an editor shows: tabs are four wide, wide characters two, combining marks none. A line may have
    // millions of characters, and many findings: only what is shown of it is looked at.
    private static void Excerpt(TextWriter target, Place place, SourceText source)
    {
        if (place.Line > source.LineCount)
        {
            return;
        }

        var line = source.SpotAt(source.LineEnd(place.Line)).Column - 1;
        var column = Math.Min(place.Column - 1, line);
        var from = line > Widest && place.Column > Widest / 2 ? Math.Max(0, Math.Min(column - (Widest / 2), line - 1)) : 0;
        var start = source.OffsetOf(new(place.Line, from + 1));
        var end = source.EndOf(new(place.Line, from + 1, Math.Min(Widest, line - from)));
        var visible = source
            .Text[start..end]
            .EnumerateRunes()
            .Select(rune => rune.Value == '\t' ? "    " : Printable.Escape(rune.ToString()))
            .ToArray();
        var number = place.Line.ToString(CultureInfo.InvariantCulture);
        var before = visible.Take(column - from).Sum(Width);
        var under = Math.Max(1, visible.Skip(column - from).Take(Math.Max(1, place.Length)).Sum(Width));
        target.WriteLine($"  {number} | {string.Concat(visible)}");
        target.WriteLine($"  {new string(' ', number.Length)} | {new string(' ', before)}{new string('^', under)}");
    }

    private static int Width(string cell)
    {
        var width = 0;
        foreach (var rune in cell.EnumerateRunes())
        {
            width +=
                System.Text.Rune.GetUnicodeCategory(rune)
                    is UnicodeCategory.NonSpacingMark
                        or UnicodeCategory.EnclosingMark
                        or UnicodeCategory.Format
                    ? 0
                : rune.Value
                    is (>= 0x1100 and <= 0x115F)
                        or (>= 0x2E80 and <= 0xA4CF)
                        or (>= 0xAC00 and <= 0xD7A3)
                        or (>= 0xF900 and <= 0xFAFF)
                        or (>= 0xFE30 and <= 0xFE6F)
                        or (>= 0xFF00 and <= 0xFF60)
                        or (>= 0x1F300 and <= 0x1FAFF)
                    ? 2
                : 1;
        }

        return width;
    }

    private static SourceText? Read(CollectionFolder folder, string path) =>
        folder.Files.ForWorker(ReadingLimits.Usual).Open(path) is ({ Length: > 0 } bytes, null) ? new(path, Text(bytes)) : null;

    // As a file is read: without the mark of its encoding.
    private static string Text(ReadOnlyMemory<byte> bytes)
    {
        using var reader = new StreamReader(new MemoryStream(bytes.ToArray()));
        return reader.ReadToEnd();
    }
}
