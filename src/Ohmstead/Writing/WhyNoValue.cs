using System.Text.RegularExpressions;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Writing;

/// <summary>Why a word at the bench is no value of its place, with the text to write in its stead. Nothing is taken for meant.</summary>
/// <param name="kind">The kind of the part or null for a test point.</param>
/// <param name="measures">For a test point, what is measured there.</param>
/// <param name="shape">The shape of a reading or a proof, for its keys.</param>
/// <param name="isUnitKnown">True where a figure alone has the unit that the line above shows.</param>
internal sealed partial class WhyNoValue(PartKind? kind, PointMeasure? measures, Shape shape, bool isUnitKnown)
{
    private static readonly char[] Between = [' ', ',', ';', '/', '|', '\t'];
    private static readonly string[] Good = ["ok", "okay", "good", "passed", "fine", "works", "yes"];
    private static readonly string[] Bad = ["bad", "failed", "fails", "broken", "faulty", "nok", "no"];
    private const string NotLifted = "in-circuit";
    private static readonly string[] Lifted = ["lifted", "out-of-circuit"];

    /// <summary>Says it of one of the words.</summary>
    /// <param name="words">The words, those that belong together in one.</param>
    /// <param name="at">Which of them.</param>
    public string Of(IReadOnlyList<string> words, int at) =>
        Under(words[at])
        ?? OfKey(words, at)
        ?? OfEnd(words[at])
        ?? OfCircuit(words[at])
        ?? OfResult(words[at])
        ?? OfDoubt(words[at])
        ?? OfRipple(words[at])
        ?? OfSeveral(words[at])
        ?? OfFigure(words[at])
        ?? OfPlace(words[at])
        ?? $"'{words[at]}' is no value with a unit; write 391uF, 1.4ohm, 4k7ohm, 120Hz, 12%, pass, open, over 20Mohm, or key=value such as "
            + "gain=140";

    /// <summary>Whether a word alone is told with another reason than that it is no value.</summary>
    public static bool Knows(string word) =>
        OfResult(word) is not null
        || BenchShape.Reading.PlaceOf(word) >= 0
        || BenchShape.Proof.PlaceOf(word) >= 0
        || Lifted.Contains(word, StringComparer.Ordinal);

    /// <summary>That a word gives what another one gave.</summary>
    public string Twice(string word, string key) =>
        $"'{word}' gives {key} a second time"
        + (
            measures is PointMeasure.Voltage && key == BenchShape.Voltage.Name
                ? $"; a ripple is written ripple={Tight(word)}"
                : "; an entry holds one, so enter the second as a reading of its own"
        );

    /// <summary>That a quantity is none of the place.</summary>
    public static string Elsewhere(string word, string key, PointMeasure? measures)
    {
        var number = word[..(word.AsSpan().LastIndexOfAnyInRange('0', '9') + 1)];
        return measures is PointMeasure.Hours && key == "after" ? $"hours of soak have a key of their own; write hours={number}"
            : Looked(measures) is { } looked
                ? $"'{word}' is {Article(key)}, and {looked} is looked at here; "
                    + $"enter it at the part that it was read of: its name, then {word}"
            : $"'{word}' was understood as {key.Replace('_', ' ')}, which is not what is looked at here";
    }

    /// <summary>That a key is none, with the nearest, or the one that is begun so.</summary>
    /// <param name="key">The key.</param>
    /// <param name="value">What was said of it.</param>
    /// <param name="shape">The shape of what is entered.</param>
    public static string NoKey(string key, string value, Shape shape)
    {
        string[] known = [.. shape.Keys.Select(one => one.Name)];
        var begun = key.Length > 1 ? known.Where(one => one.StartsWith(key, StringComparison.OrdinalIgnoreCase)).ToArray() : [];
        return (begun is [var only] ? only : Nearest.To(key, known)) is { } near
            ? $"'{key}' is no key of a {shape.Name}, '{near}' is the nearest; write {near}={Tight(value)}"
            : $"'{key}' is no key of a {shape.Name}; known keys: {string.Join(", ", known)}";
    }

    private static string Article(string key) =>
        key is "after" ? "a duration"
        : key[0] is 'a' or 'e' or 'i' ? $"an {key}"
        : $"a {key}";

    private static string? Looked(PointMeasure? measures) =>
        measures switch
        {
            PointMeasure.Voltage => "a voltage",
            PointMeasure.Current => "a current",
            PointMeasure.Frequency => "a frequency",
            PointMeasure.Temperature => "a temperature",
            PointMeasure.Hours => "a number of hours",
            PointMeasure.Result => "pass or fail",
            null => null,
        };

    // 18uA@25V: the condition has a key of its own, which its unit tells.
    private static string? Under(string word)
    {
        var sign = word.IndexOf(SaidIndication.Condition, StringComparison.Ordinal);
        if (sign < 0)
        {
            return null;
        }

        var (before, said) = (word[..sign].TrimEnd(), Tight(word[(sign + 1)..]));
        var key =
            Is(said, Dimension.Voltage) ? "at_voltage"
            : Is(said, Dimension.Frequency) ? "frequency"
            : Is(said, Dimension.Duration) ? "after"
            : Is(said, Dimension.Temperature) ? "temperature"
            : null;
        var written = key is null ? "at_voltage=25V, frequency=120Hz or after=2min" : $"{before} {key}={said}".TrimStart();
        return $"what follows @ has a key of its own; write {written}";
    }

