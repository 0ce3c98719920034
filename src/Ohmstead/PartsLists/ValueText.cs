using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Markings;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Output;
using Ohmstead.Records.Model;

namespace Ohmstead.PartsLists;

/// <summary>Reads the value of a part with what stands beside it: <c>4u7</c>, <c>100n 63V</c>, <c>10k 1%</c>, <c>2200uF/25V</c>,
/// <c>BC-17</c>.</summary>
/// <remarks>Each word must be understood by itself and say another thing than the rest; what is left over is a fault, never a
/// guess.</remarks>
internal static class ValueText
{
    /// <summary>Reads a value.</summary>
    /// <param name="text">The cell.</param>
    /// <param name="kind">The kind of the part, which decides what its main quantity is.</param>
    /// <param name="unit">The unit of a bare figure, or null where one is a fault.</param>
    /// <returns>Keys of a part with their values as records have them, or what is wrong and what to write.</returns>
    public static (IReadOnlyList<(string Key, string Value)> Values, string? Fault, string? NextStep) Read(
        string text,
        PartKind kind,
        string? unit
    )
    {
        if (kind.ListedBy == TypeNumber.Alone)
        {
            return ([("type", text)], null, null);
        }

        var dimension = kind.MarkedIn;
        var values = new List<(string Key, string Value)>();
        var said = WithoutKind(text, kind.Name);
        if (dimension == Dimension.Current && FuseText.Read(Pieces(said)) is { } fuse)
        {
            return (fuse, null, null);
        }

        foreach (var word in Words(said, dimension, unit))
        {
            var (read, fault) = One(word, kind, dimension, unit);
            if (read.Count == 0)
            {
                // A diode, a relay or a lamp is often listed by its type, which reads like no quantity.
                return kind.ListedBy == TypeNumber.InsteadOfValues
                    ? ([("type", text)], null, null)
                    : (
                        [],
                        Told(text, word, fault),
                        fault?.NextStep is { } next
                            ? $"write {next}"
                            : "write such as 100n 63V, 10k 1%, 2200uF/25V, and anything else into a column of its own"
                    );
            }

            if (read.FirstOrDefault(one => values.Exists(known => known.Key == one.Key)) is { Key: { } twice })
            {
                return ([], $"'{CsvTableReader.Excerpt(text)}' gives {twice} twice", "say it once");
            }

            values.AddRange(read);
        }

        return (values, null, null);
    }

    /// <summary>The kind that a text tells beyond doubt: the temperature code of a ceramic, or the name of a kind; null when it tells
    /// none.</summary>
    /// <param name="text">What is written of the part.</param>
    /// <param name="candidates">The kinds that its reference allows.</param>
    public static PartKind? KindOf(string text, IReadOnlyList<PartKind> candidates)
    {
        foreach (var word in Pieces(text).Where(word => word.Length is 3 or 4))
        {
            if (CeramicCode.Parse(word).Is(out var code, out _))
            {
                var ceramic = code.Value is TemperatureCharacteristic.Linear ? PartKinds.CeramicClass1 : PartKinds.CeramicClass2;
                if (candidates.Contains(ceramic))
                {
                    return ceramic;
                }
            }
        }

        // A word such as paper or lamp may speak of something else than the part; these do not.
        return candidates
            .Where(kind => kind.HasTellingName)
            .OrderByDescending(kind => kind.Name.Length)
            .FirstOrDefault(kind => At(text, kind.Name) >= 0);
    }

    private static string WithoutKind(string text, string name) =>
        At(text, name) is >= 0 and var at ? text.Remove(at, name.Length).Trim() : text;

    // Where the words of a kind stand in a text by themselves, or -1.
    private static int At(string text, string name)
    {
        var at = text.IndexOf(name, StringComparison.OrdinalIgnoreCase);
        return
            at >= 0
            && (at == 0 || !char.IsLetterOrDigit(text[at - 1]))
            && (at + name.Length == text.Length || !char.IsLetterOrDigit(text[at + name.Length]))
            ? at
            : -1;
    }

