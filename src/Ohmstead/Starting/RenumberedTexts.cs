using Ohmstead.Electronics;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;
using Ohmstead.Yaml;

namespace Ohmstead.Starting;

/// <summary>The texts of records after a board got another number, each spliced and read again.</summary>
/// <param name="terminal">Where it is told what keeps one from being spliced.</param>
/// <param name="root">The collection's folder.</param>
/// <param name="today">The day of this run.</param>
internal sealed class RenumberedTexts(Terminal terminal, string root, DateOnly today)
{
    /// <summary>Splices all of them.</summary>
    /// <param name="names">The number and the paths.</param>
    /// <param name="record">The record of the board.</param>
    /// <param name="moves">What moves beside it.</param>
    /// <param name="touched">The records that hold the number.</param>
    /// <returns>What changes; null where one cannot be spliced.</returns>
    public RenumberingPlan? Splice(BoardNames names, PathMove record, IReadOnlyList<PathMove> moves, string[] touched)
    {
        var changes = new List<RecordChange>();
        var told = new List<(string, int)>();
        var left = new List<string>();
        foreach (var path in touched.OrderBy(path => path == record.From))
        {
            var text = RecordFile.Read(root, path);
            if (Changed(names, path, text, path == record.From) is not var (changed, count))
            {
                return null;
            }

            var then = path == record.From ? record.To : path;
            if (changed != text)
            {
                changes.Add(new(path, text, changed));
                told.Add((then, count));
            }

            left.AddRange(Remaining(names, then, changed, path == record.From));
        }

        return new(names, record, moves, changes, told, left);
    }

    private (string Text, int Count)? Changed(BoardNames names, string path, string text, bool isOwn)
    {
        var form = RecordKind.Find(path)!.Form;
        if (RecordEditor.Open(path, text, form, NodeReaders.ForWorker(0), out _) is not { } editor)
        {
            Refuse($"{path} holds what cannot be read, and names {names.From}", "mend it first, 'check' says where");
            return null;
        }

        var renamed = BoardRenaming.Replace(editor, ShapeOf(path), names, isOwn);
        if (renamed.Outcome.Text is not { } changed)
        {
            Refuse($"{path}: {renamed.Outcome.Refusal!.Message}", renamed.Outcome.Refusal.NextStep);
            return null;
        }

        if (!isOwn)
        {
            return (changed, renamed.Changes);
        }

        var line = FlowText.Mapping([("number", names.From), ("until", IsoDate.Text(today))]);
        return
            Writing.Splice.Try(terminal, path, changed, form, again => (again.Append(FileShapes.Board, "formerly", line), line))
                is var (whole, _, _)
            ? (whole, renamed.Changes)
            : null;
    }

    private static IEnumerable<string> Remaining(BoardNames names, string path, string text, bool isOwn)
    {
        var source = new Records.Text.SourceText(path, text);
        return names
            .PlacesIn(text)
            .Select(source.LineAt)
            .Distinct()
            .Select(line => (line, Text: source.Line(line).ToString().Trim()))
            .Where(one => !(isOwn && one.Text.StartsWith($"- {{ number: {names.From}", StringComparison.Ordinal)))
            .Select(one => FormattableString.Invariant($"{path}:{one.line}: {one.Text}"));
    }

    private static Shape ShapeOf(string path) =>
        path switch
        {
            "collection.yaml" => FileShapes.Collection,
            "instruments.yaml" => FileShapes.Instruments,
            "stock.yaml" => FileShapes.Stock,
            _ when path.StartsWith("designs/", StringComparison.Ordinal) => FileShapes.Design,
            _ => FileShapes.Board,
        };

    private void Refuse(string problem, string next)
    {
        terminal.Error.WriteLine(Printable.Escape(problem));
        terminal.Error.WriteLine(Printable.Escape($"  = {next}"));
    }
}
