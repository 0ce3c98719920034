using System.Collections.Immutable;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>What the print on a capacitor says in words and figures.</summary>
/// <param name="Sections">The capacitance of each section; one for all but multi-section cans. Each section is recorded by itself.</param>
/// <param name="RatedVoltage">The rated (working) d.c. voltage, or null when it is not printed.</param>
/// <param name="Tolerance">The tolerance, or null when it is not printed.</param>
/// <param name="IsBipolar">True when the print says that either polarity is allowed (BP, NP, 0+0, bip).</param>
public sealed record CapacitorPrint(ImmutableArray<Quantity> Sections, Quantity? RatedVoltage, Tolerance? Tolerance, bool IsBipolar);
