using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;
using Reason = Ohmstead.Electronics.Substitution.Reason;

namespace Ohmstead.Assessment.Fit;

/// <summary>Whether a fuse may stand for another, as records say both.</summary>
internal static class FuseRules
{
    internal static IEnumerable<Reason> Reasons(IFitPart place, IFitPart offer) => FuseSubstitution.Judge(Of(place), Of(offer));

    private static Fuse Of(IFitPart part) =>
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
