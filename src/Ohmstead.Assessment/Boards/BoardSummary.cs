using System.Collections.Immutable;
using Ohmstead.Assessment.Families.Statistics;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Life;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>What is kept of a board after it was assessed, so that ten thousand of them need little memory.</summary>
/// <param name="Path">The file.</param>
/// <param name="Id">Its number, with the place where it is written.</param>
/// <param name="Title">What it is.</param>
/// <param name="Design">The name of its design, or null.</param>
/// <param name="State">Its state.</param>
/// <param name="Reasons">Why.</param>
public sealed record BoardSummary(
    string Path,
    Written<string> Id,
    string Title,
    string? Design,
    BoardState State,
    ImmutableArray<StateReason> Reasons
)
{
    /// <summary>Where it is and whose it is.</summary>
    public Whereabouts Whereabouts { get; init; } = Whereabouts.AsItCame;

    /// <summary>The numbers that it had before, with the places where they are written.</summary>
    public IReadOnlyList<Written<string>> Formerly { get; init; } = [];

    /// <summary>Open waits: for what, since when, under which order.</summary>
    public ImmutableArray<Wait> Waits { get; init; } = [];

    /// <summary>Parts that must be found: what each place needs.</summary>
    public ImmutableArray<PartNeed> Needs { get; init; } = [];

    /// <summary>Places where a person keeps a part that is outside its limit, with the reason.</summary>
    public IReadOnlyList<string> Overruled { get; init; } = [];

    /// <summary>How many readings of each outcome.</summary>
    public OutcomeCounts Readings { get; init; }

    /// <summary>What the readings say of what sits on it now.</summary>
    public HoldsNow Now { get; init; } = HoldsNow.Nothing;

    /// <summary>The last day of any entry.</summary>
    public DateOnly? LastSeen { get; init; }

    /// <summary>The day before which it is taken as told; null when it is judged in full.</summary>
    public DateOnly? ToldBefore { get; init; }

    /// <summary>The day of the next look.</summary>
    public DateOnly? LookAgain { get; init; }

    /// <summary>True when that day is past.</summary>
    public bool IsLookOverdue { get; init; }

    /// <summary>Since when it is; null when it is not.</summary>
    public DateOnly? OverdueSince => IsLookOverdue ? LookAgain : null;

    /// <summary>True when it is fit to run and nobody has looked since it was to be looked at again.</summary>
    public bool IsFitButOverdue => State == BoardState.FitToRun && IsLookOverdue;

    /// <summary>Where parts of known lots were fitted on this board, each with the name of its lot.</summary>
    public IReadOnlyList<(string Lot, LotFitting Fitting)> Fittings { get; init; } = [];

    /// <summary>What it took from other boards, and what left its places.</summary>
    public PartTransfers Transfers { get; init; } = PartTransfers.None;

    /// <summary>What its fittings ask of the lots that they came from, in order of time.</summary>
    public ImmutableArray<PieceClaim> Claims { get; init; } = [];

    /// <summary>Which instruments were used on which day, in order of time.</summary>
    public IReadOnlyList<InstrumentDay> InstrumentDays { get; init; } = [];

    /// <summary>Hazards that are still there.</summary>
    public ImmutableArray<AssessedHazard> Hazards { get; init; } = [];

    /// <summary>Places whose original part has gone, in order of the parts list.</summary>
    public IReadOnlyList<string> Renewed { get; init; } = [];

    /// <summary>Its parts by family, with what was seen of each that was measured.</summary>
    public IReadOnlyList<FamilyOnBoard> Families { get; init; } = [];

    /// <summary>When the lives of its wet electrolytics may be used up, where that can be estimated.</summary>
    public IReadOnlyList<LifeDates> Lives { get; init; } = [];

    /// <summary>The serial number, or null.</summary>
    public string? Serial { get; init; }

    /// <summary>The maker that its own record names, or null.</summary>
    public string? Maker { get; init; }

    /// <summary>The names of the parts in its own list, in order of that list.</summary>
    public IReadOnlyList<string> OwnParts { get; init; } = [];

    /// <summary>The revision, or null.</summary>
    public string? Revision { get; init; }

    /// <summary>What boards took of the lots in the drawer.</summary>
    public static LotUse UseOfLots(IEnumerable<BoardSummary> boards) => new(boards.SelectMany(board => board.Fittings));

    /// <summary>What is kept of a judged board.</summary>
    /// <param name="board">The board, judged.</param>
    /// <param name="forPages">False where nobody will ask for what only pages and lists tell, which is the larger part of what is
    /// kept.</param>
    public static BoardSummary From(JudgedBoard board, bool forPages = true)
    {
        var summary = new BoardSummary(
            board.Board.Path,
            board.Board.Id,
            board.Board.Title.Value,
            board.Board.Design?.Value,
            board.State,
            board.Reasons
        )
        {
            Whereabouts = board.Whereabouts,
            Formerly = [.. board.Board.Formerly.Select(former => former.Number)],
            Waits = board.OpenWaits,
            Readings = OutcomeCounts.Count(board.Readings),
            LastSeen = board.LastSeen,
            ToldBefore = board.ToldBefore,
            LookAgain = board.LookAgain,
            IsLookOverdue = board.IsLookOverdue,
            Fittings = [.. LotFitting.All(board)],
            Transfers = PartTransfers.Collect(board.Visits),
            Claims = board.Claims,
            Serial = board.Board.Serial?.Value,
            Maker = board.Board.Maker?.Value,
            Revision = board.Board.Revision?.Value,
        };
        return forPages ? summary.WithWhatPagesTell(board) : summary;
    }

    private BoardSummary WithWhatPagesTell(JudgedBoard board) =>
        this with
        {
            Needs = board.Needs,
            Now = HoldsNow.Of(board),
            Overruled = !board.IsWorkedOn
                ? []
                :
                [
                    .. board.Overruled.Select(place =>
                        $"{place.Part.Ref.Value}: {place.Decision!.What.Text}, {place.Decision.Because.Value}"
                    ),
                ],
            InstrumentDays = InstrumentDay.Collect(board.Visits),
            Hazards = [.. board.Hazards.Where(hazard => hazard.MadeSafe is null)],
            Renewed = [.. board.Places.Where(place => place.FittedBy is not null || place.IsEmpty).Select(place => place.Part.Ref.Value)],
            Families = BoardFamilies.Count(board),
            Lives = board.IsWorkedOn ? [.. board.Lives.Select(life => life.Dates).OfType<LifeDates>()] : [],
            // Thousands of boards name the same few hundred places.
            OwnParts = [.. board.Board.Parts.Select(part => string.Intern(part.Ref.Value))],
        };
}

/// <summary>How many readings of each outcome.</summary>
/// <param name="Inside">Inside their limits.</param>
/// <param name="Outside">Outside.</param>
/// <param name="Undecided">Too close to call.</param>
/// <param name="Others">Without a limit, or proving nothing.</param>
public readonly record struct OutcomeCounts(int Inside, int Outside, int Undecided, int Others)
{
    /// <summary>All of them.</summary>
    public int Total => Inside + Outside + Undecided + Others;

    /// <summary>Counts readings.</summary>
    public static OutcomeCounts Count(ImmutableArray<AssessedReading> readings)
    {
        var (inside, outside, undecided) = (0, 0, 0);
        foreach (var reading in readings)
        {
            switch (reading.Overall)
            {
                case VerdictOutcome.Inside:
                    inside++;
                    break;
                case VerdictOutcome.Outside:
                    outside++;
                    break;
                case VerdictOutcome.Undecided:
                    undecided++;
                    break;
            }
        }

        return new(inside, outside, undecided, readings.Length - inside - outside - undecided);
    }
}
