using System.CommandLine;
using System.CommandLine.Completions;
using Ohmstead.Commands;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>Each word and each option of every command answers a shell with what can stand there, and with nothing else. The cases are all
/// that there are.</summary>
public sealed class OfferedValueTests
{
    // A name of the demo for each word that means one.
    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        ["BOARD"] = "SP-0007",
        ["PLACE"] = "C1",
        ["PART"] = "C1",
        ["LOT"] = "L-001",
        ["ORDER"] = "PO-08",
        ["WORD"] = "key-unknown",
        ["RULE"] = "esr",
        ["METHOD"] = "isopropanol",
        ["--lot"] = "L-001",
        ["--order"] = "PO-08",
        ["--instrument"] = "bridge-1",
        ["--design"] = "bench-supply",
        ["--polarity"] = "schematic",
        ["--hazard"] = "charged capacitor",
        ["--with"] = "isopropanol",
        ["--clears"] = "C1",
        ["--class"] = "C",
    };

    // What is new has no name yet.
    private static readonly string[] New = ["lot LOT", "start collection --board"];

    public static TheoryData<string> Commands { get; } = new(CommandTree.Leaves.Select(one => string.Join(' ', one.Path)));

    [Theory]
    [MemberData(nameof(Commands))]
    public void An_option_offers_its_values(string name)
    {
        using var copy = CollectionCopy.Make();
        var command = Find(name);
        foreach (var option in CommandTree.Own(command).Where(option => option.ValueType != typeof(bool)))
        {
            var board = command.Arguments.Any(argument => argument.Name == "BOARD") ? " SP-0007" : string.Empty;
            IsOffered($"{name} {option.Name}", option, Offered(copy, $"{name}{board} {option.Name} "));
            IsOffered($"{name} {option.Name}", option, Offered(copy, $"{name}{board} {option.Name}=").Select(word => word.Split('=')[^1]));
        }
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_word_offers_what_can_stand_at_its_place(string name)
    {
        using var copy = CollectionCopy.Make();
        var typed = name;
        foreach (var argument in Find(name).Arguments)
        {
            IsOffered($"{name} {argument.Name}", argument, Offered(copy, $"{typed} "));
            typed += $" '{(Names.TryGetValue(argument.Name, out var known) ? known : Closed(argument).FirstOrDefault("x"))}'";
        }
    }

    [Theory]
    [InlineData("wait SP-0007 x --order PO-07 --line ", "1,2")]
    [InlineData("lot L-099 valve --order PO-07 --line ", "1,2")]
    [InlineData("wait SP-0007 x --order PO-08 --line ", "")]
    [InlineData("wait SP-0007 x --line ", "")]
    public void A_line_is_offered_of_the_order_that_was_said(string typed, string offered)
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(offered, string.Join(',', Offered(copy, typed)));
    }

    [Theory]
    [InlineData("check boards/SP-0007", "boards/SP-0007.md")]
    [InlineData("check coll", "collection.yaml")]
    [InlineData("check b", "boards/")]
    [InlineData("report b", "boards/")]
    [InlineData("report coll", "")]
    [InlineData("sheet SP-0007 --to coll", "collection.yaml")]
    [InlineData("drawer --workers coll", "")]
    [InlineData("check nowhere/at/all", "")]
    public void Files_are_offered_where_one_is_meant(string typed, string offered)
    {
        using var copy = CollectionCopy.Make();
        // The file by its whole path: the tests stand in no folder of their own.
        var at = typed.LastIndexOf(' ') + 1;
        var root = copy.Root.Replace('\\', '/') + "/";
        Assert.Equal(
            offered,
            string.Join(
                ',',
                Offered(copy, typed.Insert(at, root)).Select(word => word.Replace(root, string.Empty, StringComparison.Ordinal))
            )
        );
    }

    [Fact]
    public void A_folder_alone_is_meant_where_a_collection_is() =>
        Assert.All(CommandTree.Leaves.SelectMany(one => CommandTree.Own(one.Command)).Where(option => option.Name == "--in"), option =>
            Assert.Equal(NamedPaths.Kind.Folder, NamedPaths.Meant(option))
        );

    private static void IsOffered(string what, Symbol symbol, IEnumerable<string> offered)
    {
        var words = offered.ToList();
        var closed = Closed(symbol);
        if (closed.Length > 0)
        {
            Assert.Equal(closed.Order(StringComparer.Ordinal), words.Order(StringComparer.Ordinal));
        }
        else if (Names.TryGetValue(symbol.Name, out var name) && !New.Contains(what))
        {
            Assert.True(words.Contains(name), $"{what} offers {string.Join(", ", words)}");
        }

        if (NamedPaths.Meant(symbol) is null)
        {
            Assert.DoesNotContain(words, word => word.EndsWith('/') || File.Exists(word) || word == "collection.yaml");
        }
    }

    // The folder stands behind the cursor.
    private static string[] Offered(CollectionCopy copy, string typed)
    {
        var line = "ohmstead " + typed;
        var run = Run.Of($"[suggest:{line.Length}]", $"{line} --in {copy.Root}");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        return run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static string[] Closed(Symbol symbol) =>
        symbol is Option { Validators.Count: > 0 } or Argument { Validators.Count: > 0 }
            ? [.. symbol.GetCompletions(CompletionContext.Empty).Select(word => word.Label).Where(word => word.Length > 0)]
            : [];

    private static Command Find(string name) => CommandTree.Leaves.Single(one => string.Join(' ', one.Path) == name).Command;
}
