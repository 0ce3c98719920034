using System.CommandLine;
using System.CommandLine.Help;
using System.Text;
using Ohmstead.Commands;
using Ohmstead.Running;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Documents;

/// <summary>The reference of the commands, written from the commands themselves. OHMSTEAD_WRITE=1 writes it.</summary>
public sealed class CommandsPageTests
{
    // Defaults that hang on the machine or on the folder, in words.
    private static readonly Dictionary<string, string> ByCircumstance = new(StringComparer.Ordinal)
    {
        ["--workers"] = "as many as the machine has processors, at most 8",
        ["--in"] = "`records` where there is such a folder, else this folder",
    };

    [Fact]
    public void The_reference_of_commands_is_the_one_that_the_program_gives() => WrittenFile.IsCurrent("src/Ohmstead/COMMANDS.md", Page());

    [Fact]
    public void The_reference_names_every_command_argument_and_option()
    {
        var page = Page();
        using var terminal = new Terminal(TextWriter.Null, TextWriter.Null, showsProgress: false);
        using var interruption = new Interruption();
        foreach (var (path, command) in CommandLine.Commands(terminal, interruption).SelectMany(one => Below(one.Make(), one.Name)))
        {
            Assert.Contains($"# ohmstead {path}\n", page, StringComparison.Ordinal);
            Assert.All(command.Options.Where(option => option is not HelpOption), option =>
                Assert.Contains($"`{option.Name}", page, StringComparison.Ordinal)
            );
            Assert.All(command.Arguments, argument => Assert.Contains($"`{argument.Name}", page, StringComparison.Ordinal));
        }
    }

    private static string Page()
    {
        var page = new StringBuilder(
            $"""
            # Commands

            Written by the tests from the program; OHMSTEAD_WRITE=1 writes it anew. `ohmstead COMMAND --help` tells the same on the screen.

            | Exit code | Means |
            |---|---|
            | {ExitCode.Clean} | nothing wrong; warnings are allowed unless `--strict` |
            | {ExitCode.Findings} | findings in records; with `tidy --check`, a file that is not tidy |
            | {ExitCode.Usage} | wrong command line, or nothing to look at |
            | {ExitCode.Incomplete} | incomplete: something could not be read or written |
            | {ExitCode.Bug} | a bug of the program |
            | 129, 130, 143 | hung up, interrupted, told to end |

            """
        );
        using var terminal = new Terminal(TextWriter.Null, TextWriter.Null, showsProgress: false);
        using var interruption = new Interruption();
        foreach (var group in CommandLine.Groups(terminal, interruption))
        {
            page.Append("\n## ").Append(group.Title).Append('\n');
            foreach (var (path, command) in group.Commands.SelectMany(one => Below(one.Make(), one.Name)))
            {
                Write(page, path, command);
            }
        }

        return page.ToString().ReplaceLineEndings("\n");
    }

    private static void Write(StringBuilder page, string path, Command command)
    {
        var text = HelpText.Parse(command.Description);
        page.Append($"\n### ohmstead {path}\n\n{text.What}\n");
        var rows = command
            .Arguments.Select(argument =>
                (
                    Name: $"`{argument.Name}`{CountOf(argument.Arity)}",
                    What: argument.Description,
                    Default: argument.HasDefaultValue ? Told(argument.Name, argument.GetDefaultValue()) : string.Empty
                )
            )
            .Concat(
                command
                    .Options.Where(option => option is not HelpOption)
                    .Select(option =>
                        (
                            Name: $"`{string.Join(", ", option.Aliases.Prepend(option.Name))}{Value(option)}`",
                            What: option.Description,
                            Default: option.HasDefaultValue ? Told(option.Name, option.GetDefaultValue()) : string.Empty
                        )
                    )
            )
            .ToList();
        if (rows.Count > 0)
        {
            page.Append("\n| Word | What it is | Otherwise |\n|---|---|---|\n");
            foreach (var row in rows)
            {
                page.Append(
                    $"| {row.Name} | {(row.What ?? string.Empty).Replace("|", "\\|", StringComparison.Ordinal)} | {row.Default} |\n"
                );
            }
        }

        if (text.Examples.Length > 0)
        {
            page.Append("\n```sh\n");
            foreach (var line in text.Examples.Split('\n').Skip(1))
            {
                page.Append(line.Trim()).Append('\n');
            }

            page.Append("```\n");
        }
    }

    // A switch takes no value; what has a name for its value says it, and else the value is a word of the description.
    private static string CountOf(ArgumentArity arity) =>
        arity.MaximumNumberOfValues == 1 ? string.Empty
        : arity.MaximumNumberOfValues < 10 ? $", up to {arity.MaximumNumberOfValues}"
        : ", one or more";

    private static string Value(Option option) =>
        option.ValueType == typeof(bool) ? string.Empty : $" {option.HelpName ?? option.Name.TrimStart('-').ToUpperInvariant()}";

    private static string Told(string name, object? value) =>
        ByCircumstance.TryGetValue(name, out var words)
            ? words
            : value switch
            {
                null or false or "" => string.Empty,
                string[] many => $"`{string.Join(' ', many)}`",
                string or int => $"`{value}`",
                _ => string.Empty,
            };

    private static IEnumerable<(string Path, Command Command)> Below(Command command, string path) =>
        command.Subcommands.SelectMany(below => Below(below, $"{path} {below.Name}")).Prepend((path, command));
}