    private static (IReadOnlyList<(string Key, string Value)> Read, ParseFault? Fault) One(
        string word,
        PartKind kind,
        Dimension dimension,
        string? unit
    )
    {
        if (
            word.EndsWith('%')
            || word[0] is '±'
            || word.StartsWith("+/-", StringComparison.Ordinal)
            || word.StartsWith("+-", StringComparison.Ordinal)
        )
        {
            return Tolerance.Parse(word, dimension).Is(out var tolerance, out var wrong)
                ? ([("tolerance", tolerance.ToString())], null)
                : ([], wrong);
        }

        ParseFault? fault = null;
        if (dimension is not (Dimension.Voltage or Dimension.Number))
        {
            if (dimension == Dimension.Capacitance && Coded(word, kind, unit) is { } coded)
            {
                return coded;
            }

            if (
                QuantityText.Parse(word, dimension).Is(out var main, out fault)
                || (
                    unit is not null
                    && fault.Kind == ParseFaultKind.UnitMissing
                    && QuantityText.Parse($"{word} {unit}", dimension).Is(out main, out _)
                )
            )
            {
                return ([(Key(dimension), QuantityText.Format(main))], null);
            }

            if (
                dimension is Dimension.Capacitance or Dimension.Resistance
                && LetterCode.Parse(word, dimension).Is(out var marking, out _)
                && marking is { IsCertain: true, Readings: [{ Value: { Tolerance: { } marked } value }] }
            )
            {
                return ([(Key(dimension), QuantityText.Format(value.Nominal)), ("tolerance", marked.ToString())], null);
            }
        }

        return Beside(word, kind, dimension) is ({ } key, { } beside) ? ([(key, beside)], null) : ([], fault);
    }

    // The digit code of capacitors, as 'marking' reads it: 104 is 100 nF. What it can mean otherwise is told, not guessed. Aluminium
    // electrolytics are printed with their value as it is.
    private static (IReadOnlyList<(string Key, string Value)> Read, ParseFault? Fault)? Coded(string word, PartKind kind, string? unit)
    {
        var isCode = word.Length is 3 or 4 && word.AsSpan(0, 3).IndexOfAnyExceptInRange('0', '9') < 0;
        if (
            !isCode
            || PrintedOnKind.For(kind) == PrintedOn.Electrolytic
            || !DigitCode.Parse(word).Is(out var code, out _)
            // Whoever names the unit of bare figures means 220 as it stands; no series of values has a 104 or a 472.
            || (unit is not null && word[2] == '0')
        )
        {
            return null;
        }

        string[] meant =
        [
            .. code.Readings.Select(reading => QuantityText.Format(reading.Value.Nominal)),
            .. unit is not null && QuantityText.Parse($"{word} {unit}", Dimension.Capacitance).Is(out var plain, out _)
                ? new[] { QuantityText.Format(plain) }
                : [],
        ];
        if (meant.Distinct(StringComparer.Ordinal).Count() > 1)
        {
            var all = string.Join(" or ", meant.Distinct(StringComparer.Ordinal));
            return ([], new(ParseFaultKind.Ambiguous, 0, word.Length, $"'{word}' can be {all}", all));
        }

        return (
            code is { IsCertain: true, Readings: [{ Value.Tolerance: { } tolerance }] }
                ? [("capacitance", meant[0]), ("tolerance", tolerance.ToString())]
                : [("capacitance", meant[0])],
            null
        );
    }

    private static (string? Key, string? Value) Beside(string word, PartKind kind, Dimension dimension)
    {
        var plain = word.EndsWith("DC", StringComparison.OrdinalIgnoreCase) ? word[..^2] : word;
        if (QuantityText.Parse(plain, Dimension.Voltage).Is(out var volts, out _))
        {
            return ("rated_voltage", QuantityText.Format(volts));
        }

        if (FractionOfWatt(word) is { } fraction)
        {
            return ("power", QuantityText.Format(new Quantity(fraction, Dimension.Power)));
        }

        if (QuantityText.Parse(word, Dimension.Power).Is(out var watts, out _))
        {
            return ("power", QuantityText.Format(watts));
        }

        if (char.IsAsciiDigit(word[0]) && QuantityText.Parse(word, Dimension.Temperature).Is(out var hot, out _))
        {
            return ("temperature", QuantityText.Format(hot));
        }

        if (dimension != Dimension.Current && QuantityText.Parse(word, Dimension.Current).Is(out var amperes, out _))
        {
            return ("current", QuantityText.Format(amperes));
        }

        if (dimension == Dimension.Current && FuseText.Size(word) is { } size)
        {
            return ("size", size);
        }

        return dimension != Dimension.Capacitance ? (null, null)
            : kind == PartKinds.SuppressionCapacitor && SafetyClasses.Read(word.ToUpperInvariant()) is { } safety
                ? ("safety_class", safety.Name())
            : (kind == PartKinds.CeramicClass1 || kind == PartKinds.CeramicClass2)
            && Vocabulary.Materials.FirstOrDefault(known => known == Ceramic(word)) is { } material
                ? ("material", material)
            : (null, null);
    }

