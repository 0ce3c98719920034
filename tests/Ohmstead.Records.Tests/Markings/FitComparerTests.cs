using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Tests.Markings;

/// <summary>
/// Two places are told the same when they are alike in all that may decide what fits. One property forgotten here would tell one place what
/// fits another.
/// </summary>
public sealed class FitComparerTests
{
    private static readonly Spot Here = new(7, 5, 9);
    private static readonly Spot Elsewhere = new(31, 44, 9);

    public static TheoryData<string> Properties => [.. typeof(IFitPart).GetProperties().Select(property => property.Name)];

    // Every part has a kind.
    public static TheoryData<string> Optional =>
        [.. typeof(IFitPart).GetProperties().Select(property => property.Name).Where(name => name != nameof(IFitPart.Kind))];

    [Theory]
    [MemberData(nameof(Properties))]
    public void A_place_with_another_value_is_another_place(string property) =>
        Assert.False(AreEqual(Full(), With(property, other: true, "as written", Here)));

    [Theory]
    [MemberData(nameof(Properties))]
    public void A_place_whose_value_is_written_in_another_way_is_another_place(string property) =>
        Assert.False(AreEqual(Full(), With(property, other: false, "written in another way", Here)));

    [Theory]
    [MemberData(nameof(Optional))]
    public void A_place_without_a_value_is_another_place(string property) =>
        Assert.False(AreEqual(Full(), InventedPart.With<IFitPart>(property, null)));

    [Theory]
    [MemberData(nameof(Properties))]
    public void A_place_that_is_written_elsewhere_is_the_same_place(string property)
    {
        var moved = With(property, other: false, "as written", Elsewhere);
        Assert.True(AreEqual(Full(), moved));
        Assert.Equal(FitComparer.Instance.GetHashCode(Full()), FitComparer.Instance.GetHashCode(moved));
    }

    [Fact]
    public void Who_made_a_part_and_when_is_nothing_to_what_fits()
    {
        var part = new PartValues(KindOf.Written("aluminium electrolytic", Here)) { Role = new(PartRole.Filter, "filter", Here) };
        Assert.True(
            AreEqual(
                part,
                part with
                {
                    Maker = new("Ostrel", "Ostrel", Here),
                    Series = new("KX", "KX", Here),
                    DateCode = new("7549", "7549", Here),
                    Note = new("sleeve torn", "sleeve torn", Here),
                }
            )
        );
    }

    private static bool AreEqual(IFitPart one, IFitPart other)
    {
        var areEqual = FitComparer.Instance.Equals(one, other);
        Assert.Equal(areEqual, FitComparer.Instance.Equals(other, one));
        return areEqual;
    }

    private static IFitPart Full() => InventedPart.With<IFitPart>(string.Empty, null);

    private static IFitPart With(string property, bool other, string text, Spot spot) =>
        InventedPart.With<IFitPart>(property, InventedPart.Written<IFitPart>(property, other, text, spot));
}
