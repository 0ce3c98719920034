using System.Collections.Immutable;
using Ohmstead.Electronics.PreferredValues;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>Reads the print of old capacitors: 8 mfd, 250 mmf, 500 cm, .047, 330, 8+8 mfd 450 V, 2200/16, 2200 MFD 16 WVDC.</summary>
/// <remarks>
/// <code>
/// print   = number { ("+" | "-" | "/") number } [ unit ] [ voltage ] [ "BP" | "NP" | "0+0" | "bip" ]
/// voltage = number [ "V" | "VDC" | "WV" | "WVDC" | "VDCW" ]
/// </code>
/// MF and mF are microfarad here, as parts were printed before about 1980. A bare value below 1 is in µF (disc, paper, film), a bare value
/// from 1 up in pF (disc, mica), and three bare digits may be a digit code. A can, and a value with a voltage but no unit, is in µF. A
/// surge voltage (SV) is another figure than the rated one and is refused. Three digits before a voltage that are no value of a can are a
/// digit code (226 16), and the voltage may be a code too (476 1C). Source: common practice.
/// </remarks>
public static class TradeNotation
{
    /// <summary>Reads the print. More than one reading where it has more than one meaning.</summary>
    public static Parsed<Marking<CapacitorPrint>> Parse(ReadOnlySpan<char> text)
    {
        var print = PrintScan.Scan(text);
        if (print.Fault is { } fault)
            return Failed(text, fault);
        if (print.Unit.Length > 0)
            return WithUnit(text, print);
        return print.Numbers.Length switch
        {
            1 when print.Volts is null => Bare(text, print),
            1 when Coded(print) is { } coded => coded,
            1 => Read(Make(print, print.Numbers, 1e-6m, print.Volts), "µF, as a value with a voltage and no unit is"),
            2 when print is { Volts: null, Separator: '/' } => Slashed(print),
            _ => Read(Make(print, print.Numbers, 1e-6m, print.Volts), "sections of a can, in µF"),
        };
    }

    /// <summary>
    /// The digit code with the rated voltage behind it, as on tantalums: 226 16. No capacitor is made of 226 µF; 220 16 is 220 µF.
    /// </summary>
    private static Parsed<Marking<CapacitorPrint>>? Coded(PrintScan print)
    {
        var number = print.Numbers[0];
        return
            number is >= 100m and <= 999m
            && number == decimal.Truncate(number)
            && number % 10m is >= 1m and <= 7m
            && !ESeries.E24.Contains(new Quantity(number, Dimension.Number))
            && DigitCode.Parse(Figures.Text(number)).Is(out var code, out _)
            ? Marking<CapacitorPrint>.Read(
                new MarkingReading<CapacitorPrint>(
                    new CapacitorPrint([code.Readings[0].Value.Nominal], print.Volts, null, print.IsBipolar),
                    $"{code.Readings[0].Rule}, then the rated voltage",
                    code.Readings[0].Source
                )
            )
            : null;
    }

    private static Parsed<Marking<CapacitorPrint>> WithUnit(ReadOnlySpan<char> text, PrintScan print)
    {
        if (print.Unit is ['M' or 'm'])
        {
            var value = Make(print, print.Numbers, 1e-6m, print.Volts);
            return Parsed<Marking<CapacitorPrint>>.From(
                new Marking<CapacitorPrint>([
                    new(value, "M for microfarad", Source.CommonPractice),
                    new(value with { Tolerance = Tolerance.Relative(0.2m) }, "in µF, with M for ±20 %", Source.CommonPractice),
                    .. ByDigits(text, print),
                ])
            );
        }

        if (print.Unit is "jar" or "jars")
        {
            return Marking<CapacitorPrint>.Read(
                new MarkingReading<CapacitorPrint>(
                    Make(print, print.Numbers, 1000m * ElectrostaticUnits.FaradsPerCentimetre, print.Volts),
                    "a jar of 1000 cm",
                    Source.FromMemory("naval practice")
                ),
                new MarkingReading<CapacitorPrint>(
                    Make(print, print.Numbers, 1e-6m / 900m, print.Volts),
                    "a jar of 1/900 µF",
                    Source.FromMemory("naval practice")
                )
            );
        }

        if (ByDigits(text, print) is { Length: > 0 } coded)
            return Parsed<Marking<CapacitorPrint>>.From(new Marking<CapacitorPrint>(coded));
        if (print.Unit is "cm")
            return Read(
                Make(print, print.Numbers, ElectrostaticUnits.FaradsPerCentimetre, print.Volts),
                "centimetres of the electrostatic system"
            );
        return QuantityText.Parse($"1 {print.Unit}", Dimension.Capacitance, UnitPrint.Old).Is(out var unit, out var fault)
            ? Read(Make(print, print.Numbers, unit.Value, print.Volts), $"{print.Unit} is {QuantityText.Format(unit)}")
            : Failed(text, fault.Message);
    }

