using Ohmstead.Assessment.Workshops;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Yaml;

namespace Ohmstead.Writing;

/// <summary>Entries of the file of the instruments.</summary>
/// <param name="terminal">Where they are told.</param>
/// <param name="run">How records are read and judged.</param>
/// <param name="files">The collection.</param>
internal sealed class InstrumentEntry(Terminal terminal, RunOptions run, CollectionFolder files)
{
    private const string Path = "instruments.yaml";
    private const string List = "instruments";
    private const string Empty = "# The instruments, with every calibration: none is removed.\ninstruments: []\n";

    private readonly SharedFileEntry file = new(terminal, run, files, Path, Empty);

    /// <summary>The instruments as they are.</summary>
    public Workshop Workshop => file.Workshop;

    /// <summary>Adds an instrument, in lines of its own: calibrations follow in the years to come.</summary>
    /// <param name="keys">What it is, by key.</param>
    /// <param name="calibration">Its calibration as one line of YAML; null for none.</param>
    /// <param name="accuracy">What it is good for, each as one line of YAML.</param>
    /// <param name="how">Whether what looks like a slip is written all the same, and whether nothing is written at all.</param>
    /// <returns>The exit code.</returns>
    public int Add(
        IReadOnlyDictionary<string, string?> keys,
        string? calibration,
        IReadOnlyList<string> accuracy,
        (bool IsSure, bool IsTrial) how
    )
    {
        var item = FlowText.Mapping(FileShapes.Instrument.Keys.Select(key => (key.Name, keys.GetValueOrDefault(key.Name))));
        return file.Change(
            how.IsSure,
            how.IsTrial,
            editor =>
            {
                var outcome = editor.Append(FileShapes.Instruments, List, item);
                foreach (var (key, lines) in new[] { ("calibrations", calibration is null ? [] : [calibration]), ("accuracy", accuracy) })
                {
                    if (lines.Count > 0 && outcome.Text is { } text)
                    {
                        var again = RecordEditor.Open(Path, text, FileForm.Yaml, NodeReaders.ForWorker(0), out _);
                        outcome = again is null ? outcome : Append(again, keys["id"]!, key, lines);
                    }
                }

                return (outcome, item);
            },
            (after, _) => Tell(after, keys["id"]!)
        );
    }

    /// <summary>Adds a calibration behind those that stand there.</summary>
    /// <param name="id">The instrument, which is there.</param>
    /// <param name="calibration">The calibration as one line of YAML.</param>
    /// <param name="isTrial">True to show what would be written, and write nothing.</param>
    /// <returns>The exit code.</returns>
    public int Calibrated(string id, string calibration, bool isTrial) =>
        file.Change(
            isSure: false,
            isTrial,
            editor => (Append(editor, id, "calibrations", [calibration]), $"{id} {calibration}"),
            (after, _) => Tell(after, id)
        );

    private static EditOutcome Append(RecordEditor editor, string id, string key, IReadOnlyList<string> lines)
    {
        var items = new ItemSplicer(editor);
        return items.Append(FileShapes.Instrument, (List, items.IndexOf(List, "id", id)), key, lines);
    }

    private void Tell(Workshop after, string id) =>
        terminal.Out.WriteLine(
            after.Instruments[id].Calibrations is { Length: > 0 } all
                ? $"  its calibration holds until {IsoDate.Text(CalibrationRules.Until(all.MaxBy(one => one.Date.Value)!))}"
                : Printable.Escape($"  no calibration is on record; enter one: ohmstead calibration {id} --valid \"12 months\"")
        );
}
