namespace Ohmstead.Tests.Sources;

/// <summary>Sets of folders of which each can be reached from each, and the floors of what is left when each set is one.</summary>
internal static class RoomCircles
{
    /// <summary>Every set of more than one folder, in order of name.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> In(ProjectRooms project)
    {
        var reached = project.Rooms.ToDictionary(room => room, room => Reached(project, room), StringComparer.Ordinal);
        return
        [
            .. project
                .Rooms.Select(room =>
                    (IReadOnlyList<string>)[.. project.Rooms.Where(other => reached[room].Contains(other) && reached[other].Contains(room))]
                )
                .Where(circle => circle.Count > 1)
                .DistinctBy(circle => circle[0]),
        ];
    }

    /// <summary>The shortest way round within a set, each step with its reason.</summary>
    public static string WayRound(ProjectRooms project, IReadOnlyList<string> circle)
    {
        var within = project.Arrows.Where(arrow => circle.Contains(arrow.From) && circle.Contains(arrow.To)).ToList();
        return within
            .Select(first => (List<RoomArrow>)[first, .. Way(within, first.To, first.From)])
            .MinBy(way => way.Count)!
            .Aggregate(string.Empty, (text, arrow) => $"{text}{(text.Length == 0 ? string.Empty : "; ")}{arrow}");
    }

    /// <summary>Which floor each folder stands on: 0 uses no other, every other stands above all that it uses.</summary>
    public static IReadOnlyDictionary<string, int> Floors(ProjectRooms project)
    {
        var circles = In(project);
        var floors = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var room in project.Rooms)
        {
            Floor(room);
        }

        return floors;

        int Floor(string room)
        {
            if (floors.TryGetValue(room, out var known))
            {
                return known;
            }

            var together = circles.FirstOrDefault(circle => circle.Contains(room)) ?? [room];
            var below = project
                .Arrows.Where(arrow => together.Contains(arrow.From) && !together.Contains(arrow.To))
                .Select(arrow => Floor(arrow.To) + 1)
                .DefaultIfEmpty()
                .Max();
            foreach (var one in together)
            {
                floors[one] = below;
            }

            return below;
        }
    }

    private static HashSet<string> Reached(ProjectRooms project, string start)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal) { start };
        var open = new Queue<string>([start]);
        while (open.TryDequeue(out var room))
        {
            foreach (var arrow in project.Arrows.Where(arrow => arrow.From == room && seen.Add(arrow.To)))
            {
                open.Enqueue(arrow.To);
            }
        }

        return seen;
    }

    // The shortest row of arrows between two folders between which there is one.
    private static List<RoomArrow> Way(List<RoomArrow> arrows, string from, string to)
    {
        var ways = new Dictionary<string, List<RoomArrow>>(StringComparer.Ordinal) { [from] = [] };
        var open = new Queue<string>([from]);
        while (!ways.ContainsKey(to))
        {
            var room = open.Dequeue();
            foreach (var arrow in arrows.Where(arrow => arrow.From == room && !ways.ContainsKey(arrow.To)))
            {
                ways[arrow.To] = [.. ways[room], arrow];
                open.Enqueue(arrow.To);
            }
        }

        return ways[to];
    }
}
