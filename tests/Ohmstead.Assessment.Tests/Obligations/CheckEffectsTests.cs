using System.Text.RegularExpressions;
using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>One list says for each check what it does to the state. It is walked here: against the checks there are, and along the cases of
/// each.</summary>
public sealed class CheckEffectsTests
{
    // Which obligation says it, where the list says that one does.
    private static readonly Dictionary<string, string> SaidBy = new(StringComparer.Ordinal)
    {
        ["lot-too-old"] = "fitted-part-formed",
        ["new-part-unmeasured"] = "fitted-part-measured",
        ["polarity-from-print-alone"] = "way-round",
        ["polarity-not-established"] = "way-round",
        ["power-before-dry"] = "wash-dried",
        ["readings-contradict"] = "readings-agree",
        ["replacement-doubtful"] = "fits-its-place",
        ["replacement-safety-class-lower"] = "fits-its-place",
        ["replacement-temperature-lower"] = "fits-its-place",
        ["replacement-voltage-lower"] = "fits-its-place",
        ["work-after-proof"] = "point-proved",
    };

    private static readonly IEnumerable<string> Checks = CheckCatalogue
        .Descriptions.Select(description => description.Name)
        .Concat(TextChecks.All)
        .Concat(RecordChecks.All);

    public static TheoryData<string, string> Holding { get; } = CasesOf(CheckEffect.HoldsBack);

    public static TheoryData<string, string> Elsewhere { get; } = CasesOf(CheckEffect.SaidElsewhere);

    [Fact]
    public void The_list_names_every_check_once_and_nothing_else() =>
        Assert.Equal(Checks.Order(StringComparer.Ordinal), CheckEffects.All.Select(row => row.Check).Order(StringComparer.Ordinal));

    [Fact]
    public void Each_says_why_in_one_line() => Assert.All(CheckEffects.All, row => MessageRules.Hold(row.Why));

    [Fact]
    public void No_error_is_merely_told() =>
        Assert.Empty(
            CheckCatalogue
                .Descriptions.Where(description =>
                    description.Severity == Severity.Error && CheckEffects.For(description.Name) == CheckEffect.Told
                )
                .Select(description => description.Name)
        );

    [Fact]
    public void A_check_that_the_list_forgot_holds_back() =>
        Assert.True(CheckEffects.HoldsBack(new("no-such-check", Severity.Note, new("boards/SP-0001.md", 1, 1), "a thing")));

    [Theory]
    [InlineData("photograph-missing", Severity.Error, true)]
    [InlineData("photograph-missing", Severity.Warning, false)]
    [InlineData("key-unknown", Severity.Error, true)]
    [InlineData("key-unknown", Severity.Warning, false)]
    [InlineData("fitted-part-fails", Severity.Warning, true)]
    [InlineData("life-passed", Severity.Warning, false)]
    [InlineData("proof-incomplete", Severity.Error, false)]
    public void What_holds_back_as_an_error_is_told_as_a_warning(string check, Severity severity, bool holdsBack) =>
        Assert.Equal(holdsBack, CheckEffects.HoldsBack(new(check, severity, new("boards/SP-0001.md", 1, 1), "a thing")));

    // The walk: whatever a case of a check finds is a reason of the board that it is about. What is found in a file that boards share is
    // about those that use it, so one that uses it is put beside the case.
    [Theory]
    [MemberData(nameof(Holding))]
    public void What_holds_back_is_a_reason_of_the_board_that_it_is_about(string file, string name)
    {
        var one = RecordCase.All.Single(candidate => candidate.File == file && candidate.Name == name);
        foreach (
            var expected in one
                .Blocks.SelectMany(block => block.Expected())
                .Where(expected => CheckEffects.For(expected.Check) == CheckEffect.HoldsBack)
        )
        {
            var line = one.Blocks.First(block => block.Path == expected.Path).LineWithoutMark(expected.Line);
            if (UserOf(one, expected, line) is not { } blocks)
            {
                continue;
            }

            var told = $"[{expected.Check}, {expected.Path} line {expected.Line}]";
            var boards = new SmallCollection(blocks).Boards;
            Assert.True(
                boards.Any(board =>
                    board.State != BoardState.FitToRun && board.Reasons.Any(reason => reason.Text.EndsWith(told, StringComparison.Ordinal))
                ),
                $"no board has {told} among its reasons: "
                    + $"{string.Join("; ", boards.SelectMany(board => board.Reasons).Select(reason => reason.Text))}"
            );
        }
    }

