using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Families.Statistics;

/// <summary>A family of parts that may fail alike: a kind, a maker, a series. What is not known is left out.</summary>
/// <param name="Kind">The kind of part.</param>
/// <param name="Maker">The maker, or null.</param>
/// <param name="Series">The maker's series, or null.</param>
public readonly record struct FamilyName(string Kind, string? Maker, string? Series)
{
    /// <summary>The family in words: "aluminium electrolytic, Ostrel, series RB".</summary>
    public string Text => Kind + (Maker is null ? string.Empty : $", {Maker}") + (Series is null ? string.Empty : $", series {Series}");

    /// <summary>The narrowest family of a part.</summary>
    public static FamilyName For(PartValues part) => new(part.Kind.Text, part.Maker?.Value, part.Series?.Value);

    /// <summary>The families it belongs to, the widest first and itself last. A part counts in each.</summary>
    public IEnumerable<FamilyName> Levels()
    {
        if (Maker is not null || Series is not null)
        {
            yield return new(Kind, null, null);
        }

        if (Maker is not null && Series is not null)
        {
            yield return new(Kind, Maker, null);
        }

        yield return this;
    }

    /// <summary>Whether another is among the wider families that it belongs to.</summary>
    public bool IsWithin(FamilyName wider) =>
        Kind == wider.Kind
        && wider.Series is null
        && (wider.Maker is null ? Maker is not null || Series is not null : Maker == wider.Maker && Series is not null);
}
