using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Support;

/// <summary>Worked examples in few words: a part, a reading, a verdict; or a board, and its state.</summary>
internal static class Worked
{
    internal const string Instruments = """
        instruments:
          - id: bridge-2
            what: component bridge
            accuracy:
              - { measures: capacitance, error: 0.5 %, digits: 5, step: 0.1 µF }
          - id: bridge-3
            what: component bridge with a certificate
            accuracy:
              - { measures: capacitance, error: 0.5 %, digits: 5, step: 0.1 µF, certificate: 1 % }
          - id: meter-1
            what: digital voltmeter
            accuracy:
              - { measures: voltage, error: 0.5 %, digits: 2, step: 10 mV }
          - id: ohms-1
            what: insulation meter with the ends of its ranges
            accuracy:
              - { measures: insulation, error: 5 %, up_to: 20 GΩ }
              - { measures: resistance, error: 1 %, up_to: 2 MΩ }
              - { measures: resistance, error: 2 %, up_to: 20 MΩ }
              - { measures: leakage, error: 3 %, up_to: 200 µA }
        """;

    /// <summary>The verdict on the one value of a reading of one part.</summary>
    internal static Verdict Verdict(string part, string reading)
    {
        var board = Board(
            $"parts:\n  - {{ ref: X1, {part} }}\nbench:\n  - date: 2026-03-14\n    readings:\n      - {{ part: X1, {reading} }}"
        );
        return Assert.Single(Assert.Single(board.Readings).Verdicts);
    }

    /// <summary>The verdict on the one value of a proof at one point.</summary>
    /// <param name="point">The point, without its name.</param>
    /// <param name="proof">What was read, without the name of the point.</param>
    /// <param name="decision">The decision rule of the collection, or null for the one it has without saying.</param>
    internal static Verdict Proof(string point, string proof, string? decision = null)
    {
        var board = Board(
            decision: decision,
            record: $"points:\n  - {{ point: P1, {point} }}\nbench:\n  - date: 2026-03-14\n    proof:\n      - {{ point: P1, {proof} }}"
        );
        return Assert.Single(Assert.Single(board.Proofs).Verdicts);
    }

    /// <summary>Assesses a board; what is given is its front matter after the title.</summary>
    internal static JudgedBoard Board(string record, string? stock = null, string? design = null, string? decision = null)
    {
        var blocks = new List<CaseBlock>
        {
            new("markdown", "boards/SP-0001.md", 0, $"---\nboard: SP-0001\ntitle: Tide-gauge logger\n{record}\n---\n"),
            new("yaml", "instruments.yaml", 0, Instruments + "\n"),
        };
        if (stock is not null)
        {
            blocks.Add(new("yaml", "stock.yaml", 0, stock + "\n"));
        }

        if (decision is not null)
        {
            blocks.Add(new("yaml", "collection.yaml", 0, $"collection: Saltmarsh Point weather collection\ndecision: {decision}\n"));
        }

        if (design is not null)
        {
            blocks.Add(
                new("markdown", "designs/tide-logger.md", 0, $"---\ndesign: tide-logger\ntitle: Tide-gauge logger\n{design}\n---\n")
            );
        }

        var collection = new SmallCollection(blocks);
        Assert.Empty(collection.ReadingFindings.Select(finding => $"{finding.Place}: {finding.Message}"));
        return Assert.Single(collection.Boards);
    }
}
