using System.Text;
using Ohmstead.Meters;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Tests.Meters;

/// <summary>What lines of meters mean by their descriptions.</summary>
public sealed class LineMeaningTests
{
    private const string Bridge = """
        meters:
          - meter: bridge
            talks: lines
            overload: OL ----
            fields:
              - { holds: status }
              - { holds: frequency, unit: Hz }
              - { holds: capacitance, unit: F }
              - { holds: loss_factor }
              - { holds: range, unit: F }
        """;

    private const string Named = """
        meters:
          - meter: hand
            talks: lines
            separator: spaces
            fields:
              - { holds: quantity, names: [{ says: Cs, is: capacitance }, { says: R, is: resistance }] }
              - { holds: reading }
              - { holds: unit }
        """;

    [Theory]
    [InlineData("0,120,4.612E-05,0.0345,1E-4", "capacitance=46.12 µF loss_factor=0.0345 frequency=120 Hz range=100 µF")]
    [InlineData("+0, 1.0E3 , 1.002E-7,+0.0002,1E-6", "capacitance=100.2 nF loss_factor=0.0002 frequency=1 kHz range=1 µF")]
    [InlineData("0,120,OL,0.0345,1E-4", "beyond its range")]
    [InlineData("0,120,9.9E37,9.9E37,1E-4", "beyond its range")]
    [InlineData("0,120,4.6E-5,9.91E37,1E-4", "beyond its range")]
    [InlineData("1,120,4.612E-05,0.0345,1E-4", "marks its reading with '1'")]
    [InlineData("0,120,4.612E-05,0.0345", "has 4 fields")]
    [InlineData("0,120,4.612E-05,0.0345,1E-4,7", "has 6 fields")]
    [InlineData("0,120,4.6x,0.0345,1E-4", "'4.6x' is no capacitance")]
    [InlineData("0,120,,0.0345,1E-4", "'' is no capacitance")]
    [InlineData("0,120,\u001b[2J,0.0345,1E-4", "<U+001B>[2J")]
    public void A_line_of_figures(string line, string told) => Assert.Contains(told, Read(Bridge, line), StringComparison.Ordinal);

    [Theory]
    [InlineData("Cs 46.1 uF", "capacitance=46.1 µF")]
    [InlineData("R   4.81\tkohm", "resistance=4.81 kΩ")]
    [InlineData("L 4.81 mH", "no quantity is known by 'L'")]
    [InlineData("R 4.81 uF", "'4.81' is no resistance with its unit")]
    [InlineData("R 4.81 mF", "'4.81' is no resistance with its unit")]
    public void A_line_that_names_its_quantity_and_its_unit(string line, string told) =>
        Assert.Contains(told, Read(Named, line), StringComparison.Ordinal);

    [Theory]
    [InlineData("46.12 uF", "capacitance=46.12 µF")]
    [InlineData("46.12", "is no capacitance")]
    [InlineData("46.12 ohm", "is no capacitance")]
    public void A_figure_may_bring_its_unit_along(string line, string told) =>
        Assert.Contains(
            told,
            Read("meters:\n  - { meter: m, talks: lines, fields: [{ holds: capacitance }] }\n", line),
            StringComparison.Ordinal
        );

    private static string Read(string description, string line)
    {
        var nodes = NodeReaders.ForWorker(0).Read("meters.yaml", Encoding.UTF8.GetBytes(description), FileForm.Yaml, ReadingLimits.Usual);
        var read = MeterBinding.Meters("meters.yaml", nodes);
        Assert.Empty(read.Findings);
        var (reading, fault) = new LineMeaning(read.File!.Meters.Single()).Read(line);
        return fault ?? string.Join(' ', reading!.Values.Select(value => $"{value.Key}={value.Value}"));
    }
}
