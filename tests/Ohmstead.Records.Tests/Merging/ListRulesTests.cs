using Ohmstead.Records.Entries;
using Ohmstead.Records.Merging;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Tests.Merging;

/// <summary>Every list that a record may hold is known to the merge, and its rule names keys that there are.</summary>
public sealed class ListRulesTests
{
    public static TheoryData<string> Lists { get; } = [.. All().Select(list => list.Key.Name).Distinct(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Lists))]
    public void A_list_has_a_rule_whose_keys_its_items_have(string list)
    {
        var rule = ListRules.For(list);
        Assert.Equal(list, rule.List);
        Assert.NotEmpty(KnownBy.Of(list));
        string[] keys =
        [
            .. KnownBy.Of(list).SelectMany(known => known),
            .. rule.Name ?? [],
            .. rule.Beside,
            .. rule.Fact,
            .. rule.Day is { } day ? [day] : Array.Empty<string>(),
        ];
        var inner = All().First(one => one.Key.Name == list).Key.Inner!;
        Assert.Empty(keys.Except(inner.Keys.Select(key => key.Name)).Except(["?"]));
    }

    // The meters are merged as text.
    private static IEnumerable<(Shape Shape, Key Key)> All()
    {
        var open = new Queue<Shape>(FileShapes.All.Where(file => file.SchemaName != "meters").Select(file => file.Shape));
        while (open.TryDequeue(out var shape))
        {
            foreach (var key in shape.Keys.Where(key => key.Inner is not null))
            {
                open.Enqueue(key.Inner!);
                if (key.Kind == ValueKind.List)
                {
                    yield return (shape, key);
                }
            }
        }
    }
}
