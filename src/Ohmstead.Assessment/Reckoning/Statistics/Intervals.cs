using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Reckoning.Statistics;

/// <summary>Intervals as lines.</summary>
internal static class Intervals
{
    internal static ReckonedLine Line(string what, ConfidenceInterval found, ShownAs shown, string arithmetic, Source source) =>
        new(
            what,
            $"{shown.Text((decimal)found.Low)} to {shown.Text((decimal)found.High)}",
            $"{arithmetic}, confidence {ShownAs.Percent.Text((decimal)found.Confidence)}",
            source
        );
}
