using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>Families of parts, told in the terminal.</summary>
public sealed class FailuresCommandTests
{
    [Fact]
    public void Families_stand_in_a_table_with_their_counts_and_what_they_are_not()
    {
        var run = Families(CollectionCopy.Untouched);
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.StartsWith("family ", run.Out, StringComparison.Ordinal);
        Assert.Contains("\naluminium electrolytic, Ostrel, series RB ", run.Out, StringComparison.Ordinal);
        Assert.Contains("Estimates, not promises.", run.Out, StringComparison.Ordinal);
        Assert.Contains("failed by their first inspection, at ages nobody saw", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_form_for_programs_has_a_share_only_where_five_or_more_were_measured()
    {
        using var document = JsonDocument.Parse(Families(CollectionCopy.Untouched, "--json").Out);
        var families = document.RootElement.GetProperty("families").EnumerateArray().ToArray();
        Assert.NotEmpty(families);
        Assert.All(families, family =>
            Assert.Equal(family.GetProperty("measured").GetInt32() >= 5, family.GetProperty("share").ValueKind == JsonValueKind.Object)
        );
        Assert.All(families, family =>
            Assert.Equal(
                [
                    "kind",
                    "maker",
                    "series",
                    "parts",
                    "measured",
                    "boards",
                    "failed_as_found",
                    "failed_later",
                    "failed_in_circuit",
                    "share",
                    "ages",
                ],
                family.EnumerateObject().Select(member => member.Name)
            )
        );
    }

    [Fact]
    public void A_record_with_an_error_is_said_to_be_missing_and_the_rest_is_counted()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("boards/SP-0014.md", copy.Read("boards/SP-0014.md").Replace("2046 µF", "2046 mF", StringComparison.Ordinal));
        var run = Families(copy.Root);
        Assert.Equal(0, run.Exit);
        Assert.Contains("what could not be read is not counted", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_without_boards_is_a_wrong_command_line()
    {
        using var empty = CollectionCopy.Empty();
        Assert.Equal(2, Families(empty.Root).Exit);
        Assert.Equal(2, Families(empty.At("nowhere")).Exit);
    }

    [Fact]
    public void The_reason_for_a_part_tells_where_its_readings_are_going()
    {
        var run = Run.Of("why", "SP-0020", "C1", "--in", CollectionCopy.Untouched, "--as-of", "2026-11-25");
        Assert.Contains(
            "\ndrift, capacitance of 3 like readings, 2024-03-16 to 2026-03-14: falls by 37.",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.Contains("; estimate, not a promise\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("\n    source: ", run.Out, StringComparison.Ordinal);
    }

    private static Run Families(string folder, params string[] more) => Run.Of(["failures", folder, "--as-of", "2026-11-25", .. more]);
}
