namespace Ohmstead.Electronics.Hazards;

/// <summary>What must be assumed of an oil-filled capacitor by the law of the United States; other countries have laws of their
/// own.</summary>
public static class PolychlorinatedOil
{
    private static readonly Source Law = Source.Published("40 CFR 761.2(a)(4), 761.3", "United States");
    private static readonly DateOnly Bound = new(1979, 7, 2);

    /// <summary>Whether 500 ppm or more must be assumed: made before 2 July 1979 or nobody knows when, and neither tested nor marked "No
    /// PCBs".</summary>
    /// <param name="made">The last day on which it can have been made, or null when that is not known.</param>
    public static Worked<bool> MustBeAssumed(DateOnly? made) =>
        made switch
        {
            null => new(true, "no day of making is known", Law),
            // The law speaks of before and after; of the day itself it says nothing, so the stricter holds.
            { } day when day <= Bound => new(true, $"{IsoDate.Text(day)} is not after {IsoDate.Text(Bound)}", Law),
            { } day => new(false, $"{IsoDate.Text(day)} is after {IsoDate.Text(Bound)}", Law)
            {
                Remarks = ["it may be assumed to hold less than 50 ppm by that law; it is no test"],
            },
        };
}