    private static string Ceramic(string word) =>
        word.ToUpperInvariant() switch
        {
            "NP0" or "NPO" or "COG" => "C0G",
            var other => other,
        };

    private static string Key(Dimension dimension) =>
        dimension switch
        {
            Dimension.Capacitance => "capacitance",
            Dimension.Resistance => "resistance",
            Dimension.Inductance => "inductance",
            Dimension.Frequency => "frequency",
            _ => "current",
        };

    // Two words may be joined by a slash (2200uF/25V); -10/+50 %, 1/4W and X1/Y2 are one word.
    private static IEnumerable<string> Words(string text, Dimension dimension, string? unit)
    {
        foreach (var word in Together(Pieces(text)))
        {
            var pieces = word.Split('/', StringSplitOptions.RemoveEmptyEntries);
            var isOne =
                pieces.Length < 2
                || (word.Contains('%', StringComparison.Ordinal) && word[0] is '+' or '-' or '±')
                || FractionOfWatt(word) is not null
                || SafetyClasses.Read(word.ToUpperInvariant()) is not null
                || QuantityText.Parse(word, dimension == Dimension.Number ? Dimension.Voltage : dimension).Is(out _, out _)
                || (unit is null && pieces.Any(piece => piece.All(char.IsAsciiDigit)));
            foreach (var piece in isOne ? [word] : pieces)
            {
                yield return piece;
            }
        }
    }

    // Blanks and semicolons part words, and so does a comma before a blank; a comma inside a figure does not.
    private static string[] Pieces(string text) =>
        string.Concat(
                text.Select(
                    (letter, i) =>
                        char.IsWhiteSpace(letter)
                        || letter == ';'
                        || (letter == ',' && (i + 1 == text.Length || char.IsWhiteSpace(text[i + 1])))
                            ? ' '
                            : letter
                )
            )
            .Split(' ', StringSplitOptions.RemoveEmptyEntries);

    // A figure and its unit may stand apart: 100 nF, ±10 %, 100 nF/63 V.
    private static List<string> Together(IReadOnlyList<string> pieces)
    {
        var words = new List<string>();
        foreach (var piece in pieces)
        {
            if (
                words.Count > 0
                && EndsInFigure(words[^1])
                && piece.TakeWhile(letter => letter != '/').All(letter => char.IsLetter(letter) || letter is '%' or '°' or 'Ω' or 'µ')
            )
            {
                words[^1] += piece;
            }
            else
            {
                words.Add(piece);
            }
        }

        return words;
    }

    private static bool EndsInFigure(string word)
    {
        var rest = word.AsSpan().TrimEnd("0123456789.,");
        return rest.Length < word.Length && (rest.IsEmpty || rest[^1] is '/' or '±' or '+' or '-');
    }

    // 1/4W is a quarter of a watt, as resistors are sold.
    private static decimal? FractionOfWatt(string word)
    {
        var slash = word.IndexOf('/', StringComparison.Ordinal);
        return
            slash is 1 or 2
            && word[^1] is 'W' or 'w'
            && Count(word[..slash]) is { } above
            && Count(word[(slash + 1)..^1]) is > 0 and var below
            ? (decimal)above / below
            : null;
    }

    private static int? Count(string digits) =>
        digits.Length is 1 or 2 && digits.All(char.IsAsciiDigit)
            ? int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture)
            : null;

    private static string Told(string text, string word, ParseFault? fault) =>
        fault is { Kind: not ParseFaultKind.NotUnderstood and not ParseFaultKind.UnitUnknown } ? fault.Message
        : word == text ? $"'{CsvTableReader.Excerpt(word)}' is not understood as a value"
        : $"'{CsvTableReader.Excerpt(word)}' in '{CsvTableReader.Excerpt(text)}' is not understood";
}
