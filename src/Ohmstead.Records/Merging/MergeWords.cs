using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Merging;

/// <summary>What is told of a merged record.</summary>
internal static class MergeWords
{
    private const int MostKeys = 3;

    // It stands behind a mark, on its line.
    private const int MostOfAName = 60;

    // Which key of an entry tells what it is about, in the order in which they are looked for.
    private static readonly string[] Names =
    [
        "part",
        "point",
        "at",
        "ref",
        "lot",
        "order",
        "id",
        "number",
        "file",
        "hazard",
        "for",
        "measures",
        "did",
        "date",
        "since",
    ];

    /// <summary>What an entry is called: its kind and what it is about.</summary>
    internal static string NameOf(ListRule? rule, Piece entry)
    {
        var name = Names.Select(entry.TextAt).FirstOrDefault(text => text is not null);
        return rule is null ? $"'{entry.Key}'"
            : name is null ? rule.What
            : $"{rule.What} {name}";
    }

    /// <summary>What a visit is called: who, and the day.</summary>
    internal static string OfVisit(Piece visit)
    {
        var name = $"{visit.TextAt("by")} {visit.TextAt("date")}".Trim();
        return name.Length == 0
            ? "no day"
            : new string([.. name.Take(MostOfAName).Select(letter => char.IsControl(letter) ? ' ' : letter)]);
    }

    /// <summary>What both changed in different ways.</summary>
    internal static string Differs(ListRule? rule, Piece? before, Piece one, Piece other)
    {
        var what = NameOf(rule, one);
        if (one.Value is not MappingNode first || other.Value is not MappingNode second)
        {
            return before is null
                ? $"{what}: {Short(one.Value)} above and {Short(other.Value)} below"
                : $"{what}: {Short(before.Value)} became {Short(one.Value)} above and {Short(other.Value)} below";
        }

        var keys = first.Entries.Concat(second.Entries).Select(entry => entry.Key).Distinct(StringComparer.Ordinal);
        var told = keys.Where(key => Said(first, key) != Said(second, key))
            .Take(MostKeys)
            .Select(key =>
                before?.Value is MappingNode old && Said(old, key) is { } was
                    ? $"{key}: {was} became {Said(first, key) ?? "nothing"} above and {Said(second, key) ?? "nothing"} below"
                    : $"{key}: {Said(first, key) ?? "nothing"} above and {Said(second, key) ?? "nothing"} below"
            );
        var hint = rule?.List is "readings" or "proof" ? "; a reading is one fact: look at the notebook" : "; keep one";
        return $"{what}: {string.Join(", ", told)}{hint}";
    }

    private static string? Said(MappingNode item, string key) => item.ValueOf(key) is { } value ? Short(value) : null;

    private static string Short(Node value) =>
        value switch
        {
            ScalarNode { Text.Length: <= 40 } scalar => $"'{scalar.Text}'",
            ScalarNode scalar => $"'{scalar.Text[..39]}…'",
            SequenceNode list => $"{list.Items.Length} items",
            MappingNode mapping =>
                $"{{ {string.Join(", ", mapping.Entries.Take(MostKeys).Select(entry => $"{entry.Key}: {Short(entry.Value)}"))} }}",
            _ => "nothing",
        };
}
