using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Collections;
using Ohmstead.Records.Findings;

namespace Ohmstead.Output;

/// <summary>Findings and states as one JSON document, for programs. All of them, in the same order as for people.</summary>
internal sealed class JsonFindings : IFindingsWriter
{
    /// <inheritdoc/>
    public void Write(TextWriter target, RunResult result, CollectionFolder folder, int exitCode) =>
        target.Write(Document(result.Boards, result.Findings, result.FilesRead, exitCode, null, isOneLine: false));

    /// <summary>The document of a run that did not come about, with the reason.</summary>
    public static string Problem(string problem, int exitCode, bool isOneLine) => Document([], [], 0, exitCode, problem, isOneLine);

    private static string Document(
        IReadOnlyList<BoardSummary> boards,
        ImmutableArray<Finding> findings,
        int files,
        int exitCode,
        string? problem,
        bool isOneLine
    ) => JsonText.Document(isOneLine, json =>
        {
            json.WriteNumber("exit", exitCode);
            json.WriteString("problem", problem);
            json.WriteNumber("files", files);
            json.WriteStartArray("boards");
            foreach (var board in boards)
            {
                json.WriteStartObject();
                json.WriteString("board", board.Id.Value);
                json.WriteString("path", board.Path);
                json.WriteString("state", BoardStates.Words(board.State));
                json.WriteBoolean("look_overdue", board.IsLookOverdue);
                json.WriteStartArray("reasons");
                foreach (var reason in board.Reasons)
                {
                    json.WriteStartObject();
                    json.WriteString("state", BoardStates.Words(reason.State));
                    json.WriteString("at", reason.At);
                    json.WriteString("text", reason.Text);
                    json.WriteString("next", reason.NextStep);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("findings");
            foreach (var finding in findings)
            {
                json.WriteStartObject();
                json.WriteString("check", finding.Check);
                json.WriteString(
                    "severity",
                    finding.Severity switch
                    {
                        Severity.Error => "error",
                        Severity.Warning => "warning",
                        _ => "note",
                    }
                );
                json.WriteString("path", finding.Place.Path);
                json.WriteNumber("line", finding.Place.Line);
                json.WriteNumber("column", finding.Place.Column);
                json.WriteNumber("end_column", finding.Place.Column + finding.Place.Length);
                json.WriteString("message", finding.Message);
                json.WriteString("next", finding.NextStep);
                json.WriteNumber("more", finding.More);
                json.WriteStartArray("related");
                foreach (var related in finding.Related)
                {
                    json.WriteStartObject();
                    json.WriteString("path", related.Place.Path);
                    json.WriteNumber("line", related.Place.Line);
                    json.WriteNumber("column", related.Place.Column);
                    json.WriteString("note", related.Note);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                json.WriteEndObject();
            }

            json.WriteEndArray();
        });
}
