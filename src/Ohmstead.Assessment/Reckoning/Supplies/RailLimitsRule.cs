using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Supplies;

namespace Ohmstead.Assessment.Reckoning.Supplies;

/// <summary>What a rail may read.</summary>
internal static class RailLimitsRule
{
    private static readonly ReckonInput Rail = ReckonInput
        .Create("rail", Dimension.Voltage, "its nominal voltage, with its sign")
        .Within(-1000m, 1000m);
    private static readonly ReckonInput For = ReckonInput
        .Word("list", "which of the lists", "families", "computers", "heaters-and-mains", "all")
        .Usually("all");
    private static readonly ReckonInput Read = ReckonInput
        .Create("read", Dimension.Voltage, "what was read")
        .Within(-1000m, 1000m)
        .Optional();

    internal static ReckonRule Rule { get; } =
        new(
            "rail-limits",
            "the range that a supply rail must keep, by what it feeds",
            [Rail, For, Read],
            "rail=5V list=families read=4.78V",
            Work
        )
        {
            Hazard = "mains",
            Validity = "at the pin of the load; the equipment's own manual comes first; the uncertainty of the reading is not counted",
        };

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        var list = given.Text(For) switch
        {
            "families" => RailLimits.Families,
            "computers" => RailLimits.ComputerSupplies,
            "heaters-and-mains" => RailLimits.HeatersAndMains,
            _ => RailLimits.All,
        };
        Outcome<ReckonedLine>[] lines = [.. list.Where(limit => limit.NominalVolts == given[Rail]).Select(limit => Line(limit, given))];
        if (lines.Length > 0)
        {
            return Answers.All(lines);
        }

        var rails = list.Select(limit => limit.NominalVolts).Distinct().Order().Select(volts => Answers.Text(volts, Dimension.Voltage));
        return Outcome<Reckoned>.Refused($"no rail of {given.Text(Rail)} is known, expected one of {string.Join(", ", rails)}");
    }

    private static Outcome<ReckonedLine> Line(RailLimit limit, GivenInputs given) =>
        Answers.Said(
            limit.Family,
            $"{Answers.Text(limit.LowVolts, Dimension.Voltage)} to {Answers.Text(limit.HighVolts, Dimension.Voltage)}"
                + (given.Has(Read) ? $": {given.Text(Read)} is {(limit.Holds(given[Read]) ? "inside" : "outside")}" : string.Empty),
            string.Empty,
            limit.Source,
            limit.Note is { } note ? [note] : []
        );
}
