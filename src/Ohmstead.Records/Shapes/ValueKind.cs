namespace Ohmstead.Records.Shapes;

/// <summary>What the value of a key is.</summary>
public enum ValueKind
{
    /// <summary>Any text.</summary>
    Text,

    /// <summary>Text that names something: no spaces, usable as an anchor or a file name.</summary>
    Id,

    /// <summary>The https address of a folder on the web.</summary>
    Address,

    /// <summary>The https address at which a record is seen, with places for its commit and its path.</summary>
    AddressOfRecords,

    /// <summary>A word from a closed list.</summary>
    Word,

    /// <summary>One word from a closed list, or a list of them.</summary>
    Words,

    /// <summary>A quantity of a known dimension.</summary>
    Quantity,

    /// <summary>What an instrument showed of a known dimension: a quantity, one side of one (<c>&gt; 20 MΩ</c>), or a word
    /// (<c>open</c>).</summary>
    Indication,

    /// <summary>A quantity whose dimension another key decides.</summary>
    AnyQuantity,

    /// <summary>A tolerance such as <c>-10/+50 %</c>.</summary>
    Tolerance,

    /// <summary>A day.</summary>
    Date,

    /// <summary>A day, a month or a year.</summary>
    RoughDate,

    /// <summary>A number without a unit.</summary>
    Number,

    /// <summary>A whole number, not negative.</summary>
    Count,

    /// <summary>A mapping.</summary>
    Mapping,

    /// <summary>A list of mappings.</summary>
    List,
}
