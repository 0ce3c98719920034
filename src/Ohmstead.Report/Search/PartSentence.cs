using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;
using Ohmstead.Report.Frame;

namespace Ohmstead.Report.Search;

/// <summary>Parts, points, hazards and readings as one sentence each.</summary>
internal static class PartSentence
{
    /// <summary>A part in its place.</summary>
    public static string Of(Part part) => $"{part.Ref.Value} {Of(part.Values)}";

    /// <summary>What a part is, with everything that is printed on it.</summary>
    public static string Of(PartValues part) =>
        PageFrame.Joined(
            PartWords.Describe(part),
            part.Role?.Text,
            part.Form?.Text,
            part.Kind.Value == PartKinds.Cell ? null : part.Material?.Text,
            part.Maker?.Value,
            part.Series?.Value,
            part.DateCode is { } code ? "date code " + code.Value : null,
            part.Note?.Value
        );

    /// <summary>A test point.</summary>
    public static string Of(TestPoint point) =>
        PageFrame.Joined(
            point.Name.Value,
            point.Nominal is { } nominal ? $"{nominal.Text} {point.Tolerance?.Text}".TrimEnd() : null,
            point.Low is { } low ? "from " + low.Text : null,
            point.High is { } high ? "to " + high.Text : null,
            point.RippleLimit is { } ripple ? "ripple up to " + ripple.Text : null,
            point.Source?.Value,
            point.Note?.Value
        );

    /// <summary>A hazard.</summary>
    public static string Of(RecordedHazard hazard) =>
        PageFrame.Joined(
            hazard.At is { } at ? $"{at.Value}: {hazard.Kind.Text}" : hazard.Kind.Text,
            hazard.Voltage?.Text,
            hazard.Capacitance?.Text,
            hazard.Bleed is { } bleed ? "bleeds through " + bleed.Text : null,
            hazard.Note?.Value
        );

    /// <summary>A reading: what it was taken of, what was read, and what is not as usual in it.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="outcome">What it says as a whole; null where nothing is said of it.</param>
    public static string Of(Reading reading, VerdictOutcome? outcome) =>
        PageFrame.Joined([
            string.Join(
                ' ',
                new[]
                {
                    (reading.Part ?? reading.Point)?.Value,
                    reading.Lot?.Value,
                    reading.Values.Length > 0 ? Of(reading.Values[0]) : reading.Result?.Text,
                }.OfType<string>()
            ),
            .. reading.Values.Skip(1).Select(Of),
            outcome is { } said and not VerdictOutcome.Inside ? VerdictWords.Describe(said) : null,
            reading.State?.Text,
            reading.Circuit is { Value: Circuit.In } ? "in circuit" : null,
            reading.AtVoltage is { } voltage ? "at " + voltage.Text : null,
            reading.After is { } after ? "after " + after.Text : null,
            reading.Bias is { } bias ? "bias " + bias.Text : null,
            reading.Instrument?.Value,
            reading.Method?.Value,
            reading.Note?.Value,
            reading.Because?.Value,
        ]);

    /// <summary>What was read; named where the unit alone does not say it.</summary>
    public static string Of(ReadValue value) =>
        value.Measured
            is Measured.Capacitance
                or Measured.Resistance
                or Measured.Inductance
                or Measured.Voltage
                or Measured.Current
                or Measured.Frequency
                or Measured.Temperature
            ? value.Value.Text
            : $"{VerdictWords.Describe(value.Measured)} {value.Value.Text}";
}
