using CsCheck;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Tests.Reading;

/// <summary>Places in lines with characters of two units, however long: counted from marks on the way and not from the beginning of the
/// line.</summary>
public sealed class SurrogateCountTests
{
    private static readonly Gen<string> Lines = Gen.OneOf(
            Gen.Const("🔋"),
            Gen.Const("a"),
            Gen.Const("Ω\n"),
            Gen.Const(new string('x', 1_000)),
            Gen.Const(string.Concat(Enumerable.Repeat("🔋", 600)))
        )
        .Array[1, 12]
        .Select(string.Concat);

    [Fact]
    public void A_column_is_the_number_of_code_points_before_it() =>
        Lines.Sample(text =>
        {
            var source = new SourceText("boards/a.md", text + "🔋");
            foreach (var at in Starts(source.Text))
            {
                var start = source.Text.AsSpan(0, at).LastIndexOf('\n') + 1;
                Assert.Equal(source.Text[start..at].EnumerateRunes().Count() + 1, source.SpotAt(at).Column);
                Assert.Equal(at, source.OffsetOf(source.SpotAt(at)));
            }
        });

    [Fact]
    public void The_end_of_a_spot_is_behind_all_its_characters()
    {
        var source = new SourceText("boards/a.md", string.Concat(Enumerable.Repeat("a🔋", 3_000)));
        Assert.Equal(4_500, source.EndOf(new Spot(1, 1, 3_000)));
        Assert.Equal(source.Text.Length, source.EndOf(new Spot(1, 1, 60_000)));
        Assert.Equal(3_072, source.OffsetOf(new Spot(1, 2_049)));
    }

    // A place in the middle of a character is none.
    private static IEnumerable<int> Starts(string text) =>
        Enumerable
            .Range(0, text.Length)
            .Where(at => !char.IsLowSurrogate(text[at]) && (at % 7 == 0 || char.IsHighSurrogate(text[at])))
            .Take(400);
}
