using Ohmstead.Synthetic.Parts;
using Ohmstead.Synthetic.Text;

namespace Ohmstead.Synthetic.Files;

/// <summary>Writes one board: forty parts, about sixty readings, eight work entries and one kilobyte of story.</summary>
public static class BoardFile
{
    private const int BoardsPerDesigned = 5;
    private static readonly string[] Stores = ["lookout hut store", "tide hut", "upper mast room", "harbour office loft"];
    private static readonly string[] Complaints =
    [
        "pen drifts after an hour",
        "hum on the line",
        "no deflection when cold",
        "trips its fuse at switch-on",
    ];

    /// <summary>The text of one board.</summary>
    /// <param name="plan">The collection it belongs to.</param>
    /// <param name="number">Its number, from 1.</param>
    public static string Write(CollectionPlan plan, int number)
    {
        var random = SeededRandom.For(plan.Seed, 1, number);
        var isDesigned = number % BoardsPerDesigned == 0;
        var design = isDesigned ? random.Between(1, plan.Designs) : 0;
        var parts = isDesigned ? DesignFile.Parts(plan, design) : PartsList.Invent(random);
        var history = BoardHistory.Invent(parts, number, random);
        var file = new LineWriter().Line("---").Line($"board: {CollectionPlan.BoardId(number)}").Line("title: " + random.Pick(Titles.All));
        if (isDesigned)
        {
            file.Line($"design: {CollectionPlan.DesignId(design)}");
        }

        file.Line($"serial: \"{Figures.Padded(random.Between(1, 9999), 4)}\"")
            .Line($"made: {1971 + random.Between(0, 18)}")
            .Line(
                "arrived: "
                    + new FlowLine().Add("date", "2024-01").Add("from", random.Pick(Stores)).Add("complaint", random.Pick(Complaints))
            );
        if (!isDesigned)
        {
            file.Line().List(0, "parts", parts.Select(part => part.Line)).List(0, "points", DesignFile.Points());
        }

        return Story.Append(history.AppendTo(file), parts, number, random).ToString();
    }
}
