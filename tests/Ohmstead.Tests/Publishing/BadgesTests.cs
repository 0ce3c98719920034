using System.Text;
using System.Xml.Linq;
using Ohmstead.Assessment.History;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Html;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Publishing;

public sealed class BadgesTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void Each_board_has_a_badge_that_says_its_number_and_its_state()
    {
        using var copy = DataFilesTests.Report();
        foreach (var record in Directory.GetFiles(copy.At("boards"), "*.md").Select(file => Path.GetFileNameWithoutExtension(file)))
        {
            var badge = XDocument.Load(copy.At($"pages/badges/{record}.svg")).Root!;
            var title = badge.Element(Svg + "title")!.Value;
            Assert.Contains(title, BoardStates.All.Select(state => $"{record}: {BoardStates.Words(state)}"));
            Assert.Equal(title, string.Join(": ", badge.Elements(Svg + "text").Select(text => text.Value)));
        }
    }

    [Fact]
    public void The_badge_of_the_collection_counts_the_boards_that_are_fit_to_run()
    {
        using var copy = DataFilesTests.Report();
        Assert.EndsWith(
            $"of {CollectionCopy.Boards} fit to run",
            XDocument.Load(copy.At("pages/badge.svg")).Root!.Element(Svg + "title")!.Value,
            StringComparison.Ordinal
        );
    }

    // All boards of the demo were seen before 2027 and are to be looked at every 18 months.
    [Fact]
    public void A_badge_says_beside_the_state_that_the_look_is_overdue()
    {
        using var copy = CollectionCopy.Make();
        Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2029-01-01");
        Assert.Equal(
            "SP-0007: fit to run; its inspection is overdue since 2027-11-09",
            XDocument.Load(copy.At("pages/badges/SP-0007.svg")).Root!.Element(Svg + "title")!.Value
        );
        Assert.Matches(
            "of [0-9]+ fit to run, [0-9]+ of them with the inspection overdue$",
            XDocument.Load(copy.At("pages/badge.svg")).Root!.Element(Svg + "title")!.Value
        );
        Assert.Matches("\"SP-0007\".*\"look_overdue\":\"yes\"", copy.Read("pages/data.json"));
    }

    [Theory]
    [InlineData("</text><script>alert(1)</script>")]
    [InlineData("\" onload=\"alert(1)")]
    [InlineData("a\u0000\u202e\ud800b")]
    public void Hostile_names_are_text(string hostile)
    {
        var badge = Read(hostile);
        Assert.Equal(
            ["svg", "title", "rect", "rect", "text", "g", "path", "path", "text"],
            badge.DescendantsAndSelf().Select(element => element.Name.LocalName)
        );
        Assert.DoesNotContain(badge.DescendantsAndSelf().Attributes(), attribute =>
            attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal) || attribute.Name.LocalName is "href" or "style"
        );
    }

    [Fact]
    public void A_very_long_name_is_cut_and_the_text_has_the_room_it_needs()
    {
        var badge = Read(new string('m', 500));
        var plate = badge.Elements(Svg + "text").First();
        Assert.Equal(40, plate.Value.Length);
        Assert.EndsWith("…", plate.Value, StringComparison.Ordinal);
        // 40 letters of 12 pixels with an advance of 0.6 em.
        Assert.Equal("288.0", plate.Attribute("textLength")!.Value);
    }

    private static XElement Read(string name)
    {
        using var buffer = new PageBuffer();
        Badge.Write(buffer, name, BoardState.FitToRun, "fit to run");
        return XDocument.Parse(Encoding.UTF8.GetString(buffer.Written)).Root!;
    }
}
