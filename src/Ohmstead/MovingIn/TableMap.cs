using System.Text;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.MovingIn;

/// <summary>What a person once said about the tables of a collection, kept beside it so that it need not be said again.</summary>
/// <param name="Foreign">How days and figures are written.</param>
/// <param name="ProofsLast">Whether on a day with work and proofs the proofs came last.</param>
/// <param name="Columns">For each sort of table the heading of each thing that a column holds.</param>
/// <param name="Kinds">Kinds of part by class letters.</param>
/// <param name="Units">Units of bare figures by class letters.</param>
internal sealed record TableMap(
    ForeignText Foreign,
    bool ProofsLast,
    IReadOnlyDictionary<string, IReadOnlyDictionary<string, string>> Columns,
    IReadOnlyDictionary<string, string> Kinds,
    IReadOnlyDictionary<string, string> Units
)
{
    /// <summary>The usual name of the file, in the folder of the collection.</summary>
    public const string FileName = "tables.yaml";

    private const string Remark =
        "# How old tables are taken in: what their columns hold. Written by 'ohmstead take-in --write'; mend it by hand.\n";

    /// <summary>Nothing was said yet.</summary>
    public static TableMap None { get; } =
        new(
            new(null, null),
            false,
            new Dictionary<string, IReadOnlyDictionary<string, string>>(StringComparer.Ordinal),
            new Dictionary<string, string>(StringComparer.Ordinal),
            new Dictionary<string, string>(StringComparer.Ordinal)
        );

    /// <summary>The file.</summary>
    public string Text()
    {
        var text = new StringBuilder(Remark);
        foreach (
            var (key, value) in new[] { ("days", Foreign.Days), ("decimals", Foreign.Decimals), ("proofs_last", ProofsLast ? "yes" : null) }
        )
        {
            if (value is not null)
            {
                text.Append(key).Append(": ").Append(value).Append('\n');
            }
        }

        foreach (var sort in TableSort.All.Where(sort => Columns.ContainsKey(sort.Name)))
        {
            Pairs(
                text,
                sort.Name,
                sort.Words.Targets.Where(Columns[sort.Name].ContainsKey).Select(target => (target, Columns[sort.Name][target]))
            );
        }

        Pairs(text, "kinds", Kinds.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => (pair.Key, pair.Value)));
        Pairs(text, "units", Units.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => (pair.Key, pair.Value)));
        return text.ToString();
    }

    /// <summary>Reads the file, or says what is wrong in it.</summary>
    public static (TableMap? Map, string? Fault, string? NextStep) Read(string path, string text)
    {
        var reading = NodeReaders.ForWorker(0).Read(path, Encoding.UTF8.GetBytes(text), FileForm.Yaml, ReadingLimits.Usual);
        if (reading.Findings.FirstOrDefault(finding => finding.Severity == Severity.Error) is { } wrong)
        {
            return (null, $"{wrong.Place}: {wrong.Message}", wrong.NextStep);
        }

        var columns = new Dictionary<string, IReadOnlyDictionary<string, string>>(StringComparer.Ordinal);
        var pairs = new Dictionary<string, IReadOnlyDictionary<string, string>>(StringComparer.Ordinal);
        string? days = null;
        string? decimals = null;
        var proofsLast = false;
        foreach (var entry in reading.Root?.Entries ?? [])
        {
            var sort = TableSort.All.FirstOrDefault(known => known.Name == entry.Key);
            switch (entry.Key, entry.Value)
            {
                case ("days", ScalarNode word) when ForeignText.DayWords.Contains(word.Text, StringComparer.Ordinal):
                    days = word.Text;
                    break;
                case ("decimals", ScalarNode word) when ForeignText.DecimalWords.Contains(word.Text, StringComparer.Ordinal):
                    decimals = word.Text;
                    break;
                case ("proofs_last", ScalarNode word) when Vocabulary.YesNo.Means(word.Text, out var isLast):
                    proofsLast = isLast;
                    break;
                case (_, MappingNode inner)
                    when (sort is not null || entry.Key is "kinds" or "units")
                        && inner.Entries.All(one =>
                            one.Value is ScalarNode && sort?.Words.Targets.Contains(one.Key, StringComparer.Ordinal) != false
                        ):
                    (sort is null ? pairs : columns)[entry.Key] = inner.Entries.ToDictionary(
                        one => one.Key,
                        one => ((ScalarNode)one.Value).Text,
                        StringComparer.Ordinal
                    );
                    break;
                default:
                    return (
                        null,
                        $"{path}:{entry.KeySpot.Line}: '{entry.Key}' says nothing that is known here",
                        $"mend it, or say what is meant with options and --map another-file.yaml"
                    );
            }
        }

        return (
            new(
                new(days, decimals),
                proofsLast,
                columns,
                pairs.GetValueOrDefault("kinds", None.Kinds),
                pairs.GetValueOrDefault("units", None.Units)
            ),
            null,
            null
        );
    }

    private static void Pairs(StringBuilder text, string key, IEnumerable<(string Key, string Value)> pairs)
    {
        var first = true;
        foreach (var (name, value) in pairs)
        {
            text.Append(first ? $"{key}:\n" : string.Empty)
                .Append("  ")
                .Append(FlowText.TextScalar(name))
                .Append(": ")
                .Append(FlowText.TextScalar(value))
                .Append('\n');
            first = false;
        }
    }
}