    private static Parsed<Marking<CapacitorPrint>> Bare(ReadOnlySpan<char> text, PrintScan print)
    {
        if (print.Numbers[0] < 1m)
            return Read(Make(print, print.Numbers, 1e-6m, null), "µF, as a bare value below 1 is");
        return ByDigits(text, print) is { Length: > 0 } coded
            ? Parsed<Marking<CapacitorPrint>>.From(new Marking<CapacitorPrint>(coded))
            : Read(Make(print, print.Numbers, 1e-12m, null), "pF, as a bare value from 1 up is");
    }

    private static ImmutableArray<MarkingReading<CapacitorPrint>> ByDigits(ReadOnlySpan<char> text, PrintScan print) =>
        DigitCode.Parse(text).Is(out var code, out _)
            ?
            [
                .. code.Readings.Select(reading => new MarkingReading<CapacitorPrint>(
                    new CapacitorPrint([reading.Value.Nominal], reading.Value.RatedVoltage, reading.Value.Tolerance, print.IsBipolar),
                    reading.Rule,
                    reading.Source
                )),
            ]
            : [];

    /// <summary>Two numbers with a slash: value and voltage, or two sections.</summary>
    private static Parsed<Marking<CapacitorPrint>> Slashed(PrintScan print)
    {
        var (first, second) = (print.Numbers[0], print.Numbers[1]);
        var sections = new MarkingReading<CapacitorPrint>(
            Make(print, print.Numbers, 1e-6m, null),
            "sections of a can, in µF",
            Source.CommonPractice
        );
        var rated = new MarkingReading<CapacitorPrint>(
            Make(print, [first], 1e-6m, new Quantity(second, Dimension.Voltage)),
            "µF and rated voltage",
            Source.CommonPractice
        );
        if (second < 3m)
            return Marking<CapacitorPrint>.Read(sections);

        // No can was made with sections so far apart.
        if (first > 50m * second)
            return Marking<CapacitorPrint>.Read(rated);
        return first == second ? Marking<CapacitorPrint>.Read(sections, rated) : Marking<CapacitorPrint>.Read(rated, sections);
    }

    private static CapacitorPrint Make(PrintScan print, ImmutableArray<decimal> numbers, decimal unit, Quantity? volts) =>
        new([.. numbers.Select(number => new Quantity(number * unit, Dimension.Capacitance))], volts, null, print.IsBipolar);

    private static Parsed<Marking<CapacitorPrint>> Read(CapacitorPrint print, string rule) =>
        print.Sections.Any(section => section.Value > DimensionFacts.Most(Dimension.Capacitance))
            ? Failed(rule, $"{QuantityText.Format(print.Sections[0])} is not plausible for a capacitor", ParseFaultKind.OutOfRange)
            : Marking<CapacitorPrint>.Read(new MarkingReading<CapacitorPrint>(print, rule, Source.CommonPractice));

    private static Parsed<Marking<CapacitorPrint>> Failed(
        ReadOnlySpan<char> text,
        string message,
        ParseFaultKind kind = ParseFaultKind.NotUnderstood
    ) => Marking<CapacitorPrint>.Failed(text, message, null, kind);
}
