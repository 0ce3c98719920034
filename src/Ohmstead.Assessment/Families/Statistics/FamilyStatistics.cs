using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Families.Statistics;

/// <summary>What a collection knows about one family of parts.</summary>
/// <param name="Name">The family.</param>
/// <param name="Parts">How many places of all boards belong to it by the parts lists.</param>
/// <param name="Measured">How many originals a reading out of circuit, or a test of function, decided about.</param>
/// <param name="Boards">On how many boards those sit: twenty parts of one board are not twenty independent parts.</param>
/// <param name="FailedAsFound">How many of them were outside at the first look.</param>
/// <param name="FailedLater">How many of them were inside at the first look and outside at a later one.</param>
/// <param name="FailedInCircuit">How many more were proved outside in circuit. They count in no share: in circuit only failures can be
/// proved.</param>
/// <param name="Ages">What is known of the ages at failure, parts fitted since included.</param>
public sealed record FamilyStatistics(
    FamilyName Name,
    int Parts,
    int Measured,
    int Boards,
    int FailedAsFound,
    int FailedLater,
    int FailedInCircuit,
    AgesAtFailure Ages
)
{
    /// <summary>For the ages of originals at their first inspection, how many were looked at and how many were bad.</summary>
    public IReadOnlyList<Inspection> FirstLooks { get; init; } = [];

    /// <summary>The share failed as found, or null where too few were measured to print one.</summary>
    public ShareFailed? Share { get; } = ShareFailed.Compute(FailedAsFound, Measured);
}
