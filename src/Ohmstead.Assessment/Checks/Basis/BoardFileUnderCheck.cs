using System.Collections.Immutable;
using Ohmstead.Assessment.Markings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>A board as a record that lists parts and points.</summary>
/// <param name="board">The board.</param>
public sealed class BoardFileUnderCheck(BoardUnderCheck board) : FileUnderCheck(board.Board.Path)
{
    private DateWindow? window;

    /// <inheritdoc/>
    public override string Called => "this board";

    /// <inheritdoc/>
    public override Written<string> Id => board.Board.Id;

    /// <inheritdoc/>
    public override IEnumerable<PartInList> Parts =>
        board.Board.Parts.Select(static part => new PartInList(part.Ref, part.Ref.Value, part.Values));

    /// <inheritdoc/>
    public override ImmutableArray<TestPoint> Points => board.Board.Points;

    /// <inheritdoc/>
    public override DesignFile? Design => board.Assessment.Design;

    /// <inheritdoc/>
    public override IEnumerable<string> PartNames => board.Assessment.Places.Select(place => place.Part.Ref.Value);

    /// <inheritdoc/>
    public override IEnumerable<string> PointNames => board.Assessment.Points.Select(point => point.Name.Value);

    /// <inheritdoc/>
    public override Written<RoughDate>? Made => board.Board.Made;

    /// <inheritdoc/>
    public override (DateOnly Day, string Why)? HereBy =>
        DateWindow.OfBoard(board.Assessment, board.Today) is var here && here.Last <= board.Today
            ? (here.Last, here.Why)
            : (board.Today, DateWindow.Today(board.Today));

    /// <inheritdoc/>
    public override Duty? Duty => board.Board.Duty;

    /// <inheritdoc/>
    public override string Story => board.Board.Body;

    /// <inheritdoc/>
    public override int StoryLine => board.Board.BodyLine;

    /// <inheritdoc/>
    public override IEnumerable<Written<string>> Pictures =>
        board
            .Assessment.Visits.SelectMany(visit => visit.Photos)
            .Select(photo => photo.File)
            .Where(file => board.Pictures.At(file.Value) == PictureState.Present);

    /// <inheritdoc/>
    public override DateWindow? MadeWithin(PartInList part) =>
        // A renewed part is told by its lot, not by the list.
        board.Assessment.Place(part.Ref.Value)
            is { FittedBy: null }
            ? window ??= DateWindow.OfBoard(board.Assessment, board.Today)
            : null;

    /// <inheritdoc/>
    public override bool MayBeUnread(string name) => board.MayBeUnreadPart(name) || board.MayBeUnreadPoint(name);
}
