using Ohmstead.Benchmarks.Processes;

namespace Ohmstead.Benchmarks;

/// <summary>The cost of one command on one collection.</summary>
/// <param name="Name">The command.</param>
/// <param name="Records">How many records it worked on.</param>
/// <param name="Cost">The median of its runs.</param>
public sealed record Measurement(string Name, int Records, ProcessCost Cost);
