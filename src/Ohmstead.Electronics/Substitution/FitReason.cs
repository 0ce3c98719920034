namespace Ohmstead.Electronics.Substitution;

/// <summary>Something that speaks for or against a substitution.</summary>
/// <param name="Weight">Which way it speaks.</param>
/// <param name="Aspect">What it is about.</param>
/// <param name="Words">One line with the figures.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record FitReason(ReasonWeight Weight, string Aspect, LazyText Words, Source Source)
{
    /// <summary>True when it is a doubt only because a figure is not known: nothing speaks against, and nothing says that it
    /// fits.</summary>
    public bool IsMissing { get; init; }

    /// <summary>True when what is not known is a rating of the part that is offered: whatever the place asks for, nobody can say that it
    /// has it.</summary>
    public bool IsUnwritten { get; init; }

    /// <summary>A reason for.</summary>
    public static FitReason For(string aspect, LazyText words, Source? source = null) => Create(ReasonWeight.For, aspect, words, source);

    /// <summary>A reason for, with words that are put together only when they are read.</summary>
    public static FitReason For(string aspect, Func<string> words, Source? source = null) =>
        Create(ReasonWeight.For, aspect, new LazyText(words), source);

    /// <summary>A reason for, with words that are written about something when they are read.</summary>
    internal static FitReason For<T>(string aspect, T about, Func<T, string> words, Source? source = null)
        where T : class => Create(ReasonWeight.For, aspect, LazyText.For(about, words), source);

    /// <summary>A doubt.</summary>
    public static FitReason Doubt(string aspect, LazyText words, Source? source = null) =>
        Create(ReasonWeight.Doubt, aspect, words, source);

    /// <summary>A doubt, with words that are put together only when they are read.</summary>
    public static FitReason Doubt(string aspect, Func<string> words, Source? source = null) =>
        Create(ReasonWeight.Doubt, aspect, new LazyText(words), source);

    /// <summary>A doubt, with words that are written about something when they are read.</summary>
    internal static FitReason Doubt<T>(string aspect, T about, Func<T, string> words, Source? source = null)
        where T : class => Create(ReasonWeight.Doubt, aspect, LazyText.For(about, words), source);

    /// <summary>A doubt because a figure is not known.</summary>
    public static FitReason Missing(string aspect, LazyText words) =>
        new(ReasonWeight.Doubt, aspect, words, Source.CommonPractice) { IsMissing = true };

    /// <summary>A doubt because a figure is not known, with words that are put together only when they are read.</summary>
    public static FitReason Missing(string aspect, Func<string> words) => Missing(aspect, new LazyText(words));

    /// <summary>A doubt because a figure is not known, with words that are written about something when they are read.</summary>
    internal static FitReason Missing<T>(string aspect, T about, Func<T, string> words)
        where T : class => Missing(aspect, LazyText.For(about, words));

    /// <summary>A doubt because a rating of what is offered is not written.</summary>
    public static FitReason Unwritten(string aspect, LazyText words) => Missing(aspect, words) with { IsUnwritten = true };

    /// <summary>A doubt because a rating of what is offered is not written, with words that are put together only when they are
    /// read.</summary>
    public static FitReason Unwritten(string aspect, Func<string> words) => Unwritten(aspect, new LazyText(words));

    /// <summary>A doubt because a rating of what is offered is not written, with words that are written about something when they are
    /// read.</summary>
    internal static FitReason Unwritten<T>(string aspect, T about, Func<T, string> words)
        where T : class => Unwritten(aspect, LazyText.For(about, words));

    /// <summary>A reason against.</summary>
    public static FitReason Against(string aspect, LazyText words, Source? source = null) =>
        Create(ReasonWeight.Against, aspect, words, source);

    /// <summary>A reason against, with words that are put together only when they are read.</summary>
    public static FitReason Against(string aspect, Func<string> words, Source? source = null) =>
        Create(ReasonWeight.Against, aspect, new LazyText(words), source);

    /// <summary>A reason against, with words that are written about something when they are read.</summary>
    internal static FitReason Against<T>(string aspect, T about, Func<T, string> words, Source? source = null)
        where T : class => Create(ReasonWeight.Against, aspect, LazyText.For(about, words), source);

    private static FitReason Create(ReasonWeight weight, string aspect, LazyText words, Source? source) =>
        new(weight, aspect, words, source ?? Source.CommonPractice);
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
