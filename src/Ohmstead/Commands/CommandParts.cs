using System.CommandLine;

namespace Ohmstead.Commands;

/// <summary>Puts a command together.</summary>
internal static class CommandParts
{
    /// <summary>A command that takes arguments and options, in this order.</summary>
    public static Command Build(string name, string description, IEnumerable<Symbol> symbols)
    {
        var command = new Command(name, description);
        foreach (var symbol in symbols)
        {
            if (symbol is Argument argument)
            {
                command.Arguments.Add(argument);
            }
            else
            {
                command.Options.Add((Option)symbol);
            }
        }

        return command;
    }
}
