using System.Text;
using Ohmstead.Records.Editing.Layout;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Running;

namespace Ohmstead.Writing;

/// <summary>Makes the tidy text of one file: its verdicts, where they are asked for, and its layout.</summary>
/// <param name="reader">Reads the text.</param>
/// <param name="verdicts">Sets verdicts, or null where they are left alone.</param>
internal sealed class TidyText(INodeReader reader, VerdictWriter? verdicts)
{
    /// <summary>The tidy text, or why there is none. Nothing is written.</summary>
    public TidyResult Tidy(string path, RecordKind kind, string text)
    {
        var reading = reader.Read(path, Encoding.UTF8.GetBytes(text), kind.Form, ReadingLimits.Usual);
        if (kind.Findings(path, reading).FirstOrDefault(finding => finding.Severity == Severity.Error) is { } wrong)
        {
            return TidyResult.Refused(ExitCode.Findings, $"{wrong.Place}: {wrong.Message}; the file is left as it is", wrong.NextStep);
        }

        var (judged, changes, refusal) = kind.IsBoard && verdicts is not null ? verdicts.Set(path, text, reading) : (text, [], null);
        if (refusal is not null)
        {
            return TidyResult.Refused(ExitCode.Findings, $"{path}: {refusal.Message}", refusal.NextStep);
        }

        var laid = RecordLayout.Compute(path, judged, kind.Form, reader);
        return laid.State switch
        {
            LayoutState.Tidy or LayoutState.Changed => new(laid.Text, changes, ExitCode.Clean, null, null),
            LayoutState.NotRead => TidyResult.Refused(
                ExitCode.Findings,
                $"{path}: this file holds what cannot be read; it is left as it is",
                "run check, which says where"
            ),
            LayoutState.NotLaidOut => TidyResult.Refused(ExitCode.Findings, $"{path}: {laid.Refusal!.Message}", laid.Refusal.NextStep),
            _ => TidyResult.Refused(ExitCode.Bug, $"{path}: {laid.Refusal!.Message}", laid.Refusal.NextStep),
        };
    }
}

/// <summary>A file made tidy, or the reason why it stays as it is.</summary>
/// <param name="Text">The tidy text; null where there is none.</param>
/// <param name="Changes">What was changed beside the layout, one line each.</param>
/// <param name="Exit">How a run with this file ends.</param>
/// <param name="Problem">Why there is no text, or null.</param>
/// <param name="NextStep">What a person does instead, or null.</param>
internal sealed record TidyResult(string? Text, IReadOnlyList<string> Changes, int Exit, string? Problem, string? NextStep)
{
    public static TidyResult Refused(int exit, string problem, string? nextStep) => new(null, [], exit, problem, nextStep);
}
