using System.Collections.Immutable;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.PreferredValues;

/// <summary>Today's rated voltage for an old mark.</summary>
/// <param name="Mark">The voltage marked on the old part.</param>
/// <param name="Rating">The lowest of today's ratings that is not below the mark, or null when there is none.</param>
/// <param name="Also">Higher ratings that may be preferred.</param>
/// <param name="Note">What else to know, or null.</param>
public sealed record VoltageReplacement(Quantity Mark, Quantity? Rating, ImmutableArray<Quantity> Also, string? Note)
{
    /// <summary>The rating over the mark; never below 1. Null without a rating.</summary>
    public decimal? Ratio => Rating is { } rating ? rating.Value / Mark.Value : null;
}
