using System.Collections.Immutable;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Obligations.Basis;

/// <summary>
/// What was found in the files that boards share, by what it is about: an error in a lot, a design or an instrument is an error about every
/// board on which it counts, and about no other.
/// </summary>
public sealed class SharedFaults
{
    private readonly ILookup<string, Finding> boards;
    private readonly ILookup<string, Finding> designs;
    private readonly ILookup<string, Finding> lots;
    private readonly ILookup<string, Finding> instruments;

    private SharedFaults(
        ILookup<string, Finding> boards,
        ILookup<string, Finding> designs,
        ILookup<string, Finding> lots,
        ILookup<string, Finding> instruments
    ) => (this.boards, this.designs, this.lots, this.instruments) = (boards, designs, lots, instruments);

    /// <summary>Nothing was found.</summary>
    public static SharedFaults None { get; } = From(Workshop.Empty, []);

    /// <summary>Sorts what holds boards back by what it is about.</summary>
    /// <param name="workshop">The files.</param>
    /// <param name="findings">What was found in them.</param>
    public static SharedFaults From(Workshop workshop, IEnumerable<Finding> findings)
    {
        ImmutableArray<Finding> holding = [.. findings.Where(CheckEffects.HoldsBack)];
        return new(
            holding.ToLookup(finding => finding.Place.Path, StringComparer.Ordinal),
            holding
                .Join(
                    workshop.DesignFiles,
                    finding => finding.Place.Path,
                    design => design.Path,
                    (finding, design) => (Name: design.Id.Value, Finding: finding),
                    StringComparer.Ordinal
                )
                .ToLookup(pair => pair.Name, pair => pair.Finding, StringComparer.Ordinal),
            In(holding, workshop.StockFile?.Path, LotsOf(workshop)),
            In(
                holding,
                workshop.InstrumentsFile?.Path,
                [.. workshop.InstrumentsFile?.Instruments.Select(instrument => (instrument.Id.Spot, (string?)instrument.Id.Value)) ?? []]
            )
        );
    }

    /// <summary>What was found about the file of a board when all boards were compared.</summary>
    public IEnumerable<Finding> OfBoard(string path) => boards[path];

    /// <summary>What was found in the file of a design.</summary>
    public IEnumerable<Finding> OfDesign(string name) => designs[name];

    /// <summary>What was found about a lot: where it stands, and in readings of it.</summary>
    public IEnumerable<Finding> OfLot(string name) => lots[name];

    /// <summary>What was found about an instrument.</summary>
    public IEnumerable<Finding> OfInstrument(string name) => instruments[name];

    // A finding is about the entry that it stands in: the last one that begins before it.
    // One behind which more are counted and not told may be about any of them: nothing of the file is trusted then.
    private static ILookup<string, Finding> In(
        ImmutableArray<Finding> findings,
        string? path,
        ImmutableArray<(Spot Spot, string? Name)> entries
    )
    {
        var inOrder = new EntriesInOrder(entries);
        return findings
            .Where(finding => finding.Place.Path == path)
            .SelectMany(finding =>
                (
                    finding.More > 0 ? inOrder.Names
                    : inOrder.At(finding.Place) is { } name ? [name]
                    : []
                ).Select(name => (Name: name, Finding: finding))
            )
            .ToLookup(pair => pair.Name, pair => pair.Finding, StringComparer.Ordinal);
    }

    // What begins there and is no lot ends what belongs to the lot before it.
    private static ImmutableArray<(Spot Spot, string? Name)> LotsOf(Workshop workshop) =>
        workshop.StockFile is not { } stock
            ? []
            :
            [
                .. stock.Lots.Select(lot => (lot.Spot, (string?)lot.Id.Value)),
                .. stock.Orders.Select(order => (order.Spot, (string?)null)),
                .. stock.Orders.SelectMany(order => order.Lines).Select(line => (line.Spot, (string?)null)),
                .. stock.Orders.SelectMany(order => order.Came).Select(came => (came.Spot, came.Lot?.Value)),
                .. stock.Bench.Select(visit => (visit.Spot, (string?)null)),
                .. stock.Bench.SelectMany(visit => visit.Readings).Select(reading => (reading.Spot, reading.Lot?.Value)),
            ];
}
