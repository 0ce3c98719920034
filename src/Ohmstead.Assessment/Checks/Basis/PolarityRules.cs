using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>Whether a part is written as having no right way round although every part of its kind has one.</summary>
internal static class PolarityRules
{
    /// <summary>What contradicts its kind and what to do, with the text that does; null when nothing does.</summary>
    internal static (Written<PartPolarity> Polarity, string Message, string NextStep)? Contradiction(string name, PartValues values)
    {
        var kind = values.Kind.Value;
        return values.Polarity is not { } polarity || !polarity.Value.IsEitherWayRound() || !kind.HasRightWayRound
            ? null
            : (
                polarity,
                $"{name} is of kind '{kind.Name}', which has a right way round, but its polarity is written as '{polarity.Text}'",
                kind.IsElectrolytic
                    ? "leave polarity out, or write kind: bipolar electrolytic if it is one"
                    : "leave polarity out, or mend the kind"
            );
    }
}
