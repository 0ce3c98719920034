namespace Ohmstead.Records.Editing;

/// <summary>What comes to one visit to the bench: a visit that is there, or one that is not.</summary>
/// <param name="Date">The day, as it is written.</param>
/// <param name="Visit">The visit that it joins, from 0; null for a visit of its own, behind all of its day and of the days before.</param>
/// <param name="Head">The first keys of a visit of its own, the date first.</param>
/// <param name="Entries">The entries: the list of the visit, and the entry as one line of YAML, in order.</param>
public sealed record VisitEntries(
    string Date,
    int? Visit,
    IReadOnlyList<(string Key, string Value)> Head,
    IReadOnlyList<(string List, string Item)> Entries
)
{
    /// <summary>True for a visit of its own that comes before all of its day instead.</summary>
    public bool IsFirstOfDay { get; init; }
}

/// <summary>A visit to the bench that a record has.</summary>
/// <param name="Index">Its place among the visits, from 0.</param>
/// <param name="Line">The line on which it begins.</param>
/// <param name="Values">Its single values, by key.</param>
public sealed record KnownVisit(int Index, int Line, IReadOnlyDictionary<string, string> Values);
