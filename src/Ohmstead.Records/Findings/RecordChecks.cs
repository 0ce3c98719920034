namespace Ohmstead.Records.Findings;

/// <summary>The names of the checks that reading a record makes, once its text is sound. Each has a page of the same name.</summary>
public static class RecordChecks
{
    /// <summary>A key that this mapping does not know.</summary>
    public const string KeyUnknown = "key-unknown";

    /// <summary>A key without which the mapping cannot be read.</summary>
    public const string KeyMissing = "key-missing";

    /// <summary>A key with nothing behind it.</summary>
    public const string ValueMissing = "value-missing";

    /// <summary>A mapping or list where a single value is expected, or the other way round.</summary>
    public const string ValueShape = "value-shape";

    /// <summary>A word that is not in its closed list.</summary>
    public const string WordUnknown = "word-unknown";

    /// <summary>A quantity that cannot be read.</summary>
    public const string QuantityUnreadable = "quantity-unreadable";

    /// <summary>A tolerance that cannot be read, or whose letter has several meanings.</summary>
    public const string ToleranceUnreadable = "tolerance-unreadable";

    /// <summary>A date that cannot be read.</summary>
    public const string DateUnreadable = "date-unreadable";

    /// <summary>A number that cannot be read.</summary>
    public const string NumberUnreadable = "number-unreadable";

    /// <summary>A name that cannot be an anchor or a page.</summary>
    public const string NameUnusable = "name-unusable";

    /// <summary>An address at which no pages can be found.</summary>
    public const string AddressUnusable = "address-unusable";

    /// <summary>A record of a newer format than this program knows.</summary>
    public const string FormatNewer = "format-newer";

    /// <summary>A record of a format that there never was.</summary>
    public const string FormatUnknown = "format-unknown";

    /// <summary>A text that stands in curly quotes, which belong to it.</summary>
    public const string CurlyQuotes = "curly-quotes";

    /// <summary>A record that a JSON schema refuses although the reader had accepted it.</summary>
    public const string SchemaRefused = "schema-refused";

    /// <summary>All of them, in the order of this file.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        KeyUnknown,
        KeyMissing,
        ValueMissing,
        ValueShape,
        WordUnknown,
        QuantityUnreadable,
        ToleranceUnreadable,
        DateUnreadable,
        NumberUnreadable,
        NameUnusable,
        AddressUnusable,
        FormatNewer,
        FormatUnknown,
        CurlyQuotes,
        SchemaRefused,
    ];
}
