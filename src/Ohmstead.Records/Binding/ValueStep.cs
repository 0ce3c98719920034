using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Binding;

/// <summary>What to write in place of a value that could not be read, by what its key asks and what else the mapping could hold.</summary>
internal static class ValueStep
{
    private static readonly string[] PeakToPeak = ["pp", "p-p", "pk-pk", "p/p", "peak-to-peak"];

    /// <summary>The next step of a fault.</summary>
    internal static string For(Shape shape, Key key, string text, ParseFault fault)
    {
        if (FamiliarWords.IsNothing(text))
        {
            return $"leave {key.Name} out; a note may say why";
        }

        if (fault.Kind == ParseFaultKind.WrongDimension && Elsewhere(shape, key, text) is { } other)
        {
            return $"write {other}: {text} if it is one, else {fault.NextStep ?? $"a value such as {key.Example}"} behind {key.Name}";
        }

        if (IsPeakToPeak(text) && !key.Description.Contains("peak to peak", StringComparison.Ordinal))
        {
            return $"write {key.Name} as it is asked, not peak to peak, such as {key.Name}: {key.Example}";
        }

        return fault.NextStep is { } written
            ? StepOf(key, written)
            : TwoValues.Next(text, shape, key) ?? $"write it in the form {key.Name}: {key.Example}";
    }

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
