using System.Collections.Frozen;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Obligations.Basis;

/// <summary>What a finding of a check does to the state of a board.</summary>
public enum CheckEffect
{
    /// <summary>It holds the board back, whether it is an error or a warning.</summary>
    HoldsBack,

    /// <summary>It holds the board back as an error; as a warning it is told.</summary>
    HoldsBackAsError,

    /// <summary>It holds the board back while what it speaks of still counts for something that sits on the board.</summary>
    HoldsBackWhileItCounts,

    /// <summary>An obligation or a verdict of its own says it, with the evidence that would answer it.</summary>
    SaidElsewhere,

    /// <summary>It is told and holds nothing back.</summary>
    Told,
}

/// <summary>For each check what its findings do to the state of the board they are about: the one list of it. An error is never merely
/// told.</summary>
public static class CheckEffects
{
    /// <summary>Each check, its effect, and why.</summary>
    public static IReadOnlyList<(string Check, CheckEffect Effect, string Why)> All { get; } =
    [
        ("board-number-repeated", CheckEffect.HoldsBack, "which of the two boards a record is about is not known"),
        (
            "calibration-expired",
            CheckEffect.SaidElsewhere,
            "readings of an instrument long out of calibration are undecided, and count as such"
        ),
        ("correction-doubtful", CheckEffect.HoldsBack, "which of two entries says what was so is not known"),
        ("date-code-impossible", CheckEffect.Told, "a print says how old a part is, not whether it works"),
        ("date-in-future", CheckEffect.HoldsBack, "what has not happened proves nothing"),
        (
            "date-out-of-order",
            CheckEffect.HoldsBack,
            "what came before what is in doubt, and with it whether the proof is later than the work"
        ),
        ("decision-without-place", CheckEffect.HoldsBack, "what was decided about is not known"),
        ("design-unknown", CheckEffect.HoldsBack, "what the board must prove is not known"),
        ("drift-nears-limit", CheckEffect.Told, "an estimate of what will be, beside the readings that say what is"),
        ("duty-impossible", CheckEffect.Told, "how long a part lasts is an estimate; nothing is judged by it"),
        ("file-name-unusable", CheckEffect.Told, "nothing is judged by the name of a file"),
        ("fitted-part-fails", CheckEffect.HoldsBack, "what sits there was known to be bad when it was fitted"),
        ("incoming-far-from-marking", CheckEffect.HoldsBack, "the reading of the lot that sits there is in doubt"),
        (
            "incoming-incomplete",
            CheckEffect.Told,
            "a reading that counts for no lot leaves the obligation to have measured the very piece open"
        ),
        ("instrument-unknown", CheckEffect.HoldsBack, "how good a reading is is not known"),
        ("life-passed", CheckEffect.Told, "an estimate; the look that it asks for is told beside the state"),
        ("limits-reversed", CheckEffect.HoldsBack, "what the place needs is not known"),
        ("link-dropped", CheckEffect.Told, "nothing is judged by a link"),
        ("lot-overdrawn", CheckEffect.HoldsBack, "what sits in one of the places came from somewhere else"),
        ("lot-too-old", CheckEffect.SaidElsewhere, "the obligation to have formed it again"),
        ("lot-unknown", CheckEffect.HoldsBack, "what sits there is not known"),
        ("material-contradicts-kind", CheckEffect.HoldsBack, "what the part is is not known"),
        ("name-looks-alike", CheckEffect.HoldsBack, "which of the two a reading is of is not known"),
        ("name-repeated", CheckEffect.HoldsBack, "which of the two is meant is not known"),
        ("new-part-unmeasured", CheckEffect.SaidElsewhere, "the obligation to have measured the very piece"),
        ("order-unknown", CheckEffect.HoldsBack, "what the work waits for is not known"),
        ("part-unknown", CheckEffect.HoldsBack, "what was read, done or decided about is not known"),
        ("photograph-missing", CheckEffect.HoldsBackAsError, "the record names evidence that is not there"),
        ("photograph-unreadable", CheckEffect.Told, "a picture that cannot be shown; nothing is judged by it"),
        ("piece-in-two-places", CheckEffect.SaidElsewhere, "the obligation to have measured the very piece"),
        ("point-link-unknown", CheckEffect.HoldsBack, "what a point belongs to is not known"),
        ("point-unknown", CheckEffect.HoldsBack, "what was proved is not known"),
        ("polarity-contradicts-kind", CheckEffect.HoldsBack, "whether there is a wrong way round is not known"),
        ("polarity-from-print-alone", CheckEffect.SaidElsewhere, "the obligation to establish the way round"),
        ("polarity-not-established", CheckEffect.SaidElsewhere, "the obligation to establish the way round"),
        ("power-before-dry", CheckEffect.SaidElsewhere, "the obligation to prove the board once it is dry"),
        ("proof-incomplete", CheckEffect.SaidElsewhere, "the obligation to prove each point"),
        ("proof-without-limit", CheckEffect.Told, "the figure proves nothing, and what the point asks for is an obligation of its own"),
        ("quantity-contradicts-kind", CheckEffect.HoldsBack, "what the part is is not known"),
        ("reading-far-from-marking", CheckEffect.HoldsBackWhileItCounts, "the reading is in doubt"),
        ("reading-incomplete", CheckEffect.HoldsBack, "what was read is not known"),
        ("reading-of-empty-place", CheckEffect.Told, "the reading is judged against nothing and proves nothing"),
        ("reading-of-wrong-quantity", CheckEffect.HoldsBack, "what was read is not known"),
        ("readings-contradict", CheckEffect.SaidElsewhere, "the obligation to find out which of the two holds"),
        ("reference-repeated", CheckEffect.HoldsBack, "which of the two lines holds is not known"),
        ("replacement-doubtful", CheckEffect.SaidElsewhere, "the obligation that what was fitted fits its place"),
        ("replacement-safety-class-lower", CheckEffect.SaidElsewhere, "the obligation that what was fitted fits its place"),
        ("replacement-temperature-lower", CheckEffect.SaidElsewhere, "the obligation that what was fitted fits its place"),
        ("replacement-voltage-lower", CheckEffect.SaidElsewhere, "the obligation that what was fitted fits its place"),
        ("stock-date-in-future", CheckEffect.HoldsBack, "what has not happened proves nothing"),
        ("stock-date-out-of-order", CheckEffect.Told, "no board is judged by the day of an order"),
        (
            "stock-lot-unknown",
            CheckEffect.Told,
            "no board has a part of a lot that is not there; one that names such a lot is held back by that"
        ),
        ("stock-order-unknown", CheckEffect.Told, "no board is judged by the order that a lot came under"),
        ("taken-part-doubtful", CheckEffect.HoldsBack, "what sits in one of the two places is not known"),
        ("verdict-disagrees", CheckEffect.HoldsBack, "the record says two things about one reading"),
        (
            "whereabouts-contradict",
            CheckEffect.HoldsBack,
            "whether the board is here, and whether what was proved was proved on it, is not known"
        ),
        ("whereabouts-incomplete", CheckEffect.HoldsBack, "who has the board, and until when, is not known"),
        ("work-after-proof", CheckEffect.SaidElsewhere, "the obligation to prove each point after the last work"),
        ("work-without-place", CheckEffect.HoldsBack, "what was done to which part is not known"),
        .. TextChecks
            .All.Concat(RecordChecks.All)
            .Select(check => (check, CheckEffect.HoldsBackAsError, "what stands there could not be read")),
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
