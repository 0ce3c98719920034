using Ohmstead.Report.Html;

namespace Ohmstead.Report.Labels;

/// <summary>The class names of a sheet of labels.</summary>
internal static class LabelClass
{
    /// <summary>A sheet.</summary>
    public static ClassName Sheet { get; } = new("sheet");

    /// <summary>A label.</summary>
    public static ClassName Label { get; } = new("label");

    /// <summary>A label without a code.</summary>
    public static ClassName Plain { get; } = new("plain");

    /// <summary>Its code.</summary>
    public static ClassName Code { get; } = new("code");

    /// <summary>Its words.</summary>
    public static ClassName Words { get; } = new("words");

    /// <summary>What it is of.</summary>
    public static ClassName Name { get; } = new("name");

    /// <summary>Smaller words.</summary>
    public static ClassName Fine { get; } = new("fine");

    /// <summary>What can hurt.</summary>
    public static ClassName Caution { get; } = new("caution");

    /// <summary>The number.</summary>
    public static ClassName Number { get; } = new("number");

    /// <summary>A long number, smaller.</summary>
    public static ClassName Small { get; } = new("small");

    /// <summary>What is told on the screen alone.</summary>
    public static ClassName Hint { get; } = new("hint");
}
