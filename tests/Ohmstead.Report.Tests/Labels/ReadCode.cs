using System.Globalization;
using System.Text.RegularExpressions;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Html;
using ZXing;
using ZXing.Common;

namespace Ohmstead.Report.Tests.Labels;

/// <summary>Reads codes with a library that is not the one that wrote them.</summary>
internal static partial class ReadCode
{
    private const int Dots = 4;

    /// <summary>The modules as the library gave them.</summary>
    public static bool[][] Modules(QrCode code)
    {
        var modules = Light(code.Side);
        for (var row = 0; row < code.Side; row++)
        {
            for (var column = 0; column < code.Side; column++)
            {
                modules[row][column] = code.IsDark(row, column);
            }
        }

        return modules;
    }

    /// <summary>The modules as they are drawn.</summary>
    public static bool[][] Drawn(QrCode code)
    {
        using var buffer = new PageBuffer();
        var html = new HtmlWriter(buffer);
        code.Write(html, "code");
        var text = System.Text.Encoding.UTF8.GetString(buffer.Written);
        return Drawn(Path().Match(text).Groups["path"].Value, code.Side);
    }

    /// <summary>The modules of a path of a drawing: each run is a rectangle one module high.</summary>
    public static bool[][] Drawn(string path, int side)
    {
        var modules = Light(side);
        foreach (Match run in Run().Matches(path))
        {
            int Of(string name) => int.Parse(run.Groups[name].ValueSpan, CultureInfo.InvariantCulture);
            Assert.Equal(Of("x"), Of("back"));
            for (var at = 0; at < Of("wide"); at++)
            {
                modules[Of("y")][Of("x") + at] = true;
            }
        }

        Assert.Equal(path.Length, Run().Matches(path).Sum(run => run.Length));
        return modules;
    }

    /// <summary>What the modules say; null when they cannot be read.</summary>
    public static Result? Of(bool[][] modules) => Read(modules, Dots, DecodeHintType.PURE_BARCODE);

    /// <summary>What a reader says that must find the code in a picture first, as a telephone does; null when it finds none in any of some
    /// pictures, each held a little more askew than the one before.</summary>
    public static string? Found(bool[][] modules) =>
        new[] { 0.0, 4.0, 9.0, 15.0 }
            .Select(askew => Read(modules, 6, DecodeHintType.TRY_HARDER, askew)?.Text)
            .FirstOrDefault(text => text is not null);

    private static bool[][] Light(int side) => [.. Enumerable.Range(0, side).Select(_ => new bool[side])];

    private static Result? Read(bool[][] modules, int size, DecodeHintType hint, double askew = 0)
    {
        var side = modules.Length;
        var wide = (int)(side * size * (askew > 0 ? 1.4 : 1));
        var (sine, cosine) = Math.SinCos(askew * Math.PI / 180);
        var dots = new byte[wide * wide];
        for (var at = 0; at < dots.Length; at++)
        {
            var (x, y) = ((at % wide) + 0.5 - (wide / 2.0), (at / wide) + 0.5 - (wide / 2.0));
            var column = (int)Math.Floor((((x * cosine) + (y * sine)) / size) + (side / 2.0));
            var row = (int)Math.Floor((((y * cosine) - (x * sine)) / size) + (side / 2.0));
            var isDark = column >= 0 && row >= 0 && column < side && row < side && modules[row][column];
            dots[at] = isDark ? (byte)0 : (byte)255;
        }

        var light = new RGBLuminanceSource(dots, wide, wide, RGBLuminanceSource.BitmapFormat.Gray8);
        return new ZXing.QrCode.QRCodeReader().decode(
            new BinaryBitmap(new HybridBinarizer(light)),
            new Dictionary<DecodeHintType, object> { [hint] = true }
        );
    }

    [GeneratedRegex(@" d=(?<path>[^ >]*)", RegexOptions.ExplicitCapture)]
    private static partial Regex Path();

    [GeneratedRegex(@"M(?<x>\d+),(?<y>\d+)h(?<wide>\d+)v1H(?<back>\d+)z", RegexOptions.ExplicitCapture)]
    private static partial Regex Run();
}
