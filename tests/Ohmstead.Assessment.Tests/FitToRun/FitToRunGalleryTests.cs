using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.FitToRun;

/// <summary>
/// The gallery of boards that nobody may call fit to run, and of sound ones that look alike. It stands as Markdown beside this file, a
/// group a file.
/// Each refused board has one thing wrong, which its heading tells; all else about it is sound.
/// </summary>
public sealed class FitToRunGalleryTests
{
    private const int LeastRefused = 450;
    private const int LeastSound = 200;

    public static TheoryData<string, string> Refused { get; } = Named(isFit: false);

    public static TheoryData<string, string> Sound { get; } = Named(isFit: true);

    public static TheoryData<string, string> Each { get; } =
        new(GalleryBoard.All.Select(board => new TheoryDataRow<string, string>(board.Group, board.Why)));

    [Theory]
    [MemberData(nameof(Refused))]
    public void A_board_that_nobody_would_switch_on_is_not_fit_to_run(string group, string why)
    {
        var board = Find(group, why);
        var collection = new SmallCollection(board.Blocks);
        var state = StateOf(collection);
        Assert.True(state != BoardState.FitToRun, $"it is called fit to run although: {why}");
        if (board.State is { } expected)
        {
            Assert.True(
                expected == state,
                $"'{why}' is '{BoardStates.Words(state)}', expected '{BoardStates.Words(expected)}': {Reasons(collection)}"
            );
        }

        if (board.Because is { } place)
        {
            Assert.True(
                ReasonsOf(collection).Any(reason => reason.At == place),
                $"'{why}': no reason names {place}: {Reasons(collection)}"
            );
        }
    }

    [Theory]
    [MemberData(nameof(Sound))]
    public void A_board_that_was_mended_and_proved_with_care_is_fit_to_run(string group, string why)
    {
        var collection = new SmallCollection(Find(group, why).Blocks);
        Assert.True(
            StateOf(collection) == BoardState.FitToRun,
            $"'{why}' is '{BoardStates.Words(StateOf(collection))}': {Reasons(collection)}"
        );
    }

    // What a comment '# expect: quantity-unreadable' announces is the point of that board; nothing else may stop a record from being read.
    [Theory]
    [MemberData(nameof(Each))]
    public void A_record_of_the_gallery_can_be_read(string group, string why)
    {
        var board = Find(group, why);
        var expected = board
            .Blocks.SelectMany(block => block.Expected())
            .Select(one => $"{one.Path}:{one.Line} {one.Check}")
            .Order(StringComparer.Ordinal);
        var found = new SmallCollection(board.Blocks)
            .ReadingFindings.Select(finding => $"{finding.Place.Path}:{finding.Place.Line} {finding.Check}")
            .Order(StringComparer.Ordinal);
        Assert.Equal(expected, found);
    }

    [Fact]
    public void The_gallery_is_large_enough_on_both_sides()
    {
        Assert.True(GalleryBoard.All.Count(board => !board.IsFit) >= LeastRefused, "too few boards that are not fit to run");
        Assert.True(GalleryBoard.All.Count(board => board.IsFit) >= LeastSound, "too few sound boards");
    }

    [Fact]
    public void No_two_boards_of_the_gallery_have_one_name() =>
        Assert.Distinct(GalleryBoard.All.Select(board => board.Why), StringComparer.Ordinal);

    [Fact]
    public void Every_group_shows_boards_of_both_sorts() =>
        Assert.All(GalleryBoard.All.GroupBy(board => board.Group, StringComparer.Ordinal), group =>
        {
            Assert.Contains(group, board => board.IsFit);
            Assert.Contains(group, board => !board.IsFit);
        });

    [Fact]
    public void A_sound_board_needs_no_state_and_no_reason() =>
        Assert.All(GalleryBoard.All.Where(board => board.IsFit), board => Assert.True(board is { State: null, Because: null }, board.Why));

    // The one place at which the gallery asks for a state: that of the first board, where a collection has more.
    private static BoardState StateOf(SmallCollection collection) => collection.Boards[0].State;

    private static IEnumerable<StateReason> ReasonsOf(SmallCollection collection) => collection.Boards[0].Reasons;

    private static string Reasons(SmallCollection collection) =>
        string.Join("; ", ReasonsOf(collection).Select(reason => $"{reason.At ?? "the board"}: {reason.Text}"));

    private static GalleryBoard Find(string group, string why) => GalleryBoard.All.First(board => board.Group == group && board.Why == why);

    private static TheoryData<string, string> Named(bool isFit) =>
        new(
            GalleryBoard.All.Where(board => board.IsFit == isFit).Select(board => new TheoryDataRow<string, string>(board.Group, board.Why))
        );
}
