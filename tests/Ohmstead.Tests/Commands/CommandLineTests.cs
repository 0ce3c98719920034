using Ohmstead.Running;

namespace Ohmstead.Tests.Commands;

/// <summary>Commands are made one by one, and each answers to the name it is made by.</summary>
public sealed class CommandLineTests
{
    [Fact]
    public void Every_command_has_the_name_it_is_asked_for_by_and_no_name_is_given_twice()
    {
        using var terminal = new Terminal(TextWriter.Null, TextWriter.Null, showsProgress: false);
        using var interruption = new Interruption();
        var commands = CommandLine.Commands(terminal, interruption);
        Assert.Equal(commands.Select(command => command.Name), commands.Select(command => command.Make().Name));
        Assert.Equal(commands.Count, commands.Select(command => command.Name).Distinct(StringComparer.Ordinal).Count());
    }
}
