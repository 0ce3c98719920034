using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Tells how the program is used: an overview of all commands, a line for each, or all about one of them.</summary>
/// <remarks>What is to be typed is never broken at the end of a line: somebody will copy it.</remarks>
/// <param name="about">What the program is, with examples.</param>
/// <param name="groups">All commands.</param>
/// <param name="width">How many characters a line has.</param>
internal sealed class Help(string about, IReadOnlyList<CommandGroup> groups, int width) : SynchronousCommandLineAction
{
    private readonly HelpAction ofOne = new() { MaxWidth = width };

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        var (command, output) = (parseResult.CommandResult.Command, parseResult.InvocationConfiguration.Output);
        if (command is RootCommand)
        {
            Overview(command, output);
            return ExitCode.Clean;
        }

        var text = HelpText.Parse(command.Description);
        command.Description = text.What;
        foreach (var below in command.Subcommands)
        {
            below.Description = HelpText.Parse(below.Description).InShort();
        }

        var exit = ofOne.Invoke(parseResult);
        if (text.Examples.Length > 0)
        {
            output.WriteLine(text.Examples);
        }

        return exit;
    }

    /// <summary>Writes the overview.</summary>
    /// <param name="root">The program, with all its commands.</param>
    /// <param name="output">Where to.</param>
    public void Overview(Command root, TextWriter output)
    {
        var text = HelpText.Parse(about);
        output.WriteLine(text.What);
        var column = root.Subcommands.Max(command => command.Name.Length) + 4;
        foreach (var group in groups)
        {
            output.WriteLine();
            output.WriteLine(group.Title);
            foreach (var command in group.Commands.Select(known => root.Subcommands.First(command => command.Name == known.Name)))
            {
                output.WriteLine($"  {command.Name}".PadRight(column) + HelpText.Parse(command.Description).InShort());
            }
        }

        output.WriteLine();
        output.WriteLine(text.Examples);
        output.WriteLine();
        output.WriteLine("ohmstead COMMAND --help tells all about one of them, ohmstead --version which version this is.");
    }
}
