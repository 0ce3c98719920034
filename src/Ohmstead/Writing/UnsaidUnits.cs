using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Writing;

/// <summary>What numbers without a unit mean while parts are measured one after the other: the unit of the part's marking, then those of
/// what follows.</summary>
/// <param name="units">The keys and units in the order in which numbers are said.</param>
/// <remarks>A wrong guess cannot slip in unseen: the reading is shown with its unit and judged, and a factor of a thousand is asked about
/// before it is written.</remarks>
internal sealed class UnsaidUnits(IReadOnlyList<(Key Key, string Unit, string Words)> units)
{
    /// <summary>For a place, in the order in which its line names what to measure: the first in the unit of the marking, then those that
    /// follow, up to the first that more than a figure must be said of.</summary>
    /// <param name="expected">What is to be measured there, as its line names it.</param>
    /// <param name="nominal">What the part is marked with, or null.</param>
    public static UnsaidUnits For(IReadOnlyList<Expected> expected, Quantity? nominal)
    {
        var units = new List<(Key Key, string Unit, string Words)>();
        foreach (var one in expected)
        {
            if (UnitOf(one, units.Count == 0 ? nominal : null) is not { } unit)
            {
                break;
            }

            units.Add((MeasuredKey.For(one.Measured), unit, unit.Length > 0 ? unit : VerdictWords.Describe(one.Measured)));
        }

        return new(units);
    }

    // Null where a figure alone could not be told from another, or says nothing alone: a leakage hangs on voltage and time.
    private static string? UnitOf(Expected expected, Quantity? nominal) =>
        expected.Measured switch
        {
            Measured.Leakage or Measured.Insulation or Measured.VoltageLoss => null,
            Measured.Esr => "Ω",
            Measured.LossFactor or Measured.Gain or Measured.Hours => string.Empty,
            Measured.Voltage or Measured.ForwardVoltage => "V",
            Measured.Ripple => "mV",
            Measured.Resistance when nominal is not { Dimension: Dimension.Resistance } => "Ω",
            _ when nominal is { } marked => UnitIn(marked),
            _ when expected.Limit?.Interval is { Upper: { } upper } interval
                    && (interval.Lower is not { } lower || UnitIn(lower) == UnitIn(upper)) => UnitIn(upper),
            _ => null,
        };

    private static string UnitIn(Quantity quantity)
    {
        var print = QuantityText.Format(quantity);
        return print[(print.AsSpan().LastIndexOfAnyInRange('0', '9') + 1)..].Trim();
    }

    /// <summary>What the numbers mean, for a prompt: <c>µF, Ω</c>, <c>nF, dissipation factor</c>.</summary>
    public string Words => string.Join(", ", units.Select(unit => unit.Words));

    /// <summary>The same words, each bare number with its key and unit. What says its own unit has its turn among the numbers.</summary>
    /// <param name="words">The words, those that belong together in one.</param>
    public IReadOnlyList<string> Say(IReadOnlyList<string> words)
    {
        var said = new List<string>(words.Count);
        var next = 0;
        foreach (var word in words)
        {
            var figure = word[(IndicationText.SignOf(word)?.Length ?? 0)..].TrimStart();
            if (next < units.Count && (IndicationText.WordOf(word) is not null || IsBare(figure)))
            {
                var (key, unit, _) = units[next++];
                said.Add(IsBare(figure) ? $"{key.Name}={word}{Space(unit)}{unit}" : $"{key.Name}={word}");
            }
            else
            {
                next += next < units.Count && IsOf(units[next].Key, word, figure) ? 1 : 0;
                said.Add(word);
            }
        }

        return said;
    }

    private static bool IsOf(Key key, string word, string figure) =>
        word.StartsWith(key.Name + "=", StringComparison.Ordinal) || QuantityText.Parse(figure, key.Dimension).Is(out _, out _);

    private static string Space(string unit) => unit.Length > 0 ? " " : string.Empty;

    private static bool IsBare(string word) => word.Length > 0 && word.All(unit => char.IsAsciiDigit(unit) || unit == '.');
}
