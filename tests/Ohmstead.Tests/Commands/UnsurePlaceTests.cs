using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>Whether a name is a part of a board or another place on it is said by the design. Where that was not read nobody guesses: a
/// decision about the place BR1 is not one about the part BR1.</summary>
public sealed class UnsurePlaceTests
{
    private const string Board = "boards/SP-0007.md";
    private const string Design = "designs/teleprinter-line.md";

    public static TheoryData<string> Entries { get; } = ["decide|BR1|watch|plates clean", "work|cleaned|BR1|--with|isopropanol"];

    [Theory]
    [MemberData(nameof(Entries))]
    public void Without_the_design_nothing_is_entered_at_what_may_be_a_part(string entry)
    {
        using var copy = CollectionCopy.Make();
        var was = copy.Read(Board);
        File.Delete(copy.At(Design));
        var run = Enter(copy, entry);
        Assert.Equal((1, was), (run.Exit, copy.Read(Board)));
        Assert.Contains(
            "whether 'BR1' is a part of SP-0007 is not known: its design 'teleprinter-line' was not read; nothing was written, and "
                + "ohmstead check tells why\n",
            run.Error,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [MemberData(nameof(Entries))]
    public void A_design_that_was_cut_off_in_the_middle_is_as_good_as_none(string entry)
    {
        using var copy = CollectionCopy.Make();
        var was = copy.Read(Board);
        copy.Write(Design, copy.Read(Design)[..200]);
        Assert.Equal((1, was), (Enter(copy, entry).Exit, copy.Read(Board)));
    }

    [Theory]
    [MemberData(nameof(Entries))]
    public void With_the_design_it_is_the_part(string entry)
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Enter(copy, entry).Exit);
        Assert.Contains("{ part: BR1, ", copy.Read(Board), StringComparison.Ordinal);
    }

    private static Run Enter(CollectionCopy copy, string entry)
    {
        var words = entry.Split('|');
        return Run.Of([words[0], "SP-0007", .. words[1..], "--in", copy.Root, "--as-of", "2026-11-25"]);
    }
}
