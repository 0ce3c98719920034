namespace Ohmstead.Electronics.Capacitors;

/// <summary>What a worn part may reach and still count as not failed.</summary>
/// <param name="Test">The test or use the figures belong to.</param>
/// <param name="LargestDrop">The largest loss of capacitance, as a fraction (0.2 for -20 %).</param>
/// <param name="LargestRise">The largest gain of capacitance, as a fraction.</param>
/// <param name="LossFactor">How many times the base the dissipation factor (or ESR) may be; null when not asked.</param>
/// <param name="ImpedanceFactor">How many times the base the impedance may be; null when not asked.</param>
/// <param name="LeakageFactor">How many times its limit the leakage may be; null when not asked.</param>
/// <param name="Base">What the factors multiply: the specified limit, or the part's own first value. Two different tests.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record EndOfLife(
    string Test,
    decimal LargestDrop,
    decimal LargestRise,
    decimal? LossFactor,
    decimal? ImpedanceFactor,
    decimal? LeakageFactor,
    FactorBase Base,
    Source Source
)
{
    /// <summary>The share of an allowed change after which a part is worth watching.</summary>
    public const decimal WatchShare = 0.8m;

    // Far beyond any criterion: a slip of units must come out as exceeded, not as an overflow.
    private const decimal Beyond = 1_000_000_000m;

    /// <summary>Compares a part with these criteria; what was not measured (null) is not judged.</summary>
    /// <param name="capacitanceChange">Change of capacitance as a fraction: -0.25 for a quarter lost.</param>
    /// <param name="lossRatio">Dissipation factor or ESR divided by the base.</param>
    /// <param name="impedanceRatio">Impedance divided by the base.</param>
    /// <param name="leakageRatio">Leakage divided by its limit.</param>
    public IReadOnlyList<Wear> Judge(
        decimal? capacitanceChange,
        decimal? lossRatio = null,
        decimal? impedanceRatio = null,
        decimal? leakageRatio = null
    )
    {
        List<Wear> found = [];
        if (Bounded(capacitanceChange) is { } change)
        {
            decimal allowed = change < 0 ? LargestDrop : LargestRise;
            found.Add(
                new Wear(
                    "capacitance",
                    Share(Math.Abs(change), allowed),
                    $"{Signed(change)} of {Signed(change < 0 ? -allowed : allowed)} allowed"
                )
            );
        }

        AddRatio(found, "loss", Bounded(lossRatio), LossFactor);
        AddRatio(found, "impedance", Bounded(impedanceRatio), ImpedanceFactor);
        if (Bounded(leakageRatio) is { } leakage && LeakageFactor is { } most)
        {
            found.Add(new Wear("leakage", Share(leakage, most), $"{Figures.Text(leakage, 4)} of {Figures.Text(most)} x limit allowed"));
        }

        return found;
    }

    private void AddRatio(List<Wear> found, string what, decimal? ratio, decimal? factor)
    {
        if (ratio is { } r && factor is { } f)
        {
            string name = Base == FactorBase.Initial ? "initial" : "limit";
            decimal start = Base == FactorBase.Initial ? 1m : 0m;
            found.Add(
                new Wear(what, Share(Math.Max(0m, r - start), f - start), $"{Figures.Text(r, 4)} of {Figures.Text(f)} x {name} allowed")
            );
        }
    }

    private static decimal? Bounded(decimal? value) => value is { } v ? Math.Clamp(v, -Beyond, Beyond) : null;

    private static decimal Share(decimal used, decimal allowed) =>
        allowed > 0 ? used / allowed
        : used > 0 ? Beyond
        : 0m;

    private static string Signed(decimal fraction) => (fraction > 0 ? "+" : "") + Figures.Percent(decimal.Round(fraction, 4));
}

/// <summary>What an end-of-life factor multiplies.</summary>
public enum FactorBase
{
    /// <summary>The limit in the data sheet.</summary>
    Limit,

    /// <summary>The value the part itself had when new.</summary>
    Initial,
}

/// <summary>How much of one allowed change is used up.</summary>
/// <param name="What">What changed.</param>
/// <param name="ShareUsed">1 when exactly at the criterion, more when beyond it.</param>
/// <param name="Arithmetic">The figures.</param>
public sealed record Wear(string What, decimal ShareUsed, string Arithmetic)
{
    /// <summary>True when the criterion is passed; exactly on it is not.</summary>
    public bool Exceeded => ShareUsed > 1m;

    /// <summary>True when the part is inside, with little left.</summary>
    public bool WorthWatching => !Exceeded && ShareUsed >= EndOfLife.WatchShare;
}
