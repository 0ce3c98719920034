using System.Text.Json;
using Ohmstead.Assessment.Changes;
using Ohmstead.Electronics;
using Ohmstead.Records.Entries;

namespace Ohmstead.Output.Changes;

/// <summary>What a repository tells of a board, as one JSON document for programs: all of it, of whatever place.</summary>
internal static class HistoryJson
{
    /// <summary>Writes the document.</summary>
    /// <param name="target">Where.</param>
    /// <param name="history">The history.</param>
    /// <param name="path">The path of its record.</param>
    public static void Write(TextWriter target, CommitHistory history, string path)
    {
        target.Write(JsonText.Document(isOneLine: false, json =>
            {
                json.WriteString("problem", (string?)null);
                json.WriteString("board", history.Number);
                json.WriteString("path", path);
                Commit(json, "begins", history.Begins);
                json.WriteStartArray("steps");
                foreach (var step in history.Steps)
                {
                    json.WriteStartObject();
                    Commit(json, "commit", step.Commit);
                    json.WriteString("told", HistoryLines.Told(step.Changes, null));
                    json.WritePropertyName("changes");
                    ChangesJson.Board(json, step.Changes);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                json.WriteStartArray("entries");
                foreach (var origin in history.Entries)
                {
                    json.WriteStartObject();
                    json.WriteString("kind", EntryKinds.Words(origin.Entry.Kind));
                    json.WriteString("of", origin.Entry.Of);
                    json.WriteString("day", origin.Entry.Day);
                    ChangesJson.Entry(json, "stands", path, origin.Entry);
                    Commit(json, "first", origin.First);
                    Commit(json, "since", origin.Since);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
            }));
    }

    private static void Commit(Utf8JsonWriter json, string name, CommitNote? commit)
    {
        if (commit is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("commit", commit.Id);
        json.WriteString("on", IsoDate.Text(commit.Day));
        json.WriteString("who", commit.Who);
        json.WriteString("subject", commit.Subject);
        json.WriteBoolean("merge", commit.IsMerge);
        json.WriteEndObject();
    }
}
