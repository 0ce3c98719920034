using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;

namespace Ohmstead.Assessment.Tests.Support;

/// <summary>A board and what it must show of one kind before it may be switched on: worked examples of a rule of obligations in few
/// words.</summary>
internal sealed class ObligedBoard
{
    private const string Path = "boards/SP-0001.md";

    private readonly string kind;
    private readonly List<CaseBlock> blocks;

    /// <summary>Judges a board.</summary>
    /// <param name="kind">The kind of obligation that is asked about.</param>
    /// <param name="record">The front matter after the title.</param>
    /// <param name="stock">The drawer.</param>
    /// <param name="design">The design tide-logger, which the record names, after its title.</param>
    /// <param name="instruments">The instruments.</param>
    /// <param name="isReadable">False where something that cannot be read is the point of the example.</param>
    internal ObligedBoard(
        string kind,
        string record,
        string? stock = null,
        string? design = null,
        string? instruments = null,
        bool isReadable = true
    )
    {
        this.kind = kind;
        blocks =
        [
            new("markdown", Path, 0, $"---\nboard: SP-0001\ntitle: Tide-gauge logger\n{record}\n---\n"),
            new("yaml", "instruments.yaml", 0, (instruments ?? Worked.Instruments) + "\n"),
        ];
        if (stock is not null)
        {
            blocks.Add(new("yaml", "stock.yaml", 0, stock + "\n"));
        }

        if (design is not null)
        {
            blocks.Add(
                new("markdown", "designs/tide-logger.md", 0, $"---\ndesign: tide-logger\ntitle: Tide-gauge logger\n{design}\n---\n")
            );
        }

        var collection = new SmallCollection(blocks);
        if (isReadable)
        {
            Assert.Empty(collection.ReadingFindings.Select(finding => $"{finding.Place}: {finding.Message}"));
        }

        Board = Assert.Single(collection.Boards);
    }

    internal JudgedBoard Board { get; }

    /// <summary>It is met: for what, by which words, on which day, and by which line of which file.</summary>
    internal ObligedBoard Met(string? at, string text, string by, string? day, string line, string path = Path)
    {
        var one = Only(at);
        Assert.True(one.Standing == ObligationStanding.Met, $"{one.Kind} at {at} is {one.Standing}: {one.Text}");
        Same(text, one.Text);
        Assert.NotNull(one.MetBy);
        Same(by, one.MetBy.Words);
        Assert.Equal(
            (day, path),
            (one.MetBy.Day?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), one.MetBy.Path)
        );
        Assert.Equal(line, blocks.Single(block => block.Path == path).Lines[one.MetBy.Spot.Line - 1].Trim().TrimStart('-').TrimStart());
        Assert.Empty(one.NextStep);
        return this;
    }

    /// <summary>It is open: the state that it gives, why, and what to do.</summary>
    internal ObligedBoard Open(string? at, BoardState state, string text, string next)
    {
        var one = Only(at);
        Assert.True(one.Standing == ObligationStanding.Open, $"{one.Kind} at {at} is {one.Standing}: {one.Text}, by {one.MetBy}");
        Same(text, one.Text);
        Same(next, one.NextStep);
        Assert.Equal(state, one.State);
        Assert.Null(one.MetBy);
        Assert.NotEqual(BoardState.FitToRun, Board.State);
        return this;
    }

    /// <summary>It does not apply, for this reason.</summary>
    internal ObligedBoard DoesNotApply(string? at, string because)
    {
        var one = Only(at);
        Assert.True(one.Standing == ObligationStanding.DoesNotApply, $"{one.Kind} at {at} is {one.Standing}: {one.Text}");
        Same(because, one.Text);
        Assert.Null(one.MetBy);
        return this;
    }

    /// <summary>The record creates none of this kind there.</summary>
    internal ObligedBoard AsksNothing(string? at)
    {
        Assert.Empty(Board.Obligations.Where(one => one.Kind == kind && one.At == at).Select(one => one.Text.Text));
        return this;
    }

    /// <summary>This is among what is open there.</summary>
    internal void Told(string? at, string text, string next) =>
        Assert.Contains(
            Board
                .Obligations.Where(one => one.Kind == kind && one.At == at && one.Standing == ObligationStanding.Open)
                .Select(one => (one.Text.Text, one.NextStep)),
            told => told == (text, next)
        );

    /// <summary>Whether anything of this kind is open there.</summary>
    internal bool IsOpen(string? at) =>
        Board.Obligations.Any(one => one.Kind == kind && one.At == at && one.Standing == ObligationStanding.Open);

    private Obligation Only(string? at)
    {
        var here = Board.Obligations.Where(one => one.Kind == kind && one.At == at).ToArray();
        Assert.True(
            here.Length == 1,
            $"{here.Length} of {kind} at {at ?? "the board"} among: "
                + $"{string.Join("; ", Board.Obligations.Select(one => $"{one.Kind} {one.At} {one.Standing}: {one.Text}"))}"
        );
        return here[0];
    }

    // Words that end with an ellipsis are the beginning of what is told.
    private static void Same(string expected, string told)
    {
        if (expected.EndsWith('…'))
        {
            Assert.StartsWith(expected[..^1], told, StringComparison.Ordinal);
        }
        else
        {
            Assert.Equal(expected, told);
        }
    }
}
