using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>What may be taken from the drawer for a place.</summary>
/// <param name="Verdict">The reasons for and against.</param>
/// <param name="Values">What the parts are.</param>
/// <param name="Left">How many are left of the lot.</param>
public sealed record FitCandidate(FitVerdict Verdict, PartValues Values, int Left);
