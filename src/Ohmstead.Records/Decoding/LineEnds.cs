using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Decoding;

/// <summary>How the lines of a file end.</summary>
public static class LineEnds
{
    /// <summary>Warns once, at the first line that ends in another way than the first line does.</summary>
    public static void AddTo(FindingList findings, SourceText source)
    {
        var text = source.Text.AsSpan();

        // Nearly every file has LF alone, and that is known without looking at each line.
        if (!text.Contains('\r'))
        {
            return;
        }

        var first = EndOf(source, 1);
        for (var line = 2; line < source.LineCount; line++)
        {
            var end = EndOf(source, line);
            if (end != first)
            {
                findings.Add(
                    new Finding(
                        TextChecks.MixedLineEnds,
                        Severity.Warning,
                        source.PlaceAt(source.LineEnd(line)),
                        $"this line ends with {end}, the first line with {first}; expected one kind in a file",
                        "let the editor convert the line ends of the file to one kind"
                    )
                );
                return;
            }
        }
    }

    private static string EndOf(SourceText source, int line)
    {
        var end = source.LineEnd(line);
        return source.Text.AsSpan(end) switch
        {
            ['\r', '\n', ..] => "CRLF",
            ['\r', ..] => "CR",
            _ => "LF",
        };
    }
}
