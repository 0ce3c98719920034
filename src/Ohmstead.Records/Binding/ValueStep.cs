using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Binding;

/// <summary>What to write in place of a value that could not be read, by what its key asks and what else the mapping could hold.</summary>
internal static class ValueStep
{
    private static readonly string[] PeakToPeak = ["pp", "p-p", "pk-pk", "p/p", "peak-to-peak"];

    private static readonly string[] MeanSquare = ["rms", "r.m.s.", "r.m.s", "eff", "eff."];

    /// <summary>What is wrong, where the key tells it better than the text alone; null where the text does.</summary>
    internal static string? Cause(Shape shape, Key key, string text) =>
        AskedPeakToPeak(key) && IsMeanSquare(text) ? $"'{text}' is an r.m.s. figure, and {key.Name} is peak to peak"
        : AskedPeakToPeak(key) && IsPeakToPeak(text) ? $"a {key.Name} is peak to peak by itself, so nothing says it after the unit"
        : TwoValues.Of(text, shape, key) is var (first, _, second)
            ? $"'{text}' is two values, and {key.Name} is '{first}' alone: '{second}' has a " + "key of its own"
        : null;

    /// <summary>The next step of a fault.</summary>
    internal static string For(Shape shape, Key key, string text, ParseFault fault, MappingNode mapping)
    {
        if (FamiliarWords.IsNothing(text))
        {
            return $"leave {key.Name} out; a note may say why";
        }

        if (key.Dimension == Dimension.Temperature && fault.NextStep is { } degrees && text.IndexOfAny(['C', 'F', 'K', 'c']) < 0)
        {
            return StepOf(key, degrees) + ", if it was read in degrees Celsius";
        }

        // 4 h of a key that counts hours.
        if (
            key.Dimension == Dimension.Number
            && key.Name == BenchShape.Hours.Name
            && text.TrimEnd().EndsWith('h')
            && CountText.Meant(text) is { } hours
        )
        {
            return $"write {key.Name}: {hours}";
        }

        if (fault.Kind == ParseFaultKind.WrongDimension && Elsewhere(shape, key, text) is { } other)
        {
            return $"write {other}: {text} if it is one, else {key.Name}: "
                + (fault.NextStep is { } meant ? $"{meant}, whichever is meant" : "with the figure that it is, in its own unit");
        }

        if (AskedPeakToPeak(key) && IsMeanSquare(text))
        {
            return $"write {key.Name}: with the figure from peak to peak, or leave {key.Name} out and write \"{key.Name} {text}\" in note";
        }

        if (IsPeakToPeak(text) && !AskedPeakToPeak(key))
        {
            return $"write {key.Name} as it is asked, not peak to peak, such as {key.Name}: {key.Example}";
        }

        return fault.NextStep is { } written
            ? StepOf(key, written) + Beside(text, fault)
            : TwoValues.Next(text, shape, key, mapping)
                ?? TwoValues.Rest(text, key)
                ?? $"write it with its own figure, in the form {key.Name}: {key.Example}";
    }

    // What the figure alone does not say any more.
    private static string Beside(string text, ParseFault fault) =>
        fault.Kind == ParseFaultKind.NotUnderstood && fault.Offset == 0 && fault.Length < text.Length && IsHedge(text[0])
            ? ", and in note that it is approximate"
        : fault.Kind == ParseFaultKind.Ambiguous && fault.Length == text.Length && text.IndexOf('-', StringComparison.Ordinal) > 0
            ? ", and the other end in note"
        : string.Empty;

    private static bool IsHedge(char first) => first is '~' or '≈' || char.IsAsciiLetter(first);

    private static bool AskedPeakToPeak(Key key) => key.Description.Contains("peak to peak", StringComparison.Ordinal);

    private static bool IsMeanSquare(string text) => MeanSquare.Any(word => text.EndsWith(word, StringComparison.OrdinalIgnoreCase));

    private static bool IsPeakToPeak(string text) => PeakToPeak.Any(word => text.EndsWith(word, StringComparison.OrdinalIgnoreCase));

    /// <summary>The key of the mapping that asks for what was given.</summary>
    private static string? Elsewhere(Shape shape, Key key, string text) =>
        shape
            .Keys.FirstOrDefault(one =>
                one != key
                && one.Kind == key.Kind
                && one.Dimension is not (Dimension.Number or Dimension.Ratio)
                && QuantityText.Parse(text, one.Dimension).Fault is null
            )
            ?.Name;

    // The text alone is what to write behind the key.
    private static string StepOf(Key key, string step) =>
        char.IsAsciiDigit(step[0])
        || step[0] is '-' or '±' or '+'
        || (key.Kind == ValueKind.Indication && IndicationText.Parse(step, key.Dimension).Fault is null)
            ? $"write {key.Name}: {step}"
            : step;
}
