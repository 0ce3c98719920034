using Ohmstead.Assessment.Changes;

namespace Ohmstead.Report.Frame;

/// <summary>What differs from an earlier state of the collection, for a page of its own.</summary>
/// <param name="Label">The earlier state, as somebody named it.</param>
/// <param name="Changes">What differs.</param>
public sealed record ChangesSince(string Label, CollectionChanges Changes);
