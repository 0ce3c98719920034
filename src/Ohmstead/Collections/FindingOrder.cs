using Ohmstead.Records.Findings;

namespace Ohmstead.Collections;

/// <summary>The one order of findings: path, line, column, check, message. It depends on nothing else, so equal input gives equal
/// output.</summary>
internal sealed class FindingOrder : IComparer<Finding>
{
    /// <summary>The order.</summary>
    public static FindingOrder Instance { get; } = new();

    /// <inheritdoc/>
    public int Compare(Finding? x, Finding? y)
    {
        if (x is null || y is null)
        {
            return (x is null ? 0 : 1) - (y is null ? 0 : 1);
        }

        var order = string.CompareOrdinal(x.Place.Path, y.Place.Path);
        order = order != 0 ? order : x.Place.Line.CompareTo(y.Place.Line);
        order = order != 0 ? order : x.Place.Column.CompareTo(y.Place.Column);
        order = order != 0 ? order : string.CompareOrdinal(x.Check, y.Check);
        return order != 0 ? order : string.CompareOrdinal(x.Message, y.Message);
    }
}
