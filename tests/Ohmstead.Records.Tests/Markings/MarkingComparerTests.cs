using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Tests.Markings;

/// <summary>Two parts share their limits when they are alike in all that limits may depend on. One property forgotten here would show one
/// part the limits of another.</summary>
public sealed class MarkingComparerTests
{
    private static readonly Spot Here = new(7, 5, 9);
    private static readonly Spot Elsewhere = new(31, 44, 9);

    public static TheoryData<string> Properties => [.. typeof(IMarkedPart).GetProperties().Select(property => property.Name)];

    // Every part has a kind.
    public static TheoryData<string> Optional =>
        [.. typeof(IMarkedPart).GetProperties().Select(property => property.Name).Where(name => name != nameof(IMarkedPart.Kind))];

    [Theory]
    [MemberData(nameof(Properties))]
    public void A_part_with_another_value_is_another_part(string property) =>
        Assert.False(AreEqual(Full(), With(property, Written(property, other: true, "as written", Here))));

    [Theory]
    [MemberData(nameof(Properties))]
    public void A_part_whose_value_is_written_in_another_way_is_another_part(string property) =>
        Assert.False(AreEqual(Full(), With(property, Written(property, other: false, "written in another way", Here))));

    [Theory]
    [MemberData(nameof(Optional))]
    public void A_part_without_a_value_is_another_part(string property) => Assert.False(AreEqual(Full(), With(property, null)));

    [Theory]
    [MemberData(nameof(Properties))]
    public void A_part_that_is_written_elsewhere_is_the_same_part(string property)
    {
        var moved = With(property, Written(property, other: false, "as written", Elsewhere));
        Assert.True(AreEqual(Full(), moved));
        Assert.Equal(MarkingComparer.Instance.GetHashCode(Full()), MarkingComparer.Instance.GetHashCode(moved));
    }

    [Theory]
    [InlineData("paper", false)]
    [InlineData("metallised paper", false)]
    [InlineData("polyester film", true)]
    public void The_voltage_of_its_place_tells_capacitors_of_old_paper_apart_and_no_others(string kind, bool areEqual)
    {
        var part = new PartValues(KindOf.Written(kind, Here));
        Assert.Equal(areEqual, AreEqual(part with { WorkingVoltage = Volts(160m) }, part with { WorkingVoltage = Volts(200m) }));
    }

    [Fact]
    public void Old_paper_is_tested_at_the_voltage_of_its_place_else_at_its_own()
    {
        var paper = new PartValues(KindOf.Written("paper", Here)) { RatedVoltage = Volts(400m) };
        Assert.Equal(400m, ((IMarkedPart)paper).VoltageOfPaper?.Value.Value);
        Assert.Equal(160m, ((IMarkedPart)(paper with { WorkingVoltage = Volts(160m) })).VoltageOfPaper?.Value.Value);
    }

    [Theory]
    [InlineData("zener diode", false)]
    [InlineData("regulator", false)]
    [InlineData("transistor", true)]
    public void The_type_number_tells_apart_the_kinds_whose_voltage_it_tells(string kind, bool areEqual)
    {
        var part = new PartValues(KindOf.Written(kind, Here));
        Assert.Equal(areEqual, AreEqual(part with { Type = new("A-1", "A-1", Here) }, part with { Type = new("A-2", "A-2", Here) }));
    }

    [Fact]
    public void Who_made_a_part_when_and_of_what_size_is_nothing_to_its_limits()
    {
        var part = new PartValues(KindOf.Written("aluminium electrolytic", Here)) { RatedVoltage = Volts(25m) };
        var other = part with
        {
            Maker = new("Ostrel", "Ostrel", Here),
            DateCode = new("7549", "7549", Here),
            LeadPitch = new(new Quantity(0.005m, Dimension.Length), "5 mm", Here),
        };
        Assert.True(AreEqual(part, other));
    }

    private static bool AreEqual(IMarkedPart one, IMarkedPart other)
    {
        var areEqual = MarkingComparer.Instance.Equals(one, other);
        Assert.Equal(areEqual, MarkingComparer.Instance.Equals(other, one));
        return areEqual;
    }

    private static Written<Quantity> Volts(decimal volts) => new(new Quantity(volts, Dimension.Voltage), "as written", Here);

    private static IMarkedPart Full() => InventedPart.With<IMarkedPart>(string.Empty, null);

    // A part in which everything is written, but one property otherwise.
    private static IMarkedPart With(string name, object? value) => InventedPart.With<IMarkedPart>(name, value);

    private static object Written(string property, bool other, string text, Spot spot) =>
        InventedPart.Written<IMarkedPart>(property, other, text, spot);
}
