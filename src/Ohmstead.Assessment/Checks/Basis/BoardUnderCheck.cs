using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>What a check of a board sees.</summary>
/// <param name="Assessment">Everything computed about the board.</param>
/// <param name="Workshop">What boards refer to.</param>
/// <param name="Today">The day of this run.</param>
/// <param name="Pictures">The pictures of the collection.</param>
public sealed record BoardUnderCheck(BoardAssessment Assessment, Workshop Workshop, DateOnly Today, IPictures Pictures)
{
    /// <summary>What becomes of stories.</summary>
    public IStories Stories { get; init; } = NoStories.Instance;

    /// <summary>The board as written.</summary>
    public BoardFile Board => Assessment.Board;

    /// <summary>
    /// True when no visit stands after a later one and none lies in the future. Else a date is wrong, and what follows from the order of
    /// time is not worth telling before it is mended.
    /// </summary>
    public bool IsInOrder
    {
        get
        {
            var before = DateOnly.MinValue;
            foreach (var visit in Board.Bench)
            {
                if (visit.Date.Value < before || visit.Date.Value > Today)
                {
                    return false;
                }

                before = visit.Date.Value;
            }

            return true;
        }
    }

    /// <summary>All pairs of readings that contradict each other; the check tells them, and the obligations ask for an answer.</summary>
    internal ImmutableArray<ContradictingReadings> Contradicting { get; } = [.. ContradictingReadings.Find(Assessment)];

    /// <summary>True when every file that limits and uncertainties come from is there and was read in full: its design, the stock, the
    /// instruments, the decision rule.</summary>
    public bool HasAllThatItIsJudgedBy => IsDesignThere && IsAllReadInFull && AreNamesThere;

    private bool IsDesignThere => Board.Design is null || Assessment.Design is not null;

    private bool IsAllReadInFull =>
        Workshop.FilesWithErrors.Count == 0
        || !new[] { Workshop.Collection.Path, Workshop.StockFile?.Path, Workshop.InstrumentsFile?.Path, Assessment.Design?.Path }.Any(
            path => path is not null && Workshop.FilesWithErrors.Contains(path)
        );

    // A file that is not there at all says nothing of the lot or the instrument that is named.
    private bool AreNamesThere =>
        (Workshop.StockFile is not null || !Board.Bench.Any(visit => visit.Readings.Any(reading => reading.Lot is not null)))
        && (
            Workshop.InstrumentsFile is not null
            || !Board.Bench.Any(visit => visit.Instrument is not null || visit.Readings.Any(reading => reading.Instrument is not null))
        );

    /// <summary>Where a lot stands in the stock, as a place that a finding on a board can speak of.</summary>
    public ImmutableArray<RelatedPlace> InStock(Lot? lot) =>
        lot is not null && Workshop.StockFile is { } stock ? [new RelatedPlace(lot.Id.Spot.In(stock.Path), "the lot in the stock")] : [];

    /// <summary>A finding of a check at a place of the board's file.</summary>
    public Finding Finding(CheckDescription check, Spot spot, string message, string? nextStep) =>
        new(check.Name, check.Severity, spot.In(Board.Path), message, nextStep);

    /// <summary>Whether a name may be that of a part which is in a list but could not be read, or of a design that could not.</summary>
    public bool MayBeUnreadPart(string name) =>
        Board.UnreadParts.MayHold(name) || (Assessment.Design?.UnreadParts.MayHold(name) ?? Board.Design is not null);

    /// <summary>Whether a name may be that of a test point which is in a list but could not be read, or of a design that could
    /// not.</summary>
    public bool MayBeUnreadPoint(string name) =>
        Board.UnreadPoints.MayHold(name) || (Assessment.Design?.UnreadPoints.MayHold(name) ?? Board.Design is not null);

    /// <summary>What was fitted and sits there still, each with the reasons for and against. What was replaced again asks for nothing any
    /// more.</summary>
    public IEnumerable<Replacement> Replacements => Assessment.Replacements.Where(replacement => replacement.IsThere);
}

/// <summary>Which pictures there are; the file system stays outside the checks.</summary>
public interface IPictures
{
    /// <summary>What stands at a path below the root of the collection.</summary>
    PictureState At(string path);

    /// <summary>The names of the files that lie in the folder of a path below the root, in ordinal order.</summary>
    IEnumerable<string> NamesInFolder(string path);

    /// <summary>Why a picture that is there cannot be shown, and what to do; null when nothing speaks against it.</summary>
    PictureFault? Fault(string path);
}

/// <summary>Why a picture cannot be shown.</summary>
/// <param name="Message">What was found and what was expected, on one line.</param>
/// <param name="NextStep">What to do.</param>
public sealed record PictureFault(string Message, string NextStep);

/// <summary>What stands where a record says a picture is.</summary>
public enum PictureState
{
    /// <summary>A picture.</summary>
    Present,

    /// <summary>Nothing.</summary>
    Missing,

    /// <summary>The path leads out of the collection.</summary>
    Outside,

    /// <summary>The path holds a character that an address or another system takes for something else.</summary>
    NotAddressable,

    /// <summary>Something that is no picture.</summary>
    NoPicture,
}
