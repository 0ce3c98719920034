using System.Collections.Frozen;

namespace Ohmstead.Records.Entries;

/// <summary>What the entries of a list are, and which of their keys tell one from the other.</summary>
/// <param name="Kind">What they are.</param>
/// <param name="Of">The keys of what an entry is about; the first that is written counts.</param>
/// <param name="Names">The other keys that tell it from its neighbours.</param>
internal sealed record EntryShape(EntryKind Kind, string[] Of, string[] Names)
{
    /// <summary>The lists of files, by key.</summary>
    public static FrozenDictionary<string, EntryShape> OfFiles { get; } =
        new Dictionary<string, EntryShape>(StringComparer.Ordinal)
        {
            ["parts"] = new(EntryKind.Part, ["ref"], []),
            ["points"] = new(EntryKind.Point, ["point"], []),
            ["hazards"] = new(EntryKind.Hazard, ["at"], ["hazard"]),
            ["known_faults"] = new(EntryKind.KnownFault, ["at"], ["what"]),
            ["waiting"] = new(EntryKind.Wait, ["since"], ["for"]),
            ["whereabouts"] = new(EntryKind.Whereabouts, ["date"], ["did"]),
            ["formerly"] = new(EntryKind.FormerNumber, ["number"], []),
            ["lots"] = new(EntryKind.Lot, ["lot"], []),
            ["orders"] = new(EntryKind.Order, ["order"], []),
            ["instruments"] = new(EntryKind.Instrument, ["id"], []),
        }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The lists of an instrument, by key.</summary>
    public static FrozenDictionary<string, EntryShape> OfInstruments { get; } =
        new Dictionary<string, EntryShape>(StringComparer.Ordinal)
        {
            ["calibrations"] = new(EntryKind.Calibration, ["date"], []),
            ["accuracy"] = new(EntryKind.Accuracy, ["measures"], ["up_to"]),
        }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The lists of a visit, by key.</summary>
    public static FrozenDictionary<string, EntryShape> OfVisits { get; } =
        new Dictionary<string, EntryShape>(StringComparer.Ordinal)
        {
            ["found"] = new(EntryKind.Finding, ["at"], ["what"]),
            ["readings"] = new(EntryKind.Reading, ["part", "point", "lot"], ["lot", "piece", "state", "circuit", "corrects"]),
            ["work"] = new(EntryKind.Work, ["part", "at"], ["did"]),
            ["decided"] = new(EntryKind.Decision, ["part", "at"], ["decision"]),
            ["proof"] = new(EntryKind.Proof, ["point"], ["corrects"]),
            ["scrapped"] = new(EntryKind.Scrapped, ["lot"], ["piece"]),
            ["photos"] = new(EntryKind.Photograph, ["file"], []),
        }.ToFrozenDictionary(StringComparer.Ordinal);
}
