using Ohmstead.Assessment.Ahead;
using Ohmstead.Electronics;

namespace Ohmstead.Output;

/// <summary>What falls due, as one JSON document for programs.</summary>
internal static class JsonAhead
{
    /// <summary>Writes the document.</summary>
    public static void Write(TextWriter target, IReadOnlyList<DueItem> items, DateOnly today, DateOnly until)
    {
        target.Write(JsonText.Document(isOneLine: false, json =>
            {
                json.WriteString("from", IsoDate.Text(today));
                json.WriteString("until", IsoDate.Text(until));
                json.WriteStartArray("due");
                foreach (var item in items)
                {
                    json.WriteStartObject();
                    json.WriteString("kind", DueKinds.Words(item.Kind));
                    json.WriteString("first", IsoDate.Text(item.First));
                    json.WriteString("last", IsoDate.Text(item.Last));
                    json.WriteBoolean("overdue", item.IsOverdueOn(today));
                    json.WriteString("whom", item.Whom);
                    json.WriteString("part", item.Place);
                    json.WriteString("what", item.What);
                    json.WriteString("why", item.Why);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
            }));
    }
}
