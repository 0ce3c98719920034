using Ohmstead.Assessment.Changes;
using Ohmstead.Collections;
using Ohmstead.Comparing;
using Ohmstead.Records.Nodes;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>Whatever is edited, what is told is the difference between two whole judgements: looking only at what can differ loses
/// nothing.</summary>
public sealed class RandomEditTests(RandomEditTests.Demo demo) : IClassFixture<RandomEditTests.Demo>
{
    private static readonly DateOnly Today = new(2026, 11, 25);
    private static readonly RunOptions Options = new(Today, IsThorough: false, Workers: 1, ReadingLimits.Usual);

    public static TheoryData<int> Seeds { get; } = [.. Enumerable.Range(1, 200)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void What_is_told_is_what_two_whole_judgements_differ_in(int seed)
    {
        Assert.SkipUnless(TestExtent.IsAll || seed % 10 == 1, TestExtent.LeftOut);
        // One half after the other, each judged once as it was.
        var was = demo.Halves[seed % 2];
        using var now = was.Copy();
        var edits = new Edits(seed);
        edits.Make(now);
        var told = Compare(was.Root, now.Root, isWhole: false);

        Assert.Equal(ToldChanges.Lines(Compare(was.Root, now.Root, isWhole: true)), ToldChanges.Lines(told));
        var (before, after) = (was.Judged(Options), Judgement.Of(CollectionFolder.Open(now.Root), Options));
        Assert.Equal(before.DifferingStates(after), ToldChanges.States(told));
        Assert.Equal(before.DifferingLooks(after), ToldChanges.Boards(told, ChangeKind.LookAgain));
        Assert.Equal(before.DifferingFindings(after), ToldChanges.Findings(told));
        Assert.Equal(before.DifferingToBuy(after), ToldChanges.ToBuy(told));
        if (!edits.HasMoved)
        {
            Assert.Equal(before.DifferingVerdicts(after), ToldChanges.Boards(told, ChangeKind.Verdict));
        }

        // The way back says the same, with was and now in each other's place.
        Assert.Equal(ToldChanges.Mirrored(told), ToldChanges.Turned(Compare(now.Root, was.Root, isWhole: false)));
    }

    [Fact]
    public void A_state_and_itself_differ_in_nothing()
    {
        using var copy = CollectionCopy.Make();
        Assert.False(Compare(copy.Root, copy.Root, isWhole: false).IsAny);
        Assert.False(Compare(copy.Root, copy.Root, isWhole: true).IsAny);
    }

    private static CollectionChanges Compare(string was, string now, bool isWhole)
    {
        using var before = new ComparedSide("was", CollectionFolder.Open(was), null);
        using var after = new ComparedSide("now", CollectionFolder.Open(now), null);
        return new ChangesRun(before, after, Options, Today) { IsWhole = isWhole }.Run();
    }

    /// <summary>The demo as it was, in two halves: made once, for all edits.</summary>
    public sealed class Demo : IDisposable
    {
        internal IReadOnlyList<HalfOfTheDemo> Halves { get; } = [.. HalfOfTheDemo.Both.Select(boards => new HalfOfTheDemo(boards))];

        public void Dispose()
        {
            foreach (var half in Halves)
            {
                half.Dispose();
            }
        }
    }
}
