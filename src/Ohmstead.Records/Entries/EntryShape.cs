using System.Collections.Frozen;

namespace Ohmstead.Records.Entries;

/// <summary>What the entries of a list are, and what they are about.</summary>
/// <param name="Kind">What they are.</param>
/// <param name="Of">The keys of what an entry is about; the first that is written counts.</param>
internal sealed record EntryShape(EntryKind Kind, string[] Of)
{
    /// <summary>The lists of files, by key.</summary>
    public static FrozenDictionary<string, EntryShape> OfFiles { get; } =
        new Dictionary<string, EntryShape>(StringComparer.Ordinal)
        {
            ["parts"] = new(EntryKind.Part, ["ref"]),
            ["points"] = new(EntryKind.Point, ["point"]),
            ["hazards"] = new(EntryKind.Hazard, ["at"]),
            ["known_faults"] = new(EntryKind.KnownFault, ["at"]),
            ["waiting"] = new(EntryKind.Wait, ["since"]),
            ["whereabouts"] = new(EntryKind.Whereabouts, ["date"]),
            ["formerly"] = new(EntryKind.FormerNumber, ["number"]),
            ["lots"] = new(EntryKind.Lot, ["lot"]),
            ["orders"] = new(EntryKind.Order, ["order"]),
            ["instruments"] = new(EntryKind.Instrument, ["id"]),
        }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The lists of an instrument, by key.</summary>
    public static FrozenDictionary<string, EntryShape> OfInstruments { get; } =
        new Dictionary<string, EntryShape>(StringComparer.Ordinal)
        {
            ["calibrations"] = new(EntryKind.Calibration, ["date"]),
            ["accuracy"] = new(EntryKind.Accuracy, ["measures"]),
        }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The lists of a visit, by key.</summary>
    public static FrozenDictionary<string, EntryShape> OfVisits { get; } =
        new Dictionary<string, EntryShape>(StringComparer.Ordinal)
        {
            ["found"] = new(EntryKind.Finding, ["at"]),
            ["readings"] = new(EntryKind.Reading, ["part", "point", "lot"]),
            ["work"] = new(EntryKind.Work, ["part", "at"]),
            ["decided"] = new(EntryKind.Decision, ["part", "at"]),
            ["proof"] = new(EntryKind.Proof, ["point"]),
            ["scrapped"] = new(EntryKind.Scrapped, ["lot"]),
            ["photos"] = new(EntryKind.Photograph, ["file"]),
        }.ToFrozenDictionary(StringComparer.Ordinal);
}
