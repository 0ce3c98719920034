using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.History;

/// <summary>How an obligation stands.</summary>
public enum ObligationStanding
{
    /// <summary>Nothing in the record meets it yet: the board is not fit to run.</summary>
    Open,

    /// <summary>Named evidence meets it.</summary>
    Met,

    /// <summary>It does not apply, and the record tells why.</summary>
    DoesNotApply,
}

/// <summary>Standings as they are told.</summary>
public static class ObligationStandings
{
    /// <summary>All of them, what stands open first.</summary>
    public static IReadOnlyList<ObligationStanding> All { get; } =
    [ObligationStanding.Open, ObligationStanding.Met, ObligationStanding.DoesNotApply];

    /// <summary>The standing in words.</summary>
    public static string Words(ObligationStanding standing) =>
        standing switch
        {
            ObligationStanding.Open => "open",
            ObligationStanding.Met => "met",
            ObligationStanding.DoesNotApply => "does not apply",
        };
}

/// <summary>What sort of entry an evidence is.</summary>
public enum EvidenceKind
{
    /// <summary>What the record says of the board itself.</summary>
    Record,

    /// <summary>A reading, of the board or of a piece in the drawer.</summary>
    Reading,

    /// <summary>A proof.</summary>
    Proof,

    /// <summary>Work.</summary>
    Work,

    /// <summary>A decision with its reason.</summary>
    Decision,
}

/// <summary>What meets an obligation.</summary>
/// <param name="Words">What was done, read or decided, in a few words.</param>
/// <param name="Day">The day, or null where what counts has none.</param>
/// <param name="Spot">Where it is written.</param>
/// <param name="Path">The file.</param>
public sealed record Evidence(LazyText Words, DateOnly? Day, Spot Spot, string Path)
{
    /// <summary>What sort of entry it is.</summary>
    public EvidenceKind Kind { get; init; }

    /// <summary>The verdict that is the whole of it, so that whoever tells the reading elsewhere need not tell it again; null where there
    /// is more to tell.</summary>
    public Verdict? Verdict { get; init; }
}

/// <summary>
/// Something that must be shown before a board may be switched on. What the record says creates it: a hazard, a finding, a piece of work, a
/// fitted part, a wash, a test point, an error. It is met by named evidence, open, or does not apply for a reason; a board is fit to run
/// when none is open.
/// </summary>
/// <param name="Kind">The kind of obligation, a name such as <c>way-round</c>.</param>
/// <param name="At">The place on the board, or null when the whole board is meant.</param>
/// <param name="Standing">How it stands.</param>
/// <param name="Text">Why it is open, what it asks for where it is met, or why it does not apply: one line.</param>
public sealed record Obligation(string Kind, string? At, ObligationStanding Standing, LazyText Text)
{
    /// <summary>The state that it alone would give the board while it is open.</summary>
    public BoardState State { get; private init; }

    /// <summary>What to do while it is open; empty otherwise.</summary>
    public string NextStep { get; private init; } = string.Empty;

    /// <summary>What to do while it is open, as one reads it on a list of many boards: the thing by its name instead of "it". Empty where
    /// nothing is to be done.</summary>
    public string Act { get; private init; } = string.Empty;

    /// <summary>True when nothing but another part at its place will meet it: the part is needed.</summary>
    public bool NeedsPart { get; init; }

    /// <summary>What meets it; null while nothing does.</summary>
    public Evidence? MetBy { get; private init; }

    /// <summary>What it asks for and what meets it, in one line; why it is open or does not apply otherwise. A proof names its point
    /// itself.</summary>
    public string Shown =>
        MetBy is not { } by ? Text
        : by.Kind == EvidenceKind.Proof && At is { } at && by.Words.Text.StartsWith(at, StringComparison.Ordinal) ? by.Words
        : $"{Text}: {by.Words}";

    /// <summary>An obligation that nothing meets yet.</summary>
    /// <param name="kind">The kind of obligation.</param>
    /// <param name="state">The state that it gives.</param>
    /// <param name="at">The place, or null for the whole board.</param>
    /// <param name="text">Why it is open.</param>
    /// <param name="nextStep">What to do, beside the place.</param>
    /// <param name="act">The same with the thing by its name; null where the next step behind the name of the place says it.</param>
    public static Obligation Open(string kind, BoardState state, string? at, LazyText text, string nextStep, string? act = null) =>
        new(kind, at, ObligationStanding.Open, text)
        {
            State = state,
            NextStep = nextStep,
            Act = act ?? (at is null ? nextStep : $"{at}: {nextStep}"),
        };

    /// <summary>An obligation that is met.</summary>
    public static Obligation Met(string kind, string? at, LazyText asks, Evidence by) =>
        new(kind, at, ObligationStanding.Met, asks) { MetBy = by };

    /// <summary>An obligation that does not apply.</summary>
    public static Obligation DoesNotApply(string kind, string? at, LazyText because) =>
        new(kind, at, ObligationStanding.DoesNotApply, because);
}
