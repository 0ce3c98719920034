using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Synthetic;
using Ohmstead.Synthetic.Parts;

namespace Ohmstead.Assessment.Tests.Verdicts;

/// <summary>Synthetic collections hold as many faults as they are meant to: a part invented as sound is judged as sound.</summary>
public sealed class SyntheticPartTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void A_part_invented_as_sound_is_not_outside_its_limits(int number)
    {
        var random = SeededRandom.For(1, 0, number);
        var parts = PartsList.Invent(random);
        var readings = parts.Select(part => PartReadings.AsFound(part, PartCondition.Sound, random)).OfType<object>();
        var board = Worked.Board(
            $"parts:\n{Lines("  ", parts.Select(part => part.Line))}bench:\n  - date: 2026-03-14\n    "
                + $"readings:\n{Lines("      ", readings)}"
        );
        Assert.NotEmpty(board.Readings);
        Assert.Empty(
            board
                .Readings.SelectMany(reading => reading.Verdicts)
                .Where(verdict => verdict.Outcome == VerdictOutcome.Outside)
                .Select(verdict => verdict.Why)
        );
    }

    private static string Lines(string indent, IEnumerable<object> items) => string.Concat(items.Select(item => $"{indent}- {item}\n"));
}
