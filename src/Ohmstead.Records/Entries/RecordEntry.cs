using System.Collections.Immutable;
using System.Text;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Entries;

/// <summary>One statement of a record, by what it is about and not by where it stands: a part, a visit, a reading, a lot.</summary>
/// <param name="Kind">What sort of statement it is.</param>
/// <param name="Of">What it is about, in the words of the record: <c>C3</c>, <c>L-015</c>, <c>PO-12</c>; empty for the head of a
/// file.</param>
/// <param name="Names">What it is called in its file, the strictest first: that tells it from every other entry but its twins, and the
/// others are what it still has in common with what it was before somebody mended who, how or what. Entries of one kind have equally
/// many.</param>
/// <param name="Spot">Where it stands.</param>
public sealed record RecordEntry(EntryKind Kind, string Of, ImmutableArray<string> Names, Spot Spot)
{
    /// <summary>The day of its visit, as written; null for what has none.</summary>
    public string? Day { get; init; }

    /// <summary>The initials of its visit; null where none are said.</summary>
    public string? By { get; init; }

    /// <summary>What it says, in the order of its keys. Remarks and written verdicts are left out: nothing follows from them.</summary>
    public ImmutableArray<EntryFact> Facts { get; init; } = [];

    /// <summary>What is told of it: <c>reading of C3, 2026-11-20 RK</c>.</summary>
    public string Told
    {
        get
        {
            var of =
                Of.Length == 0
                    ? EntryKinds.Words(Kind)
                    : $"{EntryKinds.Words(Kind)} {(Kind is EntryKind.Reading ? "of " : string.Empty)}{Of}";
            return Day is null ? of : $"{of}, {Day}{(By is null ? string.Empty : " " + By)}";
        }
    }

    /// <summary>All that it says: equal to that of an entry which says the same, however either is laid out and its figures are
    /// written.</summary>
    public string Said
    {
        get
        {
            var said = new StringBuilder(Names[0]).Append('\n').Append(By);
            foreach (var fact in Facts)
            {
                said.Append('\n').Append(fact.Key).Append(": ").Append(fact.Meaning);
            }

            return said.ToString();
        }
    }
}

/// <summary>One thing that an entry says.</summary>
/// <param name="Key">The key, with the keys around it where it lies in a mapping of the entry.</param>
/// <param name="Text">The text as written.</param>
/// <param name="Meaning">What it means, the same for 47uF and 0.047 mF.</param>
/// <param name="Spot">Where it stands.</param>
public sealed record EntryFact(string Key, string Text, string Meaning, Spot Spot);
