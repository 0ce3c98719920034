using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>An attribute together with its value, where only a few values make sense.</summary>
public sealed class FixedAttribute
{
    private FixedAttribute(string source, int bit)
    {
        Start = Encoding.ASCII.GetBytes(" " + source);
        Bit = 1UL << bit;
    }

    /// <summary>The cell heads its column.</summary>
    public static FixedAttribute ScopeColumn { get; } = new("scope=\"col\"", 32);

    /// <summary>The cell heads its row.</summary>
    public static FixedAttribute ScopeRow { get; } = new("scope=\"row\"", 32);

    /// <summary>The cell heads the rows that follow.</summary>
    public static FixedAttribute ScopeRowGroup { get; } = new("scope=\"rowgroup\"", 32);

    /// <summary>A drawing that is read as one picture.</summary>
    public static FixedAttribute RoleImage { get; } = new("role=\"img\"", 33);

    /// <summary>A part of the page to jump to.</summary>
    public static FixedAttribute RoleRegion { get; } = new("role=\"region\"", 33);

    /// <summary>Nothing to read out: the words stand beside it.</summary>
    public static FixedAttribute AriaHidden { get; } = new("aria-hidden=\"true\"", 34);

    /// <summary>The link leaves the pages and tells the target nothing.</summary>
    public static FixedAttribute Leaving { get; } = new("rel=\"external noopener noreferrer\"", 35);

    /// <summary>The picture is loaded when it comes near.</summary>
    public static FixedAttribute LazyLoading { get; } = new("loading=\"lazy\"", 36);

    /// <summary>The details are open at first.</summary>
    public static FixedAttribute Open { get; } = new("open=\"\"", 37);

    /// <summary>The box can be reached and scrolled with the keyboard.</summary>
    public static FixedAttribute TabStop { get; } = new("tabindex=\"0\"", 38);

    /// <summary>The keyboard passes it by: the same link stands beside it in words.</summary>
    public static FixedAttribute NoTabStop { get; } = new("tabindex=\"-1\"", 38);

    /// <summary>The link leads to the page that it stands on.</summary>
    public static FixedAttribute CurrentPage { get; } = new("aria-current=\"page\"", 41);

    /// <summary>The page is UTF-8.</summary>
    public static FixedAttribute Utf8 { get; } = new("charset=\"utf-8\"", 39);

    /// <summary>The page fits the width of the screen.</summary>
    public static FixedAttribute Viewport { get; } = new("name=\"viewport\" content=\"width=device-width, initial-scale=1\"", 40);

    /// <summary>The page is ready for light and dark surroundings.</summary>
    public static FixedAttribute ColorScheme { get; } = new("name=\"color-scheme\" content=\"light dark\"", 40);

    /// <summary>The page loads nothing but the style sheet, the script and the pictures that lie beside it, and holds no style or script
    /// itself.</summary>
    public static FixedAttribute ContentPolicy { get; } =
        new(
            "http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src 'self'; style-src 'self'; script-src 'self'\"",
            40
        );

    /// <summary>Links tell their target nothing about this page.</summary>
    public static FixedAttribute NoReferrer { get; } = new("name=\"referrer\" content=\"no-referrer\"", 40);

    /// <summary>The bytes put into the start tag.</summary>
    internal byte[] Start { get; }

    /// <summary>One bit for each attribute name, so that none is given twice.</summary>
    internal ulong Bit { get; }
}
