using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Merging;

/// <summary>
/// What a record says of each thing that was found, read, done, decided or proved, with all that its visit adds: the day, the person, the
/// temperature, the instrument. None of these may become another by merging, for a verdict hangs on them.
/// </summary>
internal static class RecordFacts
{
    /// <summary>All of them, each as a text to compare.</summary>
    internal static HashSet<string> Of(MappingNode root)
    {
        var facts = new HashSet<string>(StringComparer.Ordinal);
        foreach (var visit in (root.ValueOf("bench") as SequenceNode)?.Items.OfType<MappingNode>() ?? [])
        {
            foreach (var list in visit.Entries)
            {
                var rule = ListRules.For(list.Key);
                foreach (var entry in (list.Value as SequenceNode)?.Items.OfType<MappingNode>() ?? [])
                {
                    // How warm it was and with what is a part of what was read, and of nothing else.
                    var isRead = list.Key is "readings" or "proof";
                    string[] keys = isRead ? ["date", "by", "temperature", "powered"] : ["date", "by"];
                    var head = keys.Select(key => TextOf(visit, key));
                    var instrument = isRead ? TextOf(entry, "instrument") ?? TextOf(visit, "instrument") : null;
                    var said = entry with { Entries = [.. entry.Entries.Where(one => rule.IsFact(one.Key) && one.Key != "instrument")] };
                    facts.Add($"{string.Join('\u0003', head)}\u0003{instrument}\u0003{list.Key}\u0003{Piece.MeaningOf(said)}");
                }
            }
        }

        return facts;
    }

    private static string? TextOf(MappingNode mapping, string key) => (mapping.ValueOf(key) as ScalarNode)?.Text;
}
