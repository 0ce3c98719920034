using System.Globalization;
using System.Text.RegularExpressions;

namespace Ohmstead.Report.Tests.Style;

/// <summary>The named colours of one part of the style sheet, and what eyes make of them.</summary>
internal sealed partial record Palette(IReadOnlyDictionary<string, Rgb> Colors)
{
    public Rgb this[string name] => Colors[name];

    /// <summary>Reads the custom properties of the first rule for the root after the given words.</summary>
    public static Palette After(string css, string words)
    {
        var start = css.IndexOf(":root", css.IndexOf(words, StringComparison.Ordinal), StringComparison.Ordinal);
        var rule = css[start..css.IndexOf('}', start)];
        return new Palette(
            Property
                .Matches(rule)
                .ToDictionary(match => match.Groups["name"].Value, match => Rgb.Parse(match.Groups["hex"].Value), StringComparer.Ordinal)
        );
    }

    [GeneratedRegex("--(?<name>[a-z-]+): #(?<hex>[0-9a-f]{3,6});", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Property { get; }
}

/// <summary>A colour in linear light, each part 0 to 1.</summary>
internal readonly record struct Rgb(double R, double G, double B)
{
    /// <summary>Relative luminance, WCAG 2.2.</summary>
    public double Luminance => (0.2126 * R) + (0.7152 * G) + (0.0722 * B);

    public static Rgb Parse(string hex)
    {
        var full = hex.Length == 3 ? string.Concat(hex.Select(digit => new string(digit, 2))) : hex;
        double Part(int at) => Linear(int.Parse(full.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0);
        return new Rgb(Part(0), Part(2), Part(4));
    }

    /// <summary>Contrast ratio, WCAG 2.2.</summary>
    public static double Contrast(Rgb a, Rgb b) =>
        (Math.Max(a.Luminance, b.Luminance) + 0.05) / (Math.Min(a.Luminance, b.Luminance) + 0.05);

    /// <summary>Difference in CIE L*a*b* (D65), the plain distance of 1976.</summary>
    public static double Difference(Rgb a, Rgb b)
    {
        var (l1, a1, b1) = a.Lab();
        var (l2, a2, b2) = b.Lab();
        return Math.Sqrt(((l1 - l2) * (l1 - l2)) + ((a1 - a2) * (a1 - a2)) + ((b1 - b2) * (b1 - b2)));
    }

    /// <summary>What is left of a colour after a 3 by 3 matrix over linear light.</summary>
    public Rgb Through(double[] m) =>
        new(
            Math.Clamp((m[0] * R) + (m[1] * G) + (m[2] * B), 0, 1),
            Math.Clamp((m[3] * R) + (m[4] * G) + (m[5] * B), 0, 1),
            Math.Clamp((m[6] * R) + (m[7] * G) + (m[8] * B), 0, 1)
        );

    private static double Linear(double part) => part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4);

    private (double L, double A, double B) Lab()
    {
        static double F(double t) => t > 216.0 / 24389 ? Math.Cbrt(t) : ((24389.0 / 27 * t) + 16) / 116;
        var x = F(((0.4124 * R) + (0.3576 * G) + (0.1805 * B)) / 0.9505);
        var y = F(Luminance);
        var z = F(((0.0193 * R) + (0.1192 * G) + (0.9505 * B)) / 1.089);
        return ((116 * y) - 16, 500 * (x - y), 200 * (y - z));
    }
}
