using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;
using YamlDotNet.Core;

namespace Ohmstead.Yaml;

/// <summary>The part of a file that is YAML.</summary>
/// <param name="Source">The whole file.</param>
/// <param name="Start">The offset at which the YAML begins.</param>
/// <param name="End">The offset behind it.</param>
/// <param name="Tabs">The tabs in its indentation.</param>
internal sealed record YamlSlice(SourceText Source, int Start, int End, IndentationTabs Tabs)
{
    /// <summary>The text of the whole file.</summary>
    internal string Text => Source.Text;

    /// <summary>The offset of one of the library's marks in the whole file.</summary>
    // The library counts characters right. Its line numbers are not used: it takes U+0085 and U+2028 for line ends.
    internal int Offset(Mark mark) => (int)Math.Min(Start + mark.Index, End);

    /// <summary>An error at a stretch of text.</summary>
    internal Finding Error(string check, int offset, int length, string message, string? nextStep) =>
        new(check, Severity.Error, Source.PlaceAt(offset, length), message, nextStep);

    /// <summary>An error at a spot.</summary>
    internal Finding Error(string check, Spot spot, string message, string? nextStep) =>
        new(check, Severity.Error, spot.In(Source.Path), message, nextStep);
}
