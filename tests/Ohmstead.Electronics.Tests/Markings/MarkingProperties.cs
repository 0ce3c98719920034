using CsCheck;
using Ohmstead.Electronics.Markings;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Markings;

public class MarkingProperties
{
    private static readonly Gen<string> Texts = Gen.OneOf(Gen.String, Gen.String["0123456789.+-/ ABCDEJKMNPRTUXZkMpnuµmFVWcj"]);

    [Fact]
    public void Any_text_gives_readings_or_a_fault() =>
        Texts.Sample(text =>
            Sound(LetterCode.Parse(text, Dimension.Resistance), text)
            && Sound(LetterCode.Parse(text, Dimension.Capacitance), text)
            && Sound(DigitCode.Parse(text), text)
            && Sound(TradeNotation.Parse(text), text)
            && Sound(DateCode.Parse(text, new YearRange(1950, 2026)), text)
            && Sound(SourceDateCode.Parse(text, new YearRange(1950, 2026)), text)
            && Sound(ResistorBands.Parse(text), text)
            && (CeramicCode.Parse(text).Fault is null || CeramicCode.Parse(text).Fault!.Message.Length > 0)
        );

    [Fact]
    public void Bands_read_from_the_other_end_have_the_same_readings_but_for_their_order() =>
        Gen.Enum<BandColour>()
            .Array[3, 6]
            .Sample(bands =>
            {
                var forward = Values([.. bands]);
                var backward = Values([.. bands.Reverse()]);
                return forward.SetEquals(backward);
            });

    [Fact]
    public void Every_date_of_a_code_lies_in_the_years_asked_for() =>
        Gen.Select(Texts, Gen.Int[1940, 2026], Gen.Int[0, 60])
            .Sample(
                (text, first, span) =>
                    !DateCode.Parse(text, new YearRange(first, first + span)).Is(out var marking, out _)
                    || marking.Readings.All(reading =>
                        reading.Value.Year >= first && reading.Value.Year <= first + span && reading.Value.First <= reading.Value.Last
                    )
            );

    private static HashSet<(Quantity, string)> Values(System.Collections.Immutable.ImmutableArray<BandColour> bands) =>
        ResistorBands.Read(bands).Is(out var marking, out _)
            ? [.. marking.Readings.Select(reading => (reading.Value.Nominal, reading.Value.Tolerance.ToString()))]
            : [];

    private static bool Sound<T>(Parsed<Marking<T>> parsed, string text)
        where T : notnull =>
        parsed.Is(out var marking, out var fault)
            ? marking.Readings.Length > 0
            : fault.Message.Length > 0 && fault.Offset >= 0 && fault.Offset + fault.Length <= text.Length;
}
