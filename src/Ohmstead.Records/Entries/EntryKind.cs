namespace Ohmstead.Records.Entries;

/// <summary>What sort of statement of a record an entry is.</summary>
public enum EntryKind
{
    /// <summary>What the file says of the thing as a whole: title, design, duty, decision rule.</summary>
    Head,

    /// <summary>A part of the list.</summary>
    Part,

    /// <summary>A test point.</summary>
    Point,

    /// <summary>Something that can hurt.</summary>
    Hazard,

    /// <summary>A fault that a design is known for.</summary>
    KnownFault,

    /// <summary>A visit to the bench: who, and how power was applied.</summary>
    Visit,

    /// <summary>Something seen.</summary>
    Finding,

    /// <summary>A reading.</summary>
    Reading,

    /// <summary>A proof.</summary>
    Proof,

    /// <summary>Something done.</summary>
    Work,

    /// <summary>A decision.</summary>
    Decision,

    /// <summary>A photograph.</summary>
    Photograph,

    /// <summary>Work that cannot go on.</summary>
    Wait,

    /// <summary>A step of where a board went.</summary>
    Whereabouts,

    /// <summary>A number that a board had before.</summary>
    FormerNumber,

    /// <summary>A lot in the drawer.</summary>
    Lot,

    /// <summary>An order.</summary>
    Order,

    /// <summary>Pieces of a lot that went to the bin.</summary>
    Scrapped,

    /// <summary>An instrument.</summary>
    Instrument,

    /// <summary>A calibration of an instrument.</summary>
    Calibration,

    /// <summary>What an instrument is good for in one quantity.</summary>
    Accuracy,
}

/// <summary>Kinds of entries as they are told.</summary>
public static class EntryKinds
{
    /// <summary>The kind in words.</summary>
    public static string Words(EntryKind kind) =>
        kind switch
        {
            EntryKind.Head => "head",
            EntryKind.Part => "part",
            EntryKind.Point => "point",
            EntryKind.Hazard => "hazard",
            EntryKind.KnownFault => "known fault",
            EntryKind.Visit => "visit",
            EntryKind.Finding => "finding",
            EntryKind.Reading => "reading",
            EntryKind.Proof => "proof",
            EntryKind.Work => "work",
            EntryKind.Decision => "decision",
            EntryKind.Photograph => "photograph",
            EntryKind.Wait => "wait",
            EntryKind.Whereabouts => "whereabouts",
            EntryKind.FormerNumber => "former number",
            EntryKind.Lot => "lot",
            EntryKind.Order => "order",
            EntryKind.Scrapped => "scrapped pieces",
            EntryKind.Instrument => "instrument",
            EntryKind.Calibration => "calibration",
            EntryKind.Accuracy => "accuracy",
        };

    /// <summary>Whether it says what was measured: what once was is corrected with a reason, and never rewritten.</summary>
    public static bool IsMeasured(EntryKind kind) => kind is EntryKind.Reading or EntryKind.Proof;
}
