using System.Collections.Immutable;
using Ohmstead.Records.Entries;

namespace Ohmstead.Assessment.Changes;

/// <summary>What a judgement follows from, in the order in which a cause is looked for.</summary>
public enum InputKind
{
    /// <summary>What was measured: readings and proofs of the board.</summary>
    Reading,

    /// <summary>What was seen, done and decided, what it waits for and where it went.</summary>
    Work,

    /// <summary>What the board's own record says of its parts, points, hazards and duty.</summary>
    Marking,

    /// <summary>How its record is written: what reading it found, as an unknown key.</summary>
    Record,

    /// <summary>What its design says.</summary>
    Design,

    /// <summary>The drawer and the orders, and what other boards took of them.</summary>
    Stock,

    /// <summary>The instruments and their calibrations.</summary>
    Calibration,

    /// <summary>What the collection decided for all of it: the rule of decision, how often to look, the usual duty.</summary>
    Rule,

    /// <summary>The day on which it is judged.</summary>
    Day,

    /// <summary>The program that judges.</summary>
    Program,
}

/// <summary>A kind of file of a collection, for what its entries are as an input.</summary>
public enum InputFile
{
    /// <summary>The record of a board.</summary>
    Board,

    /// <summary>A design.</summary>
    Design,

    /// <summary>The stock.</summary>
    Stock,

    /// <summary>The instruments.</summary>
    Instruments,

    /// <summary>The collection's own file.</summary>
    Collection,
}

/// <summary>Kinds of inputs as they are told.</summary>
public static class InputKinds
{
    /// <summary>All of them, in the order in which a cause is looked for.</summary>
    public static ImmutableArray<InputKind> All { get; } = [.. Enum.GetValues<InputKind>()];

    /// <summary>The kind in a word.</summary>
    public static string Words(InputKind kind) =>
        kind switch
        {
            InputKind.Reading => "reading",
            InputKind.Work => "work",
            InputKind.Marking => "marking",
            InputKind.Record => "record",
            InputKind.Design => "design",
            InputKind.Stock => "stock",
            InputKind.Calibration => "calibration",
            InputKind.Rule => "rule",
            InputKind.Day => "day",
            InputKind.Program => "program",
        };

    /// <summary>What an entry of a file is as an input.</summary>
    public static InputKind For(InputFile file, EntryKind entry) =>
        file switch
        {
            InputFile.Design => InputKind.Design,
            InputFile.Stock => InputKind.Stock,
            InputFile.Instruments => InputKind.Calibration,
            InputFile.Collection => InputKind.Rule,
            InputFile.Board => entry switch
            {
                EntryKind.Reading or EntryKind.Proof => InputKind.Reading,
                EntryKind.Head or EntryKind.Part or EntryKind.Point or EntryKind.Hazard or EntryKind.FormerNumber => InputKind.Marking,
                _ => InputKind.Work,
            },
        };
}
