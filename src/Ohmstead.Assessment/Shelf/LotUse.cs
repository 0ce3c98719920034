namespace Ohmstead.Assessment.Shelf;

/// <summary>What boards took of the lots in the drawer.</summary>
public sealed class LotUse
{
    private readonly Dictionary<string, int> fitted = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> readGood = new(StringComparer.Ordinal);
    private readonly IEnumerable<(string Lot, LotFitting Fitting)> all;

    /// <summary>Counts fittings.</summary>
    /// <param name="fittings">Where parts of known lots were fitted, each with the name of its lot.</param>
    public LotUse(IEnumerable<(string Lot, LotFitting Fitting)> fittings)
    {
        all = fittings;
        foreach (var (lot, fitting) in fittings)
        {
            fitted[lot] = Fitted(lot) + 1;
            if (fitting.WasReadGood)
            {
                readGood[lot] = ReadGood(lot) + 1;
            }
        }
    }

    /// <summary>The lots of which boards took any.</summary>
    public IEnumerable<string> Lots => fitted.Keys;

    /// <summary>How many parts of a lot were fitted.</summary>
    public int Fitted(string lot) => fitted.GetValueOrDefault(lot);

    /// <summary>Where the parts of a lot were fitted, in order of day; looked for when it is asked, since nearly no lot is.</summary>
    public IReadOnlyList<LotFitting> FittingsOf(string lot) =>
        [
            .. all.Where(fitted => fitted.Lot == lot)
                .Select(fitted => fitted.Fitting)
                .OrderBy(fitting => fitting.Date)
                .ThenBy(fitting => fitting.Board, StringComparer.Ordinal)
                .ThenBy(fitting => fitting.Reference, StringComparer.Ordinal),
        ];

    /// <summary>How many parts of a lot were read for the place that they went to, and did not fail.</summary>
    public int ReadGood(string lot) => readGood.GetValueOrDefault(lot);
}
