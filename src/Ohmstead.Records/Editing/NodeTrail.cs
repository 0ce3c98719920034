using System.Globalization;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Editing;

/// <summary>Everything a front matter says as a trail of paths and texts, so that two readings can be held side by side.</summary>
internal static class NodeTrail
{
    /// <summary>One entry for each value, empty list and empty mapping, in order; none where nothing is said at all.</summary>
    internal static IReadOnlyList<(string Path, string Text)> Walk(MappingNode root)
    {
        var trail = new List<(string, string)>();
        if (root.Entries.Length > 0)
        {
            Add(trail, string.Empty, root);
        }

        return trail;
    }

    /// <summary>The node at a path, or null where there is none.</summary>
    internal static Node? At(Node? node, string path)
    {
        while (path.Length > 0 && node is not null)
        {
            var end = path.IndexOfAny(['/', '#'], 1) is >= 0 and var next ? next : path.Length;
            var step = path[1..end];
            node = node switch
            {
                MappingNode mapping when path[0] == '/' => mapping.ValueOf(step),
                SequenceNode list
                    when path[0] == '#' && int.Parse(step, CultureInfo.InvariantCulture) is var at && at >= 0 && at < list.Items.Length =>
                    list.Items[at],
                _ => null,
            };
            path = path[end..];
        }

        return node;
    }

    /// <summary>Whether a trail says all that another said, in the same order, and beside it only what lies below one of the
    /// paths.</summary>
    internal static bool IsMoreBy(
        IReadOnlyList<(string Path, string Text)> before,
        IReadOnlyList<(string Path, string Text)> after,
        IReadOnlyList<string> added
    ) => Beside(before, added).SequenceEqual(Beside(after, added));

    private static IEnumerable<(string Path, string Text)> Beside(
        IReadOnlyList<(string Path, string Text)> trail,
        IReadOnlyList<string> added
    ) => trail.Where(entry => !added.Any(path => IsBelow(entry.Path, path)));

    /// <summary>Whether a trail says something at or below each of the paths.</summary>
    internal static bool HoldsAll(IReadOnlyList<(string Path, string Text)> trail, IReadOnlyList<string> paths) =>
        paths.All(path => trail.Any(entry => IsBelow(entry.Path, path)));

    private static bool IsBelow(string path, string of) =>
        path == of || (path.StartsWith(of, StringComparison.Ordinal) && path[of.Length] is '/' or '#');

    private static void Add(List<(string Path, string Text)> trail, string path, Node node)
    {
        switch (node)
        {
            case ScalarNode scalar:
                trail.Add((path, scalar.Text));
                break;
            case SequenceNode list:
                for (var i = 0; i < list.Items.Length; i++)
                {
                    Add(trail, path + "#" + i.ToString(CultureInfo.InvariantCulture), list.Items[i]);
                }

                if (list.Items.Length == 0)
                {
                    trail.Add((path, "[]"));
                }

                break;
            case MappingNode mapping:
                foreach (var entry in mapping.Entries)
                {
                    Add(trail, path + "/" + entry.Key, entry.Value);
                }

                if (mapping.Entries.Length == 0)
                {
                    trail.Add((path, "{}"));
                }

                break;
        }
    }
}
