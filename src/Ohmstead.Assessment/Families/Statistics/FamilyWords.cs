using System.Globalization;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Families.Statistics;

/// <summary>The words in which families are told, the same in the terminal and on the pages.</summary>
public static class FamilyWords
{
    private const double DaysPerYear = 365.25;

    /// <summary>How the figures are to be taken.</summary>
    public const string Caution =
        "These are counts of what this collection looked at, not of what its makers made: what came for repair fails more often than "
        + "what did not. Parts of one board share its life, so an interval is rather too narrow. Estimates, not promises.";

    /// <summary>What an age counts from.</summary>
    public const string AgeFrom =
        "Ages are years since a part was made, by its date code or the year of its board, or since it was fitted; used or not.";

    /// <summary>The share failed in words, with its interval: "42 % (19 % to 68 %)", "none, at most 35 %"; or what is missing.</summary>
    public static string Share(FamilyStatistics family) =>
        family.Share switch
        {
            null => "too few to say",
            { IsUpperLimit: true } share => $"none, at most {Percent(share.High)}",
            var share => $"{Percent(share.Share)} ({Percent(share.Low)} to {Percent(share.High)})",
        };

    /// <summary>How many families are told of no share.</summary>
    public static string TooFewMeasured(int count) =>
        count == 1
            ? "one family of which too few were measured to say"
            : string.Create(CultureInfo.InvariantCulture, $"{count} families of which too few were measured to say");

    /// <summary>A fraction as a percentage: whole from 10 %, with one decimal below.</summary>
    public static string Percent(double fraction) =>
        (fraction * 100).ToString(fraction is >= 0.0995 or 0 ? "0" : "0.0", CultureInfo.InvariantCulture) + " %";

    /// <summary>One step of the share failed by age: "by 48 years", "after 20 and by 48 years", "later than 48 years".</summary>
    public static string Range(FailureMass mass) =>
        double.IsInfinity(mass.By) ? $"not by {Years(mass.After)}"
        : mass.After <= 0 ? $"by {Years(mass.By)}"
        : mass.After >= mass.By ? $"at {Years(mass.By)}"
        : mass.After < 1 ? $"after {Years(mass.After)} and by {Years(mass.By)}"
        : $"after {Number(mass.After)} and by {Years(mass.By)}";

    /// <summary>A Weibull life in words.</summary>
    public static string Life(WeibullLife life) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"Weibull life: shape {life.Fit.Life.Shape:0.0} ({life.Shape.Low:0.0} to {life.Shape.High:0.0}), 63 % failed by "
                + $"{Years(life.Fit.Life.Scale)} ({Number(life.Scale.Low)} to {Number(life.Scale.High)}), from {life.Fit.Failures} "
                + $"failures among {life.Fit.Items}; 95 % intervals; {ShapeWords(life.Shape)}"
        );

    /// <summary>An age: days below a year, years with a decimal above.</summary>
    public static string Years(double age) =>
        age is > 0 and < 1 ? Days(Math.Round(age * DaysPerYear)) : $"{Number(age)} {(Number(age) == "1" ? "year" : "years")}";

    private static string Days(double days) => string.Create(CultureInfo.InvariantCulture, $"{days} {(days == 1 ? "day" : "days")}");

    private static string Number(double age) => age.ToString(age >= 100 ? "0" : "0.#", CultureInfo.InvariantCulture);

    private static string ShapeWords(ConfidenceInterval shape) =>
        shape.Low > 1 ? "they wear out"
        : shape.High < 1 ? "they fail young"
        : "whether they wear out or fail by chance cannot be told";
}
