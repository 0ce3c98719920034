using Ohmstead.Electronics;

namespace Ohmstead.Assessment.Fit;

/// <summary>One line of what to look for.</summary>
/// <param name="Aspect">What it is about.</param>
/// <param name="Words">What to look for, with the arithmetic where there is some.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record NeedLine(string Aspect, string Words, Source Source);
