using System.Collections.Immutable;
using Ohmstead.Assessment.Drifts;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Life;

namespace Ohmstead.Assessment.Boards;

/// <summary>Everything that follows from the record of a board and the files it refers to. It has no state: that takes the checks
/// too.</summary>
public record BoardAssessment : BoardHistory
{
    private ReadTogether? readTogether;

    internal BoardAssessment(BoardHistory history)
        : base(history) { }

    /// <summary>The new pieces that sit on it, in order of the parts list, each with the reading that measured it.</summary>
    public required ImmutableArray<FittedPiece> Fitted { get; init; }

    /// <summary>What its fittings ask of the lots that they came from, in order of time.</summary>
    public required ImmutableArray<PieceClaim> Claims { get; init; }

    /// <summary>The day on which the board should be looked at again, or null when the collection does not say how often.</summary>
    public required DateOnly? LookAgain { get; init; }

    /// <summary>Estimates of the life of every wet electrolytic that sits on the board, in order of the parts list.</summary>
    public required ImmutableArray<WearOutLife> Lives { get; init; }

    /// <summary>Parts of known lots that were put into known places, each with whether it fits, in order of time.</summary>
    public required ImmutableArray<Replacement> Replacements { get; init; }

    /// <summary>The drifts of the parts that sit on it now, in order of the parts list and of the quantities.</summary>
    public required ImmutableArray<Drift> Drifts { get; init; }

    /// <summary>What was read on one day beside each reading.</summary>
    internal ReadTogether ReadTogether => readTogether ??= new(Readings, Proofs);
}
