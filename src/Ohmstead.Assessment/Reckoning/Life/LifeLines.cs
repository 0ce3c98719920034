using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Life;

namespace Ohmstead.Assessment.Reckoning.Life;

/// <summary>An estimate of life as a line: hours, and what the cap makes of them.</summary>
internal static class LifeLines
{
    internal static ReckonedLine Line(string what, LifeEstimate life) =>
        Answers.Figure(what, (decimal)life.ComputedHours, "h", life.Arithmetic, life.Source) with
        {
            Remarks =
            [
                RemainingLife.NoPromise,
                .. life.IsCapped
                    ? [$"count with {Answers.Text((decimal)life.Hours, "h")} at most ({LifeEstimate.CapSource.Text})"]
                    : Array.Empty<string>(),
                .. life.Remarks,
            ],
        };
}
