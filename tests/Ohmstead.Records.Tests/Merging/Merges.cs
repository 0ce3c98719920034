using System.Text;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Merging;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Merging;

/// <summary>Merges texts of a test.</summary>
internal static class Merges
{
    /// <summary>A board that two people have in their hands.</summary>
    internal const string Board = """
        ---
        board: SP-0007
        title: Tide-gauge logger   # the one from the east well
        bench:
          - date: 2026-02-28
            by: RK
            temperature: 19 °C
            instrument: bridge-1
            found:
              - { at: C1, what: crazed, severity: safety }
            readings:
              # with a leg lifted
              - { part: C3, circuit: out, frequency: 120 Hz, capacitance: 31.8 µF, esr: 9.4 Ω }
              - { part: C4, circuit: out, frequency: 120 Hz, capacitance: 34.4 µF }
            work:
              - { part: C1, did: removed, kept: bag 1 }
        waiting:
          - { since: 2026-03-05, for: suppression capacitors, order: PO-03 }
        ---

        ## Story
        The smell was C1.

        It stood in the signals room.

        """;

    /// <summary>The drawer.</summary>
    internal const string Stock = """
        lots:
          - { lot: L-001, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 35 V, quantity: 6 }
          - { lot: L-002, kind: cell, quantity: 4 }

        orders:
          - { order: PO-01, placed: 2026-01-12, for: cells }

        """;

    internal static MergeOutcome Of(string? before, string one, string other, string schema = "board", int size = 7) =>
        OfBytes(
            before is null ? null : Encoding.UTF8.GetBytes(before),
            Encoding.UTF8.GetBytes(one),
            Encoding.UTF8.GetBytes(other),
            schema,
            size
        )!;

    internal static MergeOutcome? OfBytes(byte[]? before, byte[] one, byte[] other, string schema = "board", int size = 7) =>
        RecordMerge.Merge(File(schema, size), before is null ? null : before.AsMemory(), one, other);

    internal static string TextOf(MergeOutcome outcome) => Encoding.UTF8.GetString(outcome.Content.Span);

    /// <summary>A text with something put behind a line of it.</summary>
    internal static string Behind(this string text, string line, string added)
    {
        Assert.Contains(line + "\n", text, StringComparison.Ordinal);
        return text.Replace(line + "\n", line + "\n" + added, StringComparison.Ordinal);
    }

    internal static string With(this string text, string old, string put)
    {
        Assert.Contains(old, text, StringComparison.Ordinal);
        return text.Replace(old, put, StringComparison.Ordinal);
    }

    internal static MergedFile File(string schema, int size = 7) =>
        new(
            Reads.PathOf(schema),
            schema is "board" or "design" ? FileForm.Markdown : FileForm.Yaml,
            schema == "meters" ? null : FileShapes.All.Single(file => file.SchemaName == schema).Shape,
            new YamlNodeReader(),
            (path, reading) =>
                schema switch
                {
                    "board" => FileBinding.Board(path, reading).Findings,
                    "design" => FileBinding.Design(path, reading).Findings,
                    "collection" => FileBinding.Collection(path, reading).Findings,
                    "instruments" => FileBinding.Instruments(path, reading).Findings,
                    "meters" => MeterBinding.Meters(path, reading).Findings,
                    _ => FileBinding.Stock(path, reading).Findings,
                },
            size
        );
}
