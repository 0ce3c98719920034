namespace Ohmstead.Assessment.Families.Statistics;

/// <summary>The parts of one family on one board. A value, since thousands of boards keep a dozen each.</summary>
/// <param name="Name">The narrowest family.</param>
/// <param name="Originals">How many places of the board belong to it by the parts list.</param>
/// <param name="Lives">What was seen of each part that a reading decided about, originals and later ones.</param>
/// <param name="FailedInCircuit">How many originals were only ever decided about in circuit, where nothing but a failure can be
/// proved.</param>
public readonly record struct FamilyOnBoard(FamilyName Name, int Originals, IReadOnlyList<ObservedLife> Lives, int FailedInCircuit);
