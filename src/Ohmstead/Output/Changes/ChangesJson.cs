using System.Text.Json;
using Ohmstead.Assessment.Changes;
using Ohmstead.Electronics;
using Ohmstead.Records.Entries;

namespace Ohmstead.Output.Changes;

/// <summary>The two states that were compared, as they are told.</summary>
/// <param name="Was">The earlier one, a revision or a folder.</param>
/// <param name="WasOn">The day on which it was judged.</param>
/// <param name="Now">The later one.</param>
/// <param name="NowOn">The day on which it was judged.</param>
internal sealed record ComparedStates(string Was, DateOnly WasOn, string Now, DateOnly NowOn);

/// <summary>What differs, as one JSON document for programs: all of it.</summary>
internal static class ChangesJson
{
    /// <summary>Writes the document.</summary>
    public static void Write(TextWriter target, CollectionChanges changes, ComparedStates states)
    {
        target.Write(JsonText.Document(isOneLine: false, json =>
            {
                json.WriteString("problem", (string?)null);
                State(json, "was", states.Was, states.WasOn);
                State(json, "now", states.Now, states.NowOn);
                json.WriteNumber("same", changes.Same);
                json.WriteBoolean("buying_compared", changes.IsBuyingKnown);
                json.WriteStartArray("boards");
                foreach (var board in changes.Boards)
                {
                    Board(json, board);
                }

                json.WriteEndArray();
                json.WriteStartObject("shared");
                Changes(json, changes.Shared);
                Entries(json, changes.Entries);
                json.WriteEndObject();
            }));
    }

    private static void State(Utf8JsonWriter json, string name, string label, DateOnly day)
    {
        json.WriteStartObject(name);
        json.WriteString("state", label);
        json.WriteString("on", IsoDate.Text(day));
        json.WriteEndObject();
    }

    /// <summary>Writes what differs of one board, as an object.</summary>
    public static void Board(Utf8JsonWriter json, BoardChanges board)
    {
        json.WriteStartObject();
        json.WriteString("board", board.Number);
        json.WriteString("path_was", board.Was);
        json.WriteString("path", board.Now);
        json.WriteString("state", board.State);
        Changes(json, board.Changes);
        Entries(json, board.Entries);
        json.WriteEndObject();
    }

    private static void Changes(Utf8JsonWriter json, IEnumerable<Change> changes)
    {
        json.WriteStartArray("changes");
        foreach (var change in changes)
        {
            json.WriteStartObject();
            json.WriteString("kind", ChangeKinds.Words(change.Kind));
            json.WriteString("of", change.Of);
            json.WriteString("place", change.Place);
            json.WriteString("was", change.Was);
            json.WriteString("now", change.Now);
            json.WriteStartArray("because");
            foreach (var kind in change.Cause.Kinds)
            {
                json.WriteStringValue(InputKinds.Words(kind));
            }

            json.WriteEndArray();
            json.WriteStartArray("inputs");
            foreach (var input in change.Cause.Inputs)
            {
                json.WriteStringValue(ChangeLines.Entry(input));
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Entries(Utf8JsonWriter json, IEnumerable<InputDifference> entries)
    {
        json.WriteStartArray("entries");
        foreach (var input in entries)
        {
            var (was, now) = (input.Entry.Was, input.Entry.Now);
            json.WriteStartObject();
            json.WriteString("kind", EntryKinds.Words(input.Entry.Entry.Kind));
            json.WriteString("of", input.Entry.Entry.Of);
            json.WriteString("day", input.Entry.Entry.Day);
            json.WriteString(
                "status",
                input.Entry.Status switch
                {
                    EntryStatus.New => "new",
                    EntryStatus.Gone => "gone",
                    EntryStatus.Changed => "changed",
                }
            );
            Entry(json, "was", was is null ? null : input.Was, was);
            Entry(json, "now", now is null ? null : input.Now, now);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Writes an entry with its place and what it says, as a property.</summary>
    public static void Entry(Utf8JsonWriter json, string name, string? path, RecordEntry? entry)
    {
        if (entry is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("path", path);
        json.WriteNumber("line", entry.Spot.Line);
        json.WriteStartObject("says");
        foreach (var fact in entry.Facts)
        {
            json.WriteString(fact.Key, fact.Text);
        }

        json.WriteEndObject();
        json.WriteEndObject();
    }
}
