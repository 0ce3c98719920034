using System.Globalization;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Files;

/// <summary>The limit of a loss factor is above one and written without its unit: in per cent it would be a hundredth of
/// that.</summary>
/// <remarks>A loss factor is the ratio of the ESR to the reactance (IEC 60384-1): above one a part is more resistor than capacitor, and no
/// data sheet allows it. A reading can be so, of a dead part; those are told where they are judged.</remarks>
public sealed class LossLimitDoubtful : IFileCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "loss-limit-doubtful",
            Severity.Warning,
            "the limit of a loss factor is above 1 and written without per cent",
            CheckEffect.HoldsBack,
            "a limit that is a hundred times too wide refuses no part"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(FileUnderCheck file)
    {
        foreach (var part in file.Parts)
        {
            if (part.Values.LossFactorLimit is { Value.Value: > 1m } limit && IsBare(limit.Text))
            {
                yield return Finding(file, limit.Text, limit.Spot, limit.Value);
            }
        }
    }

    private static bool IsBare(string text) => !text.Contains('%', StringComparison.Ordinal);

    private Finding Finding(FileUnderCheck file, string text, Records.Text.Spot spot, Quantity value) =>
        file.Finding(
            Description,
            spot,
            $"a limit of {text} is {Percent(value.Value * 100m)}: it lets the ESR be {text} times the reactance",
            $"write {Percent(value.Value)} where the data sheet gives per cent, or {Percent(value.Value * 100m)} where it is so"
        );

    private static string Percent(decimal value) => value.ToString("0.############", CultureInfo.InvariantCulture) + " %";
}
