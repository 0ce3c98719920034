using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The EIA source-date code on potentiometers, loudspeakers and transformers: three digits of the maker, then YWW or
/// YYWW.</summary>
/// <remarks>1377432 is maker 137, week 32 of 1974; 304 6 12 is maker 304, week 12 of a year ending in 6. Spaces and hyphens are skipped.
/// Source: EIA source code, from memory.</remarks>
public static class SourceDateCode
{
    private static readonly Source Source = Source.FromMemory("EIA source-date code");

    /// <summary>Reads a code of six or seven digits.</summary>
    /// <param name="text">The code.</param>
    /// <param name="years">The years in which the part can have been made.</param>
    public static Parsed<Marking<SourceDate>> Parse(ReadOnlySpan<char> text, YearRange years)
    {
        var digits =
            text.Length > 20 ? "" : text.ToString().Replace(" ", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal);
        var dates =
            digits.Length is 6 or 7 && !digits.AsSpan().ContainsAnyExceptInRange('0', '9')
                ? DateCode.YearWeek(digits.AsSpan(3), digits.Length - 5, years)
                : [];
        return dates.Count > 0
            ? Parsed<Marking<SourceDate>>.From(
                new Marking<SourceDate>([
                    .. dates.Select(date => new MarkingReading<SourceDate>(new SourceDate(digits[..3], date.Value), date.Rule, Source)),
                ])
            )
            : Marking<SourceDate>.Failed(
                text,
                $"'{Excerpt.From(text)}' is no source-date code, expected three digits of the maker and YWW or YYWW such as 1377432"
            );
    }
}
