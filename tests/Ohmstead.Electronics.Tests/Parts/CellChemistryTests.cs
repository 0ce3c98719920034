using Ohmstead.Electronics.Parts;

namespace Ohmstead.Electronics.Tests.Parts;

public sealed class CellChemistryTests
{
    // End-point voltages of one cell: IEC 60086 for alkaline, IEC 61951 for nickel cells, cell data sheets for lithium, IEC 60896 for lead,
    // all from memory.
    [Theory]
    [InlineData("lithium", 1, "2.5")]
    [InlineData("nickel-cadmium", 3, "3.0")]
    [InlineData("nickel-metal hydride", 3, "3.0")]
    [InlineData("alkaline", 4, "3.6")]
    [InlineData("lead-acid", 6, "10.5")]
    public void A_pack_is_spent_at_the_end_point_of_each_of_its_cells(string chemistry, int cells, string volts)
    {
        Worked<decimal> spent = Named(chemistry).SpentPack(cells).Value;
        Assert.Equal(Exact.Of(volts), spent.Value);
        Assert.Contains($"{cells} x ", spent.Arithmetic, StringComparison.Ordinal);
    }

    // 3.6 V / 1.2 V is three cells; 4 V is no whole number of them: plain division.
    [Fact]
    public void The_cells_of_a_pack_follow_from_its_nominal_voltage_or_not_at_all()
    {
        CellChemistry nickel = CellChemistry.NickelCadmium;
        Assert.Equal(3, nickel.CellsIn(3.6m));
        Assert.Null(nickel.CellsIn(4m));
        Assert.Equal("0 cells, expected one or more", nickel.SpentPack(0).Refusal);
    }

    // SV26, SV27. A full nickel cell rests at 1.45 V, lithium at 3.3 V: 5.0 V across three nickel cells and 4.2 V across a lithium one are
    // out.
    [Theory]
    [InlineData("nickel-cadmium", 3, "4.35", true)]
    [InlineData("nickel-cadmium", 3, "5.0", false)]
    [InlineData("lithium", 1, "3.3", true)]
    [InlineData("lithium", 1, "4.2", false)]
    public void A_resting_pack_is_not_above_what_its_cells_have_when_they_are_full(string chemistry, int cells, string volts, bool holds) =>
        Assert.Equal(holds, Exact.Of(volts) <= Named(chemistry).FullPack(cells).Value.Value);

    private static CellChemistry Named(string chemistry) => CellChemistry.All.Single(known => known.Name == chemistry);
}
