using System.CommandLine;
using System.CommandLine.Parsing;
using Ohmstead.PartsLists;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Commands;

/// <summary>The options of a parts list that hold pairs: columns, kinds, units. Each word is checked where it is read.</summary>
internal sealed class StartPartsOptions
{
    public Option<IReadOnlyDictionary<string, string>> Columns { get; } =
        new("--columns")
        {
            Description =
                "What the columns hold, such as \"ref=Designator,value=Val\"; #3 names the third column, and \"note=\" takes a guess back.",
            HelpName = "KEY=HEADING,...",
            CustomParser = result =>
                Pairs(result, splits: true, (key, _) =>
                    ColumnPlan.Targets.Contains(key, StringComparer.Ordinal)
                        ? null
                        : Nearest.Told(
                            $"'{key}' is nothing a column can hold",
                            Nearest.To(key, ColumnPlan.Targets),
                            $"; it can hold {string.Join(", ", ColumnPlan.Targets)}"
                        )
                ),
            DefaultValueFactory = _ => new Dictionary<string, string>(StringComparer.Ordinal),
        };

    public Option<IReadOnlyDictionary<string, PartKind>> Kinds { get; } =
        new("--kind")
        {
            Description =
                "The kind of a part or of all parts with a class letter, such as \"C5=tantalum\" or \"R=carbon film resistor\". May be "
                + "given several times.",
            HelpName = "REF=KIND",
            CustomParser = result =>
                KindsOf(
                    Pairs(result, splits: false, (_, kind) =>
                        PartKinds.All.Means(kind, out var _)
                            ? null
                            : Nearest.Told(
                                $"'{kind}' is {PartShape.Kind.OtherWord}",
                                Nearest.To(kind, PartKinds.All),
                                $"; write one of: {string.Join(", ", PartKinds.All)}"
                            )
                    )
                ),
            DefaultValueFactory = _ => new Dictionary<string, PartKind>(StringComparer.Ordinal),
        };

    public Option<IReadOnlyDictionary<string, string>> Units { get; } =
        new("--unit")
        {
            Description =
                "The unit of bare figures for a class letter, such as R=ohm or C=pF. Without it a figure that has no unit is not taken.",
            HelpName = "LETTER=UNIT",
            CustomParser = result =>
                Pairs(result, splits: false, (_, unit) => unit.Length == 0 ? "a unit is expected, such as R=ohm" : null),
            DefaultValueFactory = _ => new Dictionary<string, string>(StringComparer.Ordinal),
        };

    // A word that is no kind was told already.
    private static Dictionary<string, PartKind> KindsOf(Dictionary<string, string> pairs)
    {
        var kinds = new Dictionary<string, PartKind>(pairs.Count, StringComparer.Ordinal);
        foreach (var (key, word) in pairs)
        {
            if (PartKinds.All.Means(word, out var kind))
            {
                kinds[key] = kind;
            }
        }

        return kinds;
    }

    private static Dictionary<string, string> Pairs(ArgumentResult result, bool splits, Func<string, string, string?> faultOf)
    {
        var pairs = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var word in result.Tokens.SelectMany(token => splits ? token.Value.Split(',') : [token.Value]))
        {
            var sign = word.IndexOf('=', StringComparison.Ordinal);
            var (key, value) = sign < 0 ? (word.Trim(), string.Empty) : (word[..sign].Trim(), word[(sign + 1)..].Trim());
            if ((sign < 1 ? $"'{word}' is no pair, such as {(splits ? "ref=Designator" : "C=mica")}" : faultOf(key, value)) is { } fault)
            {
                result.AddError(fault);
            }

            pairs[key] = value;
        }

        return pairs;
    }
}
