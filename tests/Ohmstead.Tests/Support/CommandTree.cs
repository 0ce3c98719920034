using System.CommandLine;
using System.CommandLine.Help;
using Ohmstead.Running;

namespace Ohmstead.Tests.Support;

/// <summary>Every command of the program, out of the program itself.</summary>
internal static class CommandTree
{
    /// <summary>Every command with the words that call it, groups of commands among them.</summary>
    public static IReadOnlyList<(string[] Path, Command Command)> All { get; } = Read();

    /// <summary>The commands that do something by themselves.</summary>
    public static IEnumerable<(string[] Path, Command Command)> Leaves => All.Where(one => one.Command.Subcommands.Count == 0);

    /// <summary>The options of a command that are its own.</summary>
    public static IEnumerable<Option> Own(Command command) => command.Options.Where(option => option is not HelpOption && !option.Hidden);

    private static List<(string[] Path, Command Command)> Read()
    {
        using var terminal = new Terminal(TextWriter.Null, TextWriter.Null, showsProgress: false);
        using var interruption = new Interruption();
        return [.. CommandLine.Commands(terminal, interruption).SelectMany(command => Below(command.Make(), [command.Name]))];
    }

    private static IEnumerable<(string[] Path, Command Command)> Below(Command command, string[] path) =>
        command.Subcommands.SelectMany(below => Below(below, [.. path, below.Name])).Prepend((path, command));
}
