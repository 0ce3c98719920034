using System.Collections.Frozen;
using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Obligations.Basis;

/// <summary>For each check what its findings do to the state of the board they are about. An error is never merely told.</summary>
public static class CheckEffects
{
    /// <summary>Each check, its effect, and why, in order of name; then what could not be read.</summary>
    public static IReadOnlyList<(string Check, CheckEffect Effect, string Why)> All { get; } =
    [
        .. CheckCatalogue.Descriptions.Select(check => (check.Name, check.Effect, check.Because)),
        .. TextChecks
            .All.Concat(RecordChecks.All)
            .Where(check => check != RecordChecks.CurlyQuotes)
            .Select(check => (check, CheckEffect.HoldsBackAsError, "what stands there could not be read")),
        (RecordChecks.CurlyQuotes, CheckEffect.Told, "the text was read, with its quotes"),
    ];

    private static readonly FrozenDictionary<string, CheckEffect> ByName = All.ToFrozenDictionary(
        row => row.Check,
        row => row.Effect,
        StringComparer.Ordinal
    );

    /// <summary>The effect of a check. One that is not in the list holds back: a test finds it, and nobody is hurt until then.</summary>
    public static CheckEffect For(string check) => ByName.TryGetValue(check, out var effect) ? effect : CheckEffect.HoldsBack;

    /// <summary>What a finding of a check does to the state of the board, and why, in one line; null for what is found before there is a
    /// board.</summary>
    public static string? Told(string check)
    {
        foreach (var (name, effect, why) in All)
        {
            if (name == check)
            {
                return $"{Words(effect)}: {why}";
            }
        }

        return null;
    }

    /// <summary>An effect in words.</summary>
    public static string Words(CheckEffect effect) =>
        effect switch
        {
            CheckEffect.HoldsBack => "it holds the board back from fit to run",
            CheckEffect.HoldsBackAsError => "as an error it holds the board back from fit to run, as a warning it is told",
            CheckEffect.HoldsBackWhileItCounts =>
                "it holds the board back from fit to run while what it speaks of counts for something that sits there",
            CheckEffect.SaidElsewhere => "the finding is told, and the state follows from the evidence",
            CheckEffect.Told => "none, it is told",
        };

    /// <summary>Whether a finding holds the board that it is about back by itself.</summary>
    public static bool HoldsBack(Finding finding) =>
        For(finding.Check) switch
        {
            CheckEffect.HoldsBack or CheckEffect.HoldsBackWhileItCounts => true,
            CheckEffect.HoldsBackAsError => finding.Severity == Severity.Error,
            CheckEffect.SaidElsewhere or CheckEffect.Told => false,
        };
}
