using Ohmstead.Assessment.Limits;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Writing;

/// <summary>What numbers without a unit mean while parts are measured one after the other: the unit of the part's marking, then those of
/// what follows.</summary>
/// <param name="units">The keys and units in the order in which numbers are said.</param>
/// <remarks>A wrong guess cannot slip in unseen: the reading is shown with its unit and judged, and a factor of a thousand is asked about
/// before it is written.</remarks>
internal sealed class UnsaidUnits(IReadOnlyList<(string Key, string Unit)> units)
{
    /// <summary>For a part: of a capacitor the capacitance in its marked unit, then the ESR in ohm; of a resistor its resistance in its
    /// marked unit.</summary>
    public static UnsaidUnits Of(PartValues part)
    {
        if (MarkingLimits.Nominal(part) is not { } nominal || part.Kind.Value.Family is PartFamily.Fuse)
        {
            return new([]);
        }

        var print = QuantityText.Format(nominal);
        var marked = print[(print.AsSpan().LastIndexOfAnyInRange('0', '9') + 1)..].Trim();
        return part.Kind.Value.Family switch
        {
            PartFamily.Capacitor => new([("capacitance", marked), ("esr", "Ω")]),
            PartFamily.Resistor or PartFamily.Coil => new([("resistance", marked)]),
            PartFamily.Inductor => new([("inductance", marked), ("resistance", "Ω")]),
            _ => new([]),
        };
    }

    /// <summary>For a test point that shows a voltage: volt, then the ripple in millivolt.</summary>
    public static UnsaidUnits Of(TestPoint point) =>
        new(
            point.Measures == PointMeasure.Voltage ? [("voltage", "V"), ("ripple", "mV")]
            : point.Measures == PointMeasure.Hours ? [("hours", string.Empty)]
            : []
        );

    /// <summary>What the numbers mean, for a prompt: <c>µF, Ω</c>.</summary>
    public string Words => string.Join(", ", units.Select(unit => unit.Unit.Length > 0 ? unit.Unit : unit.Key));

    /// <summary>The same words, each bare number with its key and unit.</summary>
    public IReadOnlyList<string> Say(IReadOnlyList<string> words)
    {
        var next = 0;
        return
        [
            .. SaidIndication
                .Joined(words)
                .Select(word =>
                    next == units.Count ? word
                    : IndicationText.WordOf(word) is not null ? $"{units[next++].Key}={word}"
                    : IsBare(word[(IndicationText.SignOf(word)?.Length ?? 0)..].TrimStart())
                        ? $"{units[next].Key}={word}{Space(units[next].Unit)}{units[next++].Unit}"
                    : word
                ),
        ];
    }

    private static string Space(string unit) => unit.Length > 0 ? " " : string.Empty;

    private static bool IsBare(string word) => word.Length > 0 && word.All(unit => char.IsAsciiDigit(unit) || unit == '.');
}
