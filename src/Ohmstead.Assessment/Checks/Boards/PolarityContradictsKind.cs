using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A part is written as having no polarity although its kind has one.</summary>
public sealed class PolarityContradictsKind : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("polarity-contradicts-kind", Severity.Error, "a part is written as having no polarity although its kind has one");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var part in board.Board.Parts)
        {
            if (part.Values.Kind.Value is "aluminium electrolytic" or "polymer electrolytic" or "tantalum" or "wet tantalum" or "diode" or "zener diode"
                && part.Values.Polarity is { Value: not "polarised" })
            {
                yield return board.Finding(
                    Description,
                    part.Values.Polarity.Spot,
                    $"{part.Ref.Value} is of kind '{part.Values.Kind.Value}', which has a right way round, but its polarity is written as '{part.Values.Polarity.Value}'",
                    PartKind.IsElectrolytic(part.Values.Kind.Value) ? "leave polarity out, or write kind: bipolar electrolytic if it is one" : "leave polarity out, or mend the kind");
            }
        }
    }
}
