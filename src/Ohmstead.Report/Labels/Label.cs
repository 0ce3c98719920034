using System.Collections.Immutable;

namespace Ohmstead.Report.Labels;

/// <summary>What stands on one label.</summary>
/// <param name="Number">The number of the thing, in words below the code; it is never cut.</param>
/// <param name="Title">What it is.</param>
/// <param name="Facts">What else is told, the most useful first, as far as there is room.</param>
/// <param name="Cautions">What can hurt, the worst first; it is told before all else.</param>
/// <param name="Address">Where the code leads, or null for no code.</param>
/// <remarks>A label tells no state. It stays on the board for years, and the words "fit to run" would still stand there when they are not
/// true any more: whoever switches the board on would be hurt by them. The state is in the record, where the code leads.</remarks>
public sealed record Label(string Number, string Title, ImmutableArray<string> Facts, ImmutableArray<string> Cautions, string? Address);
