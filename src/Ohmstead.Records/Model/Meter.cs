using System.Collections.Immutable;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Model;

/// <summary>How a meter tells what it shows.</summary>
public enum MeterTalk
{
    /// <summary>It sends a line for each reading by itself, and nothing is sent to it.</summary>
    Lines,

    /// <summary>It is asked, in the words of IEEE 488.2 and SCPI.</summary>
    Scpi,
}

/// <summary>What parts the fields of a line.</summary>
public enum MeterSeparator
{
    /// <summary>A comma.</summary>
    Comma,

    /// <summary>A semicolon.</summary>
    Semicolon,

    /// <summary>Spaces or tabs, however many.</summary>
    Spaces,
}

/// <summary>What a field of a line is that is no measured quantity of its own.</summary>
public enum MeterFieldRole
{
    /// <summary>A quantity that is named beside it.</summary>
    Measured,

    /// <summary>The figure of the quantity that another field names.</summary>
    Reading,

    /// <summary>The name of the quantity.</summary>
    Quantity,

    /// <summary>The unit of the field before it.</summary>
    Unit,

    /// <summary>The range of the first quantity.</summary>
    Range,

    /// <summary>Whether the reading is good.</summary>
    Status,

    /// <summary>Nothing that is wanted.</summary>
    Nothing,
}

/// <summary>What a field holds.</summary>
/// <param name="Role">What it is for.</param>
/// <param name="Measured">The quantity, where it is one.</param>
public readonly record struct MeterHolds(MeterFieldRole Role, Measured? Measured);

/// <summary>A word that a meter says, and the quantity that it means.</summary>
/// <param name="Says">The word.</param>
/// <param name="Is">The quantity.</param>
public sealed record MeterName(Written<string> Says, Written<MeterHolds> Is);

/// <summary>One field of a line.</summary>
/// <param name="Holds">What it holds.</param>
/// <param name="Unit">The unit of its figure; null where the line tells it.</param>
/// <param name="Good">What a status says when all is well, parted by spaces.</param>
/// <param name="Names">The words of a quantity.</param>
public sealed record MeterField(Written<MeterHolds> Holds, Written<string>? Unit, Written<string>? Good, ImmutableArray<MeterName> Names);

/// <summary>How one meter tells what it shows.</summary>
/// <param name="Name">Its name, as it is asked for.</param>
/// <param name="Talks">Whether it is asked or listened to.</param>
/// <param name="Fields">The fields of its line, in order.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record Meter(Written<string> Name, Written<MeterTalk> Talks, ImmutableArray<MeterField> Fields, Spot Spot)
{
    /// <summary>What it is.</summary>
    public Written<string>? What { get; init; }

    /// <summary>The instrument that it is, from instruments.yaml.</summary>
    public Written<string>? Instrument { get; init; }

    /// <summary>The query for a reading.</summary>
    public Written<string>? Ask { get; init; }

    /// <summary>The query for its range.</summary>
    public Written<string>? AskRange { get; init; }

    /// <summary>The query for its test frequency.</summary>
    public Written<string>? AskFrequency { get; init; }

    /// <summary>What parts the fields.</summary>
    public MeterSeparator Separator { get; init; }

    /// <summary>Texts that mean beyond the range or no reading, parted by spaces.</summary>
    public Written<string>? Overload { get; init; }
}

/// <summary>meters.yaml.</summary>
/// <param name="Path">The path of the file.</param>
/// <param name="Meters">The meters.</param>
public sealed record MetersFile(string Path, ImmutableArray<Meter> Meters);
