using System.Text;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Records.Schemas;

/// <summary>Regular expressions for JSON schemas. Each takes at least what the reader takes; the reader is the stricter of the
/// two.</summary>
/// <remarks>Only what ECMA 262 and .NET read alike is used. Signs that look alike stand as escapes, so that a diff shows which is
/// meant.</remarks>
internal static class SchemaPatterns
{
    private const string Space = @"[ \u00A0\u2009\u202F]*";
    private const string Number = @"(?:[0-9]+(?:\.[0-9]+)?|\.[0-9]+)";
    private const string Micro = @"\u00B5\u03BC";
    private const string Prefix = @"[pnu" + Micro + "mkKMGT]?";

    /// <summary>Text with something in it.</summary>
    internal const string Text = @"\S";

    /// <summary>A name: no spaces, nothing that parts a path or is refused in a file name.</summary>
    internal const string Id = @"^[^\s/\\:*?""<>|]+$";

    /// <summary>The https address of a folder.</summary>
    internal const string Address = "^https://[A-Za-z0-9-][A-Za-z0-9.:-]*(?:/[A-Za-z0-9._~!$&'()*+,;=:@%/-]*)?$";

    /// <summary>The address of a folder, in which the commit and the path of a record stand open, once each.</summary>
    internal const string AddressOfRecords =
        "^https://[A-Za-z0-9-][A-Za-z0-9.:-]*/"
        + OfAddress
        + @"*(?:\{commit\}"
        + OfAddress
        + @"*\{path\}|\{path\}"
        + OfAddress
        + @"*\{commit\})"
        + OfAddress
        + "*$";

    private const string OfAddress = "[A-Za-z0-9._~!$&'()*+,;=:@%/?-]";

    /// <summary>A number without a unit.</summary>
    internal const string PlainNumber = "^-?" + Number + "$";

    /// <summary>A whole number.</summary>
    internal const string Count = "^(?:0|[1-9][0-9]{0,8})$";

    /// <summary>A tolerance: one letter, or something with a digit that ends in a unit.</summary>
    internal const string Tolerance = @"^(?:[A-Za-z]|.*[0-9].*[^0-9\s])$";

    /// <summary>A day.</summary>
    internal const string Day = "^" + Year + "-" + Month + "-" + DayOfMonth + "$";

    /// <summary>A day, a month or a year.</summary>
    internal const string RoughDay = "^" + Year + "(?:-" + Month + "(?:-" + DayOfMonth + ")?)?$";

    /// <summary>A quantity whose dimension another key decides: a number and perhaps any unit.</summary>
    internal const string AnyQuantity =
        "^-?(?:" + Number + Space + @"(?:[^0-9\s]+)?|[0-9]*[A-Za-z" + Micro + "][0-9]+" + Space + @"(?:[^0-9\s]+)?)$";

    private const string Year = "(?:19|2[01])[0-9]{2}";
    private const string Month = "(?:0[1-9]|1[0-2])";
    private const string DayOfMonth = "(?:0[1-9]|[12][0-9]|3[01])";

    /// <summary>A quantity of a dimension.</summary>
    internal static string Quantity(Dimension dimension) => $"^{Figure(dimension)}$";

    /// <summary>What a meter showed: a quantity of a dimension, one side of one, or a word.</summary>
    internal static string Indication(Dimension dimension) =>
        $"^(?:{IndicationText.Open}|{IndicationText.Short}|{IndicationText.OverRange}|"
        + $@"(?:(?:[<>]=?|[\u2264\u2265]){Space})?{Figure(dimension)})$";

    private static string Figure(Dimension dimension)
    {
        var (units, code) = Spelling(dimension);
        var unit = dimension is Dimension.Number or Dimension.Ratio ? $"(?:{Space}(?:{units}))?" : $"{Space}(?:{units})";
        return code.Length == 0 ? $"-?{Number}{unit}" : $"-?(?:{Number}{unit}|[0-9]*[{code}][0-9]+(?:{Space}(?:{units}))?)";
    }

    /// <summary>How the units of a dimension are spelled, and the letters that may stand for the decimal point.</summary>
    private static (string Units, string Code) Spelling(Dimension dimension) =>
        dimension switch
        {
            Dimension.Capacitance => (
                $"{Prefix}[Ff]|[pnum{Micro}]|{AnyCase("p")}{AnyCase("f")}|{AnyCase("n")}{AnyCase("f")}|{AnyCase("u")}{AnyCase("f")}"
                    + $"|[MmUu{Micro}]{{1,2}}{AnyCase("f")}{AnyCase("d")}?|{AnyCase("farad")}[Ss]?"
                    + $"|{AnyCase("microfarad")}[Ss]?|{AnyCase("picofarad")}[Ss]?",
                $"pnumF{Micro}"
            ),
            Dimension.Resistance => (
                $@"{Prefix}(?:[\u03A9\u2126]|{AnyCase("ohm")}[Ss]?)|[RkKMGT]|{AnyCase("meg")}(?:{AnyCase("ohm")}[Ss]?)?",
                "LRrKkMGT"
            ),
            Dimension.Inductance => ($"{Prefix}(?:H|{AnyCase("hy")})", $"num{Micro}"),
            Dimension.Voltage => ($"{Prefix}V|{AnyCase("volt")}[Ss]?", "V"),
            Dimension.Current => ($"{Prefix}A", "A"),
            Dimension.Power => ($"{Prefix}W|{AnyCase("watt")}[Ss]?", ""),
            Dimension.Energy => ($"{Prefix}(?:J|Wh)", ""),
            Dimension.Charge => ($"{Prefix}(?:C|Ah)", ""),
            Dimension.Frequency => ($"{Prefix}(?:Hz|c/s)|cps|[kKM]c", ""),
            Dimension.Duration => ($"{Prefix}s|secs?|seconds?|mins?|minutes?|h|hrs?|hours?|d|days?|weeks?|months?|yrs?|years?", ""),
            Dimension.Temperature => (@"\u00B0C|\u2103|degC|C", ""),
            Dimension.Length => ($"{Prefix}m|cm|in|inch|inches|mils?", ""),
            _ => (@"%|\u2030|ppm", ""),
        };

    private static string AnyCase(string word)
    {
        var text = new StringBuilder();
        foreach (var letter in word)
        {
            text.Append('[').Append(char.ToUpperInvariant(letter)).Append(letter).Append(']');
        }

        return text.ToString();
    }
}