    // ripple 4mV, ripple: 4mV, ripple = 4mV.
    private string? OfKey(IReadOnlyList<string> words, int at)
    {
        var end = words[at].IndexOf(':', StringComparison.Ordinal);
        var (name, inWord) = end > 0 ? (words[at][..end], words[at][(end + 1)..]) : (words[at], string.Empty);
        if (shape.PlaceOf(name) < 0)
        {
            return null;
        }

        var key = shape.Keys[shape.PlaceOf(name)];
        var value = inWord.Length > 0 ? inWord : words.Skip(at + 1).Select(word => word.TrimStart('=', ':')).FirstOrDefault(IsSome);
        return $"'{name}' is a key, and its value follows = in the same word; write "
            + (
                value is null ? $"{name}={Tight(key.Example)}"
                : IsBare(value) && key.Dimension is not (Dimension.Number or Dimension.Ratio)
                    ? $"{name}={value} with its unit, as in {name}={Tight(key.Example)}"
                : $"{name}={Tight(value)}"
            );
    }

    private string? OfFigure(string word)
    {
        if (IsBare(word) && word[0] == '-' && kind?.Family is PartFamily.Capacitor or PartFamily.Resistor or PartFamily.Inductor)
        {
            return $"'{word}' is below 0, which nothing of this part can be; write {word[1..]} if the meter showed no minus, "
                + "else read it again";
        }

        if (IsBare(word) && measures is PointMeasure.Result)
        {
            return $"a test passes or fails, and '{word}' says neither; write pass or fail";
        }

        if (IsBare(word) && AsFigure(word, kind, measures) is { } figured)
        {
            return $"'{word}' has no unit; write {figured}";
        }

        if (Comma().Match(word) is { Success: true } comma)
        {
            var (before, after) = (comma.Groups["before"].Value, comma.Groups["after"].Value);
            var isThousands = after.Length == 3 && before[0] != '0';
            return $"'{word}' has a comma; write {before}.{after}"
                + (isThousands ? $" where it is the decimal mark, {before}{after} where it parts the thousands" : string.Empty)
                + (isUnitKnown ? string.Empty : ", with its unit");
        }

        foreach (var dimension in Dimensions())
        {
            if (IndicationText.Parse(word, dimension).Fault is { NextStep: { } next } fault)
            {
                var told = fault.Message.Contains(word, StringComparison.Ordinal) ? fault.Message : $"'{word}': {fault.Message}";
                return $"{told}; write {next}";
            }
        }

        return null;
    }

    private static string? OfPlace(string word) =>
        Reference().IsMatch(word) ? $"'{word}' is a place, and an entry is about one; enter each by itself" : null;

    // What the place is measured in comes first: of a capacitor 391uf is a capacitance, whatever else it may be a slip for.
    private IEnumerable<Dimension> Dimensions()
    {
        Dimension[] all =
        [
            Dimension.Capacitance,
            Dimension.Resistance,
            Dimension.Inductance,
            Dimension.Voltage,
            Dimension.Current,
            Dimension.Frequency,
            Dimension.Duration,
            Dimension.Temperature,
        ];
        var first = measures switch
        {
            PointMeasure.Current => Dimension.Current,
            PointMeasure.Frequency => Dimension.Frequency,
            PointMeasure.Temperature => Dimension.Temperature,
            not null => Dimension.Voltage,
            null => kind?.Family switch
            {
                PartFamily.Capacitor => Dimension.Capacitance,
                PartFamily.Inductor => Dimension.Inductance,
                PartFamily.Crystal => Dimension.Frequency,
                PartFamily.Transistor or PartFamily.Other => Dimension.Voltage,
                _ => Dimension.Resistance,
            },
        };
        return all.Where(one => one != first).Prepend(first);
    }

    private static bool IsSome(string word) => word.Length > 0;

    private static bool Is(string text, Dimension dimension) => QuantityText.Parse(text, dimension).Is(out _, out _);

    private static bool IsBare(string word) => word.Length > 0 && word.All(letter => char.IsAsciiDigit(letter) || letter is '.' or '-');

    // As one word of a shell: no space before the unit.
    private static string Tight(string value) => value.Replace(" ", string.Empty, StringComparison.Ordinal);

    // What the figure may have been meant as, in the units of the place.
    private static string? AsFigure(string word, PartKind? kind, PointMeasure? measures) =>
        measures switch
        {
            PointMeasure.Voltage => $"{word}V or {word}mV, or ripple={word}mV",
            PointMeasure.Current => $"{word}mA or {word}A",
            PointMeasure.Frequency => $"{word}Hz or {word}kHz",
            PointMeasure.Temperature => $"{word}C",
            PointMeasure.Hours => $"hours={word}",
            PointMeasure.Result => "pass or fail",
            null => kind?.Family switch
            {
                PartFamily.Capacitor => $"{word}uF, {word}nF or {word}pF, an ESR as {word}ohm, a loss factor as loss_factor={word}",
                PartFamily.Resistor or PartFamily.Coil or PartFamily.Fuse => $"{word}ohm, {word}kohm or {word}Mohm",
                PartFamily.Inductor => $"{word}uH or {word}mH, a winding as {word}ohm",
                PartFamily.Crystal => $"{word}kHz or {word}MHz",
                PartFamily.Transistor => $"gain={word}, or {word}V",
                PartFamily.Other => $"{word}V or {word}mV",
                _ => null,
            },
        };

    [GeneratedRegex("^(?<before>[0-9]+),(?<after>[0-9]{1,3})$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Comma();

    [GeneratedRegex("^[A-Z]{1,3}[0-9]{1,4}[A-Za-z]?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Reference();
}
