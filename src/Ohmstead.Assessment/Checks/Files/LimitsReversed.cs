using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Files;

/// <summary>A lower limit is above its upper limit.</summary>
public sealed class LimitsReversed : IFileCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "limits-reversed",
            Severity.Error,
            "a lower limit is above its upper limit",
            CheckEffect.HoldsBack,
            "what the place needs is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(FileUnderCheck file) =>
        file
            .Parts.Select(part => Reversed(file, part.Name, part.Values.Low, part.Values.High))
            .Concat(file.Points.Select(point => Reversed(file, point.Name.Value, point.Low, point.High)))
            .OfType<Finding>();

    private Finding? Reversed(FileUnderCheck file, string name, Written<Quantity>? low, Written<Quantity>? high) =>
        low is null || high is null || low.Value.Value <= high.Value.Value
            ? null
            : file.Finding(
                Description,
                low.Spot,
                $"the lower limit {low.Text} of {name} is above the upper limit {high.Text}",
                "exchange the two"
            );
}
