using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Report.Frame;

/// <summary>What sits in the places of a unit and how it measures: kept of a board so that the units of a design can be set side by
/// side.</summary>
/// <param name="Board">The number of the board.</param>
/// <param name="Places">Its places in the order of the parts list, those alone of which something is known.</param>
public sealed record UnitPlaces(string Board, IReadOnlyList<UnitPlace> Places)
{
    private readonly Dictionary<string, UnitPlace> byReference = Places.ToDictionary(place => place.Reference, StringComparer.Ordinal);

    /// <summary>The places of a board.</summary>
    public static UnitPlaces From(BoardAssessment board) =>
        new(
            board.Board.Id.Value,
            [
                .. board
                    .Places.Where(place =>
                        place.IsEmpty || place.FittedBy is not null || place.Standing.Length > 0 || place.PassedTest is not null
                    )
                    .Select(place => new UnitPlace(
                        place.Part.Ref.Value,
                        place.IsEmpty,
                        place.FittedBy is not null,
                        place.PassedTest,
                        [.. place.Standing.Select(verdict => new PlaceReading(verdict.Measured, verdict.Reading.Text, verdict.Outcome))]
                    )),
            ]
        );

    /// <summary>A place by its name; null when nothing is known of it.</summary>
    public UnitPlace? Place(string reference) => byReference.GetValueOrDefault(reference);
}

/// <summary>A place of a unit.</summary>
/// <param name="Reference">Its name.</param>
/// <param name="IsEmpty">Whether nothing sits there now.</param>
/// <param name="IsRenewed">Whether the original part has gone.</param>
/// <param name="PassedTest">What its last test of function said; null when there was none.</param>
/// <param name="Readings">The readings that stand.</param>
public sealed record UnitPlace(string Reference, bool IsEmpty, bool IsRenewed, bool? PassedTest, IReadOnlyList<PlaceReading> Readings);

/// <summary>A reading that stands.</summary>
/// <param name="Measured">What was measured.</param>
/// <param name="Text">The value as written.</param>
/// <param name="Outcome">What it says.</param>
public readonly record struct PlaceReading(Measured Measured, string Text, VerdictOutcome Outcome);
