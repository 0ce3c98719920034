namespace Ohmstead.Electronics.Substitution;

/// <summary>Something that speaks for or against a substitution.</summary>
/// <param name="Weight">Which way it speaks.</param>
/// <param name="Aspect">What it is about.</param>
/// <param name="Words">One line with the figures.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record Reason(ReasonWeight Weight, string Aspect, string Words, Source Source)
{
    internal static Reason For(string aspect, string words, Source? source = null) =>
        new(ReasonWeight.For, aspect, words, source ?? Source.CommonPractice);

    internal static Reason Doubt(string aspect, string words, Source? source = null) =>
        new(ReasonWeight.Doubt, aspect, words, source ?? Source.CommonPractice);

    internal static Reason Against(string aspect, string words, Source? source = null) =>
        new(ReasonWeight.Against, aspect, words, source ?? Source.CommonPractice);
}

/// <summary>Which way a reason speaks.</summary>
public enum ReasonWeight
{
    /// <summary>It fits.</summary>
    For,

    /// <summary>It may fit: something is not known or must be looked at.</summary>
    Doubt,

    /// <summary>It does not fit; one such reason is enough.</summary>
    Against,
}
