using Ohmstead.PartsLists;

namespace Ohmstead.Tests.PartsLists;

/// <summary>Grouped reference designators, as parts lists have them (common practice).</summary>
public sealed class ReferenceListTests
{
    [Theory]
    [InlineData("C1", "C1")]
    [InlineData("C1, C2, C5-C8", "C1 C2 C5 C6 C7 C8")]
    [InlineData("C1;C2 C3\tC4", "C1 C2 C3 C4")]
    [InlineData("C1,", "C1")]
    [InlineData("R9 - R11", "R9 R10 R11")]
    [InlineData("R9–R11", "R9 R10 R11")]
    [InlineData("R1,R9 … R11", "R1 R9 R10 R11")]
    [InlineData("R9..R11", "R9 R10 R11")]
    [InlineData("R08-R11", "R08 R09 R10 R11")]
    [InlineData("R1-R1", "R1")]
    [InlineData("U1-A", "U1-A")]
    [InlineData("+15V", "+15V")]
    public void A_group_is_taken_apart_in_the_order_written(string text, string references) =>
        Assert.Equal(references.Split(' '), ReferenceList.Read(text).References);

    [Theory]
    [InlineData("", "there is no reference")]
    [InlineData(" , ", "there is no reference")]
    [InlineData("C5-8", "'C5-8' can be the places C5 to C8, or one place of that name")]
    [InlineData("C5-R8", "'C5-R8' goes from one class letter to another")]
    [InlineData("C8-C5", "'C8-C5' does not go up from a first to a last reference, by 500 at most")]
    [InlineData("C1-C501", "'C1-C501' does not go up from a first to a last reference, by 500 at most")]
    [InlineData("C1-C99999999999999999999", "'C1-C99999999999999999999' does not go up from a first to a last reference, by 500 at most")]
    [InlineData("C1-", "'C1-' cannot be a reference: nothing follows its dash")]
    [InlineData("C1, -", "'-' cannot be a reference: nothing follows its dash")]
    [InlineData("C1/C2", "'C1/C2' cannot be a reference: it has a /")]
    public void What_can_be_meant_otherwise_is_refused(string text, string fault)
    {
        var read = ReferenceList.Read(text);
        if (text == "C1-C501")
        {
            Assert.Equal(500, ReferenceList.Read("C1-C500").References.Count);
        }

        Assert.Equal((fault, 0), (read.Fault, read.References.Count));
        Assert.NotNull(read.NextStep);
    }
}
