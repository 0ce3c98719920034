using System.CommandLine;
using System.CommandLine.Completions;
using Ohmstead.Running;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>What is missing on a command line, or cannot be read, is named in the words of the place. The cases are every argument and
/// every option that there is.</summary>
public sealed class UsageFaultsTests
{
    private const string Rubbish = "?rubbish?";
    private static readonly string[] Machine =
    [
        "System.",
        "Nullable",
        "Int32",
        "Exception",
        "Boolean",
        "Required argument missing",
        "type '",
    ];

    public static TheoryData<string> Names { get; } = new(CommandTree.Leaves.Select(one => string.Join(' ', one.Path)));

    [Theory]
    [MemberData(nameof(Names))]
    public void An_argument_that_is_left_out_is_named(string name)
    {
        var (path, command) = Find(name);
        var before = new List<string>();
        foreach (var argument in command.Arguments.TakeWhile(argument => argument.Arity.MinimumNumberOfValues > 0))
        {
            AreTold(Run.Of([.. path, .. before]), $"{argument.Name} is missing: ");
            before.Add(Right(argument));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void An_option_without_its_value_is_named(string name)
    {
        var (path, command) = Find(name);
        foreach (var option in CommandTree.Own(command).Where(option => option.Arity.MinimumNumberOfValues > 0))
        {
            AreTold(Run.Of([.. path, .. command.Arguments.Select(Right), option.Name]), $"{option.Name} has no value: ");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void An_option_with_a_value_that_is_none_is_named(string name)
    {
        var (path, command) = Find(name);
        foreach (var option in CommandTree.Own(command).Where(option => !IsAnyText(option)))
        {
            AreTold(Run.Of([.. path, .. command.Arguments.Select(Right), $"{option.Name}={Rubbish}"]), option.Name);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_word_that_is_none_of_a_closed_list_is_told_with_the_name_of_the_argument(string name)
    {
        var (path, command) = Find(name);
        foreach (var argument in command.Arguments.Where(argument => argument.Validators.Count > 0))
        {
            var words = command.Arguments.Select(one => one == argument ? Rubbish : Right(one));
            AreTold(Run.Of([.. path, .. words]), argument.Name.ToLowerInvariant());
        }
    }

    [Fact]
    public void There_are_cases()
    {
        Assert.InRange(
            CommandTree.Leaves.Sum(one => one.Command.Arguments.Count(argument => argument.Arity.MinimumNumberOfValues > 0)),
            30,
            300
        );
        Assert.InRange(CommandTree.Leaves.Sum(one => CommandTree.Own(one.Command).Count(option => !IsAnyText(option))), 50, 500);
    }

    [Theory]
    [InlineData("check --workers many", "--workers: 'many' is no whole number, such as 4")]
    [InlineData("check --strict=maybe", "--strict takes no value; 'maybe' was given")]
    [InlineData("lot L-031 fuse --quantity ten", "--quantity: 'ten' is no whole number; write --quantity 10")]
    [InlineData(
        "enter SP-0007 C1",
        "VALUE is missing: what was read, with its unit: 391uF 1.4ohm 120Hz, pass, open, over 20Mohm, or key=value"
    )]
    [InlineData("work SP-0007 washed --lot", "--lot has no value: the lot that the new part came from")]
    public void It_is_told_in_plain_words(string typed, string told) => Assert.Equal(told, Run.Of(typed.Split(' ')).Error.Split('\n')[0]);

    private static void AreTold(Run run, string name)
    {
        Assert.Equal(ExitCode.Usage, run.Exit);
        Assert.Contains(name, run.Error, StringComparison.OrdinalIgnoreCase);
        Assert.All(Machine, word => Assert.DoesNotContain(word, run.Error, StringComparison.OrdinalIgnoreCase));
    }

    private static (string[] Path, Command Command) Find(string name) => CommandTree.All.Single(one => string.Join(' ', one.Path) == name);

    // What a command line itself can refuse: figures, days, switches, words of a closed list.
    private static bool IsAnyText(Option option) =>
        (option.ValueType == typeof(string) || option.ValueType == typeof(string[])) && option.Validators.Count == 0;

    private static string Right(Argument argument) => Words(argument) is [var first, ..] ? first : "x";

    private static string[] Words(Symbol symbol) =>
        [.. symbol.GetCompletions(CompletionContext.Empty).Select(word => word.Label).Where(word => word.Length > 0)];
}
