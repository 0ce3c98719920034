using Ohmstead.Records.Model;

namespace Ohmstead.PartsLists;

/// <summary>One part of a list, as a record will have it.</summary>
/// <param name="Reference">Its reference designator.</param>
/// <param name="Line">The line of the list it stands on.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="IsKindSaid">True when the list or the person says the kind; false when it follows from the class letters or from the record
/// that is there.</param>
/// <param name="Values">Its other keys with their values, in the order of the record format.</param>
internal sealed record ListedPart(
    string Reference,
    int Line,
    PartKind Kind,
    bool IsKindSaid,
    IReadOnlyList<(string Key, string Value)> Values
);

/// <summary>Parts whose kind nothing decides, by their class letters.</summary>
/// <param name="Letters">The class letters, or the references' own beginning.</param>
/// <param name="References">The parts, in the order listed.</param>
internal sealed record UndecidedKind(string Letters, IReadOnlyList<string> References);

/// <summary>What was read of a parts list.</summary>
/// <param name="Parts">Parts that were understood, in the order listed.</param>
/// <param name="Undecided">Parts left out because their kind is not certain.</param>
/// <param name="Faults">Lines left out because something in them was not understood, in order of place.</param>
/// <param name="Contradictions">References that the list has twice with different values: then nothing of it can be trusted.</param>
internal sealed record PartsList(
    IReadOnlyList<ListedPart> Parts,
    IReadOnlyList<UndecidedKind> Undecided,
    IReadOnlyList<ListFault> Faults,
    IReadOnlyList<ListFault> Contradictions
);
