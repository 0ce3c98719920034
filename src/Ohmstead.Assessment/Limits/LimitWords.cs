using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Limits;

/// <summary>The words in which limits are told.</summary>
internal static class LimitWords
{
    private const int CloseDigits = 7;

    /// <summary>The two ends of an interval in short; ends that lie close together are told with more digits.</summary>
    public static (string Lower, string Upper) Ends(Quantity lower, Quantity upper) =>
        Math.Abs(upper.Value - lower.Value) < Math.Abs(lower.Value) / 100m
            ? (QuantityText.Format(lower, CloseDigits), QuantityText.Format(upper, CloseDigits))
            : (Short(lower), Short(upper));

    /// <summary>A limit's interval in short.</summary>
    public static string Range(Interval interval) =>
        (interval.Lower, interval.Upper) switch
        {
            ({ } lower, { } upper) when Ends(lower, upper) is var ends => $"{ends.Lower} … {ends.Upper}",
            ({ } lower, null) => $"at least {Short(lower)}",
            (null, { } upper) => $"at most {Short(upper)}",
            _ => "none",
        };

    /// <summary>A quantity exactly where that is short, else with four significant digits: 376 µF, 677.3 mΩ.</summary>
    public static string Short(Quantity quantity)
    {
        const int longest = 10;
        var exact = QuantityText.Format(quantity);
        return exact.Length <= longest ? exact : QuantityText.Format(quantity, 4);
    }
}
