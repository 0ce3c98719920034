using Ohmstead.Report.Html;

namespace Ohmstead.Report.Sheets;

/// <summary>A size of paper, with the style that prints a sheet on it.</summary>
public sealed class Paper
{
    private Paper(string name, decimal width, decimal height)
    {
        (Name, Width, Height) = (name, width, height);
        Style = new InlineStyle([.. Read("sheet.css"), .. Read($"{name}.css")]);
    }

    /// <summary>210 mm by 297 mm (ISO 216).</summary>
    public static Paper A4 { get; } = new("A4", 210m, 297m);

    /// <summary>8.5 in by 11 in (ANSI/ASME Y14.1, size A; from memory).</summary>
    public static Paper Letter { get; } = new("Letter", 215.9m, 279.4m);

    /// <summary>Every size.</summary>
    public static IReadOnlyList<Paper> All { get; } = [A4, Letter];

    /// <summary>The name that it is asked for by.</summary>
    public string Name { get; }

    /// <summary>How wide it is, in millimetres.</summary>
    public decimal Width { get; }

    /// <summary>How high it is, in millimetres.</summary>
    public decimal Height { get; }

    internal InlineStyle Style { get; }

    internal static byte[] Read(string name)
    {
        using var resource = typeof(Paper).Assembly.GetManifestResourceStream("sheets/" + name)
            ?? throw new InvalidOperationException($"The assembly was built without {name}.");
        var bytes = new byte[resource.Length];
        resource.ReadExactly(bytes);
        return bytes;
    }
}