    [Theory]
    [MemberData(nameof(Elsewhere))]
    public void What_an_obligation_says_elsewhere_is_open_there(string file, string name)
    {
        var one = RecordCase.All.Single(candidate => candidate.File == file && candidate.Name == name);
        foreach (var expected in one.Blocks.SelectMany(block => block.Expected()).Where(expected => SaidBy.ContainsKey(expected.Check)))
        {
            var board = new SmallCollection(one.Blocks).Boards.Single(board => board.Board.Path == expected.Path);
            Assert.NotEqual(BoardState.FitToRun, board.State);
            var all = board.Obligations.Select(obligation => $"{obligation.Kind} {obligation.At} {obligation.Standing}");
            Assert.True(
                board.Obligations.Any(obligation =>
                    obligation.Kind == SaidBy[expected.Check] && obligation.Standing == ObligationStanding.Open
                ),
                $"{expected.Check} on line {expected.Line}: no open {SaidBy[expected.Check]} among " + string.Join("; ", all)
            );
        }
    }

    // The files of a case with a board that uses what the finding is about; null where nothing on a board can (an order of a belt).
    private static List<CaseBlock>? UserOf(RecordCase one, Expectation expected, string line)
    {
        var (lot, order, instrument) = (Named(line, "lot"), Named(line, "order"), Named(line, "id"));
        return expected.Path switch
        {
            _ when expected.Path.StartsWith("boards/", StringComparison.Ordinal) || expected.Check == "lot-overdrawn" => [.. one.Blocks],
            _ when expected.Path.StartsWith("designs/", StringComparison.Ordinal) => With(one, $"design: {DesignOf(one, expected.Path)}"),
            "stock.yaml" when order is null && lot is not null => With(
                one,
                $"parts:\n  - {{ ref: X1, kind: fuse }}\nbench:\n  - date: 2026-11-24\n    work:\n      - {{ part: X1, did: replaced, "
                    + $"lot: {lot} }}"
            ),
            "instruments.yaml" when instrument is not null => With(
                one,
                $"bench:\n  - date: 2026-11-24\n    instrument: {instrument}\n    proof:\n      - {{ point: lamp, result: pass }}"
            ),
            _ => null,
        };
    }

    private static List<CaseBlock> With(RecordCase one, string record) =>
        [.. one.Blocks, new("markdown", "boards/SP-0999.md", 0, $"---\nboard: SP-0999\ntitle: The user of it\n{record}\n---\n")];

    private static string DesignOf(RecordCase one, string path) =>
        one
            .Blocks.Single(block => block.Path == path)
            .Lines.Single(line => line.StartsWith("design: ", StringComparison.Ordinal))["design: ".Length..]
            .Split(' ')[0];

    private static string? Named(string line, string key) =>
        Regex.Match(line, $@"[{{ ]{key}: (?<name>[^,}} ]+)", RegexOptions.ExplicitCapture) is { Success: true } match
            ? match.Groups["name"].Value
            : null;

    private static TheoryData<string, string> CasesOf(CheckEffect effect) =>
        new(
            RecordCase
                .All.Where(one =>
                    one.Blocks.SelectMany(block => block.Expected()).Any(expected => CheckEffects.For(expected.Check) == effect)
                )
                .Select(one => new TheoryDataRow<string, string>(one.File, one.Name))
        );
}
