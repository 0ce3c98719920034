using System.Text.Encodings.Web;
using System.Text.Unicode;
using Ohmstead.Output;
using Ohmstead.Records.Shapes;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>The small forms of the files for programs.</summary>
internal static class DataForm
{
    /// <summary>What a web page or a terminal may mistake for something else is escaped: JSON says the same either way. The letters of
    /// units and the dots of a range stay readable.</summary>
    public static JavaScriptEncoder Escapes { get; } = JavaScriptEncoder.Create(Readable());

    /// <summary>Writes the head line of a CSV file.</summary>
    public static void CsvHead(PageBuffer lines, Shape row) => CsvRows.Append(lines, [.. row.Keys.Select(key => key.Name)]);

    /// <summary>A text as a JSON string, quotes included.</summary>
    public static string Quoted(string text) => $"\"{Escapes.Encode(text)}\"";

    private static TextEncoderSettings Readable()
    {
        var readable = new TextEncoderSettings(UnicodeRanges.BasicLatin, UnicodeRanges.Latin1Supplement, UnicodeRanges.GreekandCoptic);
        readable.AllowCharacter('…');
        return readable;
    }
}
