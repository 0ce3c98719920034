using Ohmstead.Assessment.Life;
using Ohmstead.Electronics.Life;

namespace Ohmstead.Commands;

/// <summary>Tells how long a fitted electrolytic may last, or what is missing to say so.</summary>
internal static class WhyLife
{
    /// <summary>Tells it line by line.</summary>
    public static void Tell(Action<string> line, WearOutLife life)
    {
        if (!life.Estimate.Is(out var estimate, out var missing))
        {
            line($"life ahead: no estimate, {missing}");
            return;
        }

        line($"life ahead: may be used up {estimate.Text}");
        foreach (var given in life.Inputs)
        {
            line($"    {given}");
        }

        line($"    arithmetic: {estimate.Arithmetic}");
        line($"    source: {estimate.Source.Text}{(estimate.OtherSource is { } other ? "; " + other.Text : string.Empty)}");
        foreach (var remark in estimate.Remarks)
        {
            line($"    {remark}");
        }

        line($"    {RemainingLife.Meaning}");
    }
}
