using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>Whether a fuse may stand for another, as records say both.</summary>
internal static class FuseRules
{
    internal static IEnumerable<FitReason> Reasons(IFitPart place, IFitPart offer) =>
        FuseSubstitution.Judge(FuseFrom(place), FuseFrom(offer));

    private static Fuse FuseFrom(IFitPart part) =>
        new()
        {
            RatedAmperes = part.Current?.Value.Value,
            Speed = part.Speed?.Value,
            Breaking = part.Breaking?.Value,
            RatedVolts = part.RatedVoltage?.Value.Value,
            Size = part.Size?.Value,
            System = part.Standard?.Value,
        };
}
