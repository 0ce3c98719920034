using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Binding;

/// <summary>What to write where nothing stands behind a key. No value is shown that could be copied as a fact.</summary>
internal static class MissingValue
{
    // Of a longer list nobody reads all words in one line.
    private const int MostWords = 8;

    /// <summary>The next step.</summary>
    internal static string Next(Key key) =>
        $"write {key.Name}: with {What(key)}" + (key.IsNeeded ? string.Empty : $", or leave {key.Name} out when it is not known");

    /// <summary>What is expected there.</summary>
    internal static string What(Key key) =>
        key.Kind switch
        {
            ValueKind.RoughDate => "the year, the month or the day",
            ValueKind.Date => "the day",
            ValueKind.Quantity
            or ValueKind.Indication
            or ValueKind.AnyQuantity when key.Dimension is not (Dimension.Number or Dimension.Ratio) => "the value with its unit",
            ValueKind.Tolerance => "the tolerance with its unit",
            ValueKind.Count => "the count",
            ValueKind.Word or ValueKind.Words when key.Words.Count <= MostWords => $"one of {string.Join(", ", key.Words)}",
            ValueKind.Word or ValueKind.Words => "one of the known words",
            ValueKind.Id => "the name",
            ValueKind.Address or ValueKind.AddressOfRecords => "the https address",
            ValueKind.Text => "the text",
            _ => "the value",
        };
}
