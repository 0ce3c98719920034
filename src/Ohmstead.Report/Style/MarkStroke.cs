namespace Ohmstead.Report.Style;

/// <summary>How a shape of a mark is drawn.</summary>
internal enum MarkStroke
{
    /// <summary>A line; a closed shape is hollow.</summary>
    Line,

    /// <summary>Filled.</summary>
    Full,

    /// <summary>A dotted line.</summary>
    Dotted,
}
