using System.Globalization;
using Ohmstead.Assessment.Years;
using Ohmstead.Electronics;

namespace Ohmstead.Output.Changes;

/// <summary>A collection through the years, as a table for people and as a document for programs.</summary>
internal static class YearsText
{
    /// <summary>Writes the table: what stands in a line was done since the line above it.</summary>
    public static void Write(TextWriter target, IReadOnlyList<PastPoint> points)
    {
        target.WriteLine("until       boards  fit to run  visits  readings  work");
        foreach (var point in points)
        {
            target.WriteLine(
                $"{IsoDate.Text(point.Day)}  {Right(point.Boards, 6)}  {Right(point.Fit, 10)}  {Right(point.Work.Visits, 6)}  "
                    + $"{Right(point.Work.Readings, 8)}  {Right(point.Work.Done, 4)}"
            );
        }
    }

    /// <summary>Writes the document.</summary>
    public static void WriteJson(TextWriter target, IReadOnlyList<PastPoint> points) =>
        target.Write(JsonText.Document(isOneLine: false, json =>
            {
                json.WriteString("problem", (string?)null);
                json.WriteStartArray("days");
                foreach (var point in points)
                {
                    json.WriteStartObject();
                    json.WriteString("until", IsoDate.Text(point.Day));
                    json.WriteNumber("boards", point.Boards);
                    json.WriteNumber("fit", point.Fit);
                    json.WriteNumber("visits", point.Work.Visits);
                    json.WriteNumber("readings", point.Work.Readings);
                    json.WriteNumber("work", point.Work.Done);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
            }));

    private static string Right(int count, int width) => count.ToString(CultureInfo.InvariantCulture).PadLeft(width);
}
