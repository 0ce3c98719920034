using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Records.Shapes;

/// <summary>One key that a mapping may hold: its name, what its value is, and words and an example that explain it to a person.</summary>
/// <param name="Name">The key as written in a record.</param>
/// <param name="Kind">What its value is.</param>
/// <param name="Description">One sentence for people and editors.</param>
/// <param name="Example">A value as a person would write it.</param>
public sealed record Key(string Name, ValueKind Kind, string Description, string Example)
{
    /// <summary>True when a mapping without this key says too little to be read.</summary>
    public bool IsNeeded { get; init; }

    /// <summary>The dimension of a quantity.</summary>
    public Dimension Dimension { get; init; }

    /// <summary>The closed list a word comes from.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>What a word is that is not in the closed list, as it follows "is": no kind of work, neither yes nor no.</summary>
    public string OtherWord { get; init; } = string.Empty;

    /// <summary>True when the text stands on the thing itself, on its label or on a paper: it says what is there, whatever is
    /// renamed.</summary>
    public bool IsPrinted { get; init; }

    /// <summary>The shape of a mapping, or of each item of a list of mappings.</summary>
    public Shape? Inner { get; init; }

    /// <summary>A value that is any text.</summary>
    public static Key Text(string name, string description, string example) => new(name, ValueKind.Text, description, example);

    /// <summary>An identifier: text that is a page name or an anchor somewhere, so it has no spaces.</summary>
    public static Key Id(string name, string description, string example) => new(name, ValueKind.Id, description, example);

    /// <summary>The https address of a folder on the web.</summary>
    public static Key Address(string name, string description, string example) => new(name, ValueKind.Address, description, example);

    /// <summary>The https address at which a record is seen, with places for its commit and its path.</summary>
    public static Key AddressOfRecords(string name, string description, string example) =>
        new(name, ValueKind.AddressOfRecords, description, example);

    /// <summary>A word from a closed list.</summary>
    /// <param name="name">The key.</param>
    /// <param name="words">The list.</param>
    /// <param name="otherWord">What any other word is, as it follows "is".</param>
    /// <param name="description">One sentence for people and editors.</param>
    public static Key Word(string name, IReadOnlyList<string> words, string otherWord, string description) =>
        new(name, ValueKind.Word, description, words[0]) { Words = words, OtherWord = otherWord };

    /// <summary>One or several words from a closed list, told as <see cref="Word"/> tells it.</summary>
    public static Key SomeWords(string name, IReadOnlyList<string> words, string otherWord, string description) =>
        Word(name, words, otherWord, description) with
        {
            Kind = ValueKind.Words,
        };

    /// <summary>A quantity with its unit.</summary>
    public static Key Quantity(string name, Dimension dimension, string description, string example) =>
        new(name, ValueKind.Quantity, description, example) { Dimension = dimension };

    /// <summary>What an instrument showed: a quantity, one side of one, or open, short, over range.</summary>
    public static Key Indication(string name, Dimension dimension, string description, string example) =>
        new(name, ValueKind.Indication, description, example) { Dimension = dimension };

    /// <summary>A quantity whose dimension another key decides, such as the nominal value of a test point.</summary>
    public static Key AnyQuantity(string name, string description, string example) =>
        new(name, ValueKind.AnyQuantity, description, example);

    /// <summary>A tolerance.</summary>
    public static Key Tolerance(string name, string description, string example) => new(name, ValueKind.Tolerance, description, example);

    /// <summary>A whole day.</summary>
    public static Key Date(string name, string description, string example) => new(name, ValueKind.Date, description, example);

    /// <summary>A day, a month or a year: as much as people know.</summary>
    public static Key RoughDate(string name, string description, string example) => new(name, ValueKind.RoughDate, description, example);

    /// <summary>A number without a unit.</summary>
    public static Key Number(string name, string description, string example) => new(name, ValueKind.Number, description, example);

    /// <summary>A whole number, not negative.</summary>
    public static Key Count(string name, string description, string example) => new(name, ValueKind.Count, description, example);

    /// <summary>A mapping of a given shape.</summary>
    public static Key Mapping(string name, Shape inner, string description) =>
        new(name, ValueKind.Mapping, description, inner.Example) { Inner = inner };

    /// <summary>A list of mappings of a given shape.</summary>
    public static Key List(string name, Shape inner, string description) =>
        new(name, ValueKind.List, description, inner.Example) { Inner = inner };

    /// <summary>The same key, whose text stands on the thing itself, on its label or on a paper.</summary>
    public Key AsPrinted() => this with { IsPrinted = true };

    /// <summary>The same key, without which the mapping cannot be read.</summary>
    public Key Needed() => this with { IsNeeded = true };
}
