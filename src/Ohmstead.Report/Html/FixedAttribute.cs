namespace Ohmstead.Report.Html;

/// <summary>An attribute together with its value, where only a few values make sense.</summary>
public sealed class FixedAttribute
{
    private FixedAttribute(int bit, params (string Name, string Value)[] pairs)
    {
        Whole = [.. pairs.SelectMany(pair => AttributeText.Whole(pair.Name, pair.Value))];
        Bit = 1UL << bit;
    }

    /// <summary>The cell heads its column.</summary>
    public static FixedAttribute ScopeColumn { get; } = new(32, ("scope", "col"));

    /// <summary>The cell heads its row.</summary>
    public static FixedAttribute ScopeRow { get; } = new(32, ("scope", "row"));

    /// <summary>The cell heads the rows that follow.</summary>
    public static FixedAttribute ScopeRowGroup { get; } = new(32, ("scope", "rowgroup"));

    /// <summary>A drawing that is read as one picture.</summary>
    public static FixedAttribute RoleImage { get; } = new(33, ("role", "img"));

    /// <summary>A drawing of which the words beside it say everything, and that has no words itself: nothing to read out.</summary>
    public static FixedAttribute RoleNone { get; } = new(33, ("role", "none"));

    /// <summary>A part of the page to jump to.</summary>
    public static FixedAttribute RoleRegion { get; } = new(33, ("role", "region"));

    /// <summary>Nothing to read out: the words stand beside it.</summary>
    public static FixedAttribute AriaHidden { get; } = new(34, ("aria-hidden", "true"));

    /// <summary>The link leaves the pages and tells the target nothing.</summary>
    public static FixedAttribute Leaving { get; } = new(35, ("rel", "external noopener noreferrer"));

    /// <summary>The picture is loaded when it comes near.</summary>
    public static FixedAttribute LazyLoading { get; } = new(36, ("loading", "lazy"));

    /// <summary>The details are open at first.</summary>
    public static FixedAttribute Open { get; } = new(37, ("open", string.Empty));

    /// <summary>The box can be reached and scrolled with the keyboard.</summary>
    public static FixedAttribute TabStop { get; } = new(38, ("tabindex", "0"));

    /// <summary>The keyboard passes it by: the same link stands beside it in words.</summary>
    public static FixedAttribute NoTabStop { get; } = new(38, ("tabindex", "-1"));

    /// <summary>The link leads to the page that it stands on.</summary>
    public static FixedAttribute CurrentPage { get; } = new(41, ("aria-current", "page"));

    /// <summary>The page is UTF-8.</summary>
    public static FixedAttribute Utf8 { get; } = new(39, ("charset", "utf-8"));

    /// <summary>The page fits the width of the screen.</summary>
    public static FixedAttribute Viewport { get; } = new(40, ("name", "viewport"), ("content", "width=device-width, initial-scale=1"));

    /// <summary>The page is ready for light and dark surroundings.</summary>
    public static FixedAttribute ColorScheme { get; } = new(40, ("name", "color-scheme"), ("content", "light dark"));

    /// <summary>The page loads nothing but the style sheet, the script and the pictures that lie beside it, and holds no style or script
    /// itself.</summary>
    public static FixedAttribute ContentPolicy { get; } =
        new(
            40,
            ("http-equiv", "Content-Security-Policy"),
            ("content", "default-src 'none'; img-src 'self'; style-src 'self'; script-src 'self'")
        );

    /// <summary>Links tell their target nothing about this page.</summary>
    public static FixedAttribute NoReferrer { get; } = new(40, ("name", "referrer"), ("content", "no-referrer"));

    /// <summary>The bytes put into the start tag.</summary>
    internal byte[] Whole { get; }

    /// <summary>One bit for each attribute name, so that none is given twice.</summary>
    internal ulong Bit { get; }
}
