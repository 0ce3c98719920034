using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Ohmstead.Assessment.Changes;
using Ohmstead.Electronics;

namespace Ohmstead.Output.Changes;

/// <summary>What was judged, as a file that a later program reads.</summary>
internal static class KeptJson
{
    /// <summary>What stands near the beginning of each such file, and of no other.</summary>
    public static ReadOnlySpan<byte> Mark => "\"judgement\": true"u8;

    /// <summary>Writes it.</summary>
    public static byte[] Write(KeptJudgement judgement) => Encoding.UTF8.GetBytes(JsonText.Document(isOneLine: false, json =>
            {
                json.WriteBoolean("judgement", true);
                json.WriteString("program", judgement.Program);
                json.WriteString("on", IsoDate.Text(judgement.On));
                json.WriteStartObject("shared");
                foreach (var (path, content) in judgement.Shared)
                {
                    json.WriteString(path, content);
                }

                json.WriteEndObject();
                json.WriteStartArray("boards");
                foreach (var board in judgement.Boards)
                {
                    Board(json, board);
                }

                json.WriteEndArray();
            }));

    /// <summary>Reads it, or says why it is none.</summary>
    /// <param name="bytes">The file.</param>
    public static Outcome<KeptJudgement> Read(ReadOnlyMemory<byte> bytes)
    {
        try
        {
            using var document = JsonDocument.Parse(bytes);
            var root = document.RootElement;
            if (!root.TryGetProperty("judgement", out var mark) || mark.ValueKind != JsonValueKind.True)
            {
                return Outcome<KeptJudgement>.Refused("it is no kept judgement: ohmstead check --keep FILE writes one");
            }

            if (root.GetProperty("version").GetInt32() != 1)
            {
                return Outcome<KeptJudgement>.Refused("it was written by a later program than this one");
            }

            return Outcome<KeptJudgement>.From(
                new(
                    Text(root, "program"),
                    DateOnly.ParseExact(Text(root, "on"), "yyyy-MM-dd", CultureInfo.InvariantCulture),
                    Names(root.GetProperty("shared")),
                    [.. root.GetProperty("boards").EnumerateArray().Select(Board).DistinctBy(board => board.Path)]
                )
            );
        }
        catch (Exception problem)
            when (problem is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or ArgumentException)
        {
            return Outcome<KeptJudgement>.Refused("it cannot be read: write it anew with ohmstead check --keep FILE");
        }
    }

    private static void Board(Utf8JsonWriter json, KeptBoard board)
    {
        json.WriteStartObject();
        json.WriteString("board", board.Number);
        json.WriteString("path", board.Path);
        json.WriteString("content", board.Content);
        json.WriteString("state", board.State);
        json.WriteString("look_again", board.LookAgain);
        json.WriteStartArray("verdicts");
        foreach (var verdict in board.Verdicts)
        {
            json.WriteStartObject();
            json.WriteString("place", verdict.Place);
            json.WriteString("of", verdict.Of);
            json.WriteString("outcome", verdict.Outcome);
            json.WriteString("limit", verdict.Limit);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("findings");
        foreach (var finding in board.Findings)
        {
            json.WriteStringValue(finding);
        }

        json.WriteEndArray();
        json.WriteStartObject("photographs");
        foreach (var photograph in board.Photographs?.AsEnumerable() ?? [])
        {
            json.WriteString(photograph.Key, photograph.Value);
        }

        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static KeptBoard Board(JsonElement json) =>
        new(
            Text(json, "board"),
            Text(json, "path"),
            Text(json, "content"),
            Text(json, "state"),
            json.GetProperty("look_again").GetString(),
            [
                .. json.GetProperty("verdicts")
                    .EnumerateArray()
                    .Select(one => new KeptVerdict(
                        Text(one, "place"),
                        Text(one, "of"),
                        Text(one, "outcome"),
                        one.GetProperty("limit").GetString()
                    )),
            ],
            [.. json.GetProperty("findings").EnumerateArray().Select(one => one.GetString() ?? throw new FormatException())]
        )
        {
            // The first release did not keep them.
            Photographs = json.TryGetProperty("photographs", out var names) ? Names(names) : null,
        };

    private static ImmutableSortedDictionary<string, string> Names(JsonElement json) =>
        json.EnumerateObject()
            .DistinctBy(pair => pair.Name)
            .ToImmutableSortedDictionary(
                pair => pair.Name,
                pair => pair.Value.GetString() ?? throw new FormatException(),
                StringComparer.Ordinal
            );

    private static string Text(JsonElement json, string name) => json.GetProperty(name).GetString() ?? throw new FormatException();
}
