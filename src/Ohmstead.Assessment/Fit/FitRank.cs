using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>
/// Where a lot stands among those that may go into a place: what decides first comes first. Lots of one rank are as good as each other.
/// </summary>
/// <param name="Outcome">Whether it fits.</param>
/// <param name="Doubts">The fewest first.</param>
/// <param name="IsOtherClass">Those that keep the safety class come first.</param>
/// <param name="FromValue">How far its value is from the original's, as a logarithm.</param>
/// <param name="FromVoltage">How far its rated voltage is.</param>
/// <param name="Celsius">The hottest rating first.</param>
internal readonly record struct FitRank(
    ReasonWeight Outcome,
    int Doubts,
    bool IsOtherClass,
    double FromValue,
    double FromVoltage,
    decimal Celsius
) : IComparable<FitRank>
{
    /// <summary>The rank of a lot.</summary>
    internal static FitRank For(FitPlace place, FitVerdict verdict, IFitPart lot) =>
        new(
            verdict.Outcome,
            verdict.Doubts,
            lot.SafetyClass?.Value != place.Values.SafetyClass?.Value,
            Distance(Value(lot), Value(place.Values)),
            Distance(lot.RatedVoltage?.Value.Value, place.Values.RatedVoltage?.Value.Value),
            lot.Temperature?.Value.Value ?? 0m
        );

    /// <summary>The value that a part is chosen by.</summary>
    internal static decimal? Value(IFitPart part) => ChosenBy.Value(part)?.Value.Value;

    /// <inheritdoc/>
    public int CompareTo(FitRank other) =>
        Outcome != other.Outcome ? Outcome.CompareTo(other.Outcome)
        : Doubts != other.Doubts ? Doubts.CompareTo(other.Doubts)
        : IsOtherClass != other.IsOtherClass ? IsOtherClass.CompareTo(other.IsOtherClass)
        : FromValue != other.FromValue ? FromValue.CompareTo(other.FromValue)
        : FromVoltage != other.FromVoltage ? FromVoltage.CompareTo(other.FromVoltage)
        : other.Celsius.CompareTo(Celsius);

    private static double Distance(decimal? offered, decimal? asked) =>
        offered is > 0m and { } now && asked is > 0m and { } was ? Math.Abs(Math.Log((double)now / (double)was)) : 0;
}
