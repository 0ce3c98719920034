using Ohmstead.Benchmarks.Processes;

namespace Ohmstead.Benchmarks.Peers;

/// <summary>A general-purpose program that does a part of what the product does.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Against">The command of the product that it stands beside.</param>
/// <param name="Missing">What it lacks and how that is installed, or null when it is there.</param>
/// <param name="Run">Its command for a collection and a folder for what it writes.</param>
/// <param name="Wanted">At most which parts of its cost the product is wanted to have.</param>
public sealed record Peer(
    string Name,
    PeerJob Against,
    string? Missing,
    Func<string, string, Command> Run,
    params IReadOnlyList<WantedRatio> Wanted
);

/// <summary>The commands of the product that peers stand beside.</summary>
public enum PeerJob
{
    /// <summary>Records are judged; nothing is written.</summary>
    Check,

    /// <summary>Pages are written.</summary>
    Report,
}

/// <summary>A ratio of the product's cost to the peer's that is wanted.</summary>
/// <param name="Name">Which cost.</param>
/// <param name="AtMost">The largest ratio that keeps it.</param>
/// <param name="Value">The cost of a run.</param>
public sealed record WantedRatio(string Name, double AtMost, Func<ProcessCost, double?> Value);
