using Microsoft.Playwright;

namespace Ohmstead.Browser.Tests;

/// <summary>How a page is shown: in light or dark colours, in a window so many CSS pixels wide.</summary>
public sealed record Form(ColorScheme Colours, int Width)
{
    /// <summary>All forms that every page is looked at in. 640 is a screen of 1280 at twice the size (WCAG 2.2, 1.4.4 Resize
    /// Text).</summary>
    internal static IReadOnlyList<Form> All { get; } =
    [
        new(ColorScheme.Light, 1280),
        new(ColorScheme.Dark, 1280),
        new(ColorScheme.Dark, 320),
        new(ColorScheme.Light, 320),
        new(ColorScheme.Light, 640),
    ];

    /// <inheritdoc/>
    public override string ToString() => $"{(Colours == ColorScheme.Dark ? "dark" : "light")}, {Width} wide";
}
