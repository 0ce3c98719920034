using Ohmstead.Meters;
using Ohmstead.Writing;

namespace Ohmstead.Bench;

/// <summary>What a session walks over, and what each of its entries says.</summary>
/// <param name="Folder">The collection's folder.</param>
/// <param name="Record">The file of the board, from there.</param>
/// <param name="Visit">The visit that entries belong to.</param>
/// <param name="Classes">The letters of the references wanted, or none for all.</param>
/// <param name="Looking">The options that every other command is given.</param>
internal sealed record SessionPlan(
    string Folder,
    string Record,
    VisitHead Visit,
    IReadOnlyCollection<string> Classes,
    IReadOnlyList<string> Looking
)
{
    /// <summary>The instrument, or null for the visit's.</summary>
    public string? Instrument { get; init; }

    /// <summary>The day that its entries are of.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Where in that day they came, where that was said.</summary>
    public string? Came { get; init; }

    /// <summary>Whether parts are read in the circuit, where nothing else was said: in, out or null.</summary>
    public string? Circuit { get; init; }

    /// <summary>True to stop at places read today too.</summary>
    public bool IsAgain { get; init; }

    /// <summary>True to move no cursor.</summary>
    public bool IsPlain { get; init; }

    /// <summary>The meter that readings come from; null where they are typed.</summary>
    public IMeter? Meter { get; init; }

    /// <summary>The options of a command that writes.</summary>
    public IReadOnlyList<string> Writing =>
        [
            .. Looking,
            .. Visit.By is { } by ? ["--by", by] : Array.Empty<string>(),
            .. Visit.IsLate ? ["--on", Visit.Date] : Array.Empty<string>(),
        ];
}
