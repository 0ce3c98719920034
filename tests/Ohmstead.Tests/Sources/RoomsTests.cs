using System.Text;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Sources;

/// <summary>The folders inside a project stack: none uses another that uses it. src/ROOMS.md, written from the code, shows how they stand.
/// OHMSTEAD_WRITE=1 writes it.</summary>
public sealed class RoomsTests
{
    private static readonly Lazy<IReadOnlyList<ProjectRooms>> All = new(() =>
        [
            .. Directory
                .EnumerateFiles(ProjectFolder.At("src"), "*.csproj", SearchOption.AllDirectories)
                .Select(file => Path.GetFileNameWithoutExtension(file))
                .Order(StringComparer.Ordinal)
                .Select(ProjectRooms.Read),
        ]
    );

    [Fact]
    public void No_folder_uses_one_that_uses_it()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        Assert.Empty(
            All.Value.SelectMany(project =>
                RoomCircles
                    .In(project)
                    .Select(circle => $"{project.Project}: {string.Join(", ", circle)}: {RoomCircles.WayRound(project, circle)}")
            )
        );
    }

    // A name that is not understood could be an arrow that nobody sees.
    [Fact]
    public void Every_name_in_the_code_is_understood()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        Assert.All(All.Value, project => Assert.Empty(project.Unknown));
    }

    [Fact]
    public void The_page_of_rooms_is_the_one_that_the_code_gives()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        WrittenFile.IsCurrent("src/ROOMS.md", Page());
    }

    [Fact]
    public void A_circle_is_told_with_the_way_round()
    {
        var rooms = ProjectRooms.Of(
            "Bench",
            [
                ("Meters/Meter.cs", "namespace Bench.Meters;\npublic class Meter\n{\n    public Bench.Parts.Part? Last { get; set; }\n}\n"),
                ("Parts/Part.cs", "namespace Bench.Parts;\npublic class Part\n{\n    public int Pins => Bench.Shelf.Lot.Least;\n}\n"),
                ("Shelf/Lot.cs", "using Bench.Meters;\nnamespace Bench.Shelf;\npublic class Lot : Meter { public const int Least = 2; }\n"),
                ("Bench.cs", "namespace Bench;\npublic class Desk { public Bench.Parts.Part[] Parts { get; } = []; }\n"),
            ]
        );
        Assert.Empty(rooms.Unknown);
        var circle = Assert.Single(RoomCircles.In(rooms));
        Assert.Equal(["Meters", "Parts", "Shelf"], circle);
        Assert.Equal(
            "Meters -> Parts because Meter.cs line 4 uses Part; Parts -> Shelf because Part.cs line 4 uses Lot; "
                + "Shelf -> Meters because Lot.cs line 3 uses Meter",
            RoomCircles.WayRound(rooms, circle)
        );
        Assert.Equal((0, 1), (RoomCircles.Floors(rooms)["Parts"], RoomCircles.Floors(rooms)[ProjectRooms.Root]));
    }

    // A folder inside another is a room, a comment or a line that opens a namespace is no arrow, and an extension is used by its name.
    [Fact]
    public void Rooms_that_stack_are_no_circle()
    {
        var rooms = ProjectRooms.Of(
            "Bench",
            [
                ("Parts/Part.cs", "using Bench.Parts.Print;\nnamespace Bench.Parts;\n/// <see cref=\"Label\"/>\npublic class Part;\n"),
                (
                    "Parts/Print/Label.cs",
                    "namespace Bench.Parts.Print;\npublic static class Label\n{\n    public static int Size(this Part part) => 1;\n}\n"
                ),
                (
                    "Shelf/Lot.cs",
                    "using Bench.Parts;\nusing Bench.Parts.Print;\nnamespace Bench.Shelf;\n"
                        + "class Lot { int Of(Part part) => part.Size(); }\n"
                ),
            ]
        );
        Assert.Empty(rooms.Unknown);
        Assert.Empty(RoomCircles.In(rooms));
        Assert.Equal(
            ["Parts/Print -> Parts", "Shelf -> Parts", "Shelf -> Parts/Print"],
            rooms.Arrows.Select(arrow => $"{arrow.From} -> {arrow.To}")
        );
        Assert.Equal(2, RoomCircles.Floors(rooms)["Shelf"]);
    }

    private static string Page()
    {
        var page = new StringBuilder(
            """
            # Rooms

            Which folder of a project uses which, from the roof to the ground; written by the tests from the code as the compiler reads it.
            OHMSTEAD_WRITE=1 writes it anew. A folder stands above all that it uses, and a test fails on an arrow that runs back.

            """
        );
        foreach (var project in All.Value)
        {
            page.Append($"\n## {project.Project}\n\n| Floor | Folder | Uses |\n|---|---|---|\n");
            var floors = RoomCircles.Floors(project);
            foreach (var room in project.Rooms.OrderByDescending(room => floors[room]).ThenBy(room => room, StringComparer.Ordinal))
            {
                var uses = project
                    .Arrows.Where(arrow => arrow.From == room)
                    .OrderByDescending(arrow => floors[arrow.To])
                    .Select(arrow => Shown(arrow.To));
                page.Append($"| {floors[room]} | {Shown(room)} | {string.Join(", ", uses)} |\n");
            }
        }

        return page.ToString().ReplaceLineEndings("\n");
    }

    private static string Shown(string room) => room == ProjectRooms.Root ? "the project's own" : $"`{room}`";
}
