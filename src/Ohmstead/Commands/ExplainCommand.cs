using System.CommandLine;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Collections;
using Ohmstead.Records.Findings;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Explains one check, offline.</summary>
internal sealed class ExplainCommand(Terminal terminal)
{
    public Command Build()
    {
        var check = new Argument<string?>("CHECK")
        {
            CompletionSources = { Completions.Checks },
            Description = "The name of a check, as printed behind a finding; all of them with their summaries when not given.",
            DefaultValueFactory = _ => null,
        };
        var command = new Command(
            "explain",
            """
            Explain a check: why, a wrong and a right example, what to do.

            Examples:
              ohmstead explain                   all checks, a line each
              ohmstead explain key-unknown       one of them
            """
        )
        {
            check,
        };
        command.SetAction(parsed =>
        {
            var pages = CheckPages.All();
            if (parsed.GetValue(check) is not { } name)
            {
                var width = pages.Keys.Max(known => known.Length);
                foreach (var known in pages.Keys.Order(StringComparer.Ordinal))
                {
                    terminal.Out.WriteLine($"{known.PadRight(width)}  {Summary(CheckPages.Text(pages[known]))}");
                }

                return ExitCode.Clean;
            }

            if (!pages.TryGetValue(name, out var page))
            {
                var near = Nearest.To(name, pages.Keys.Order(StringComparer.Ordinal));
                terminal.Error.WriteLine(Nearest.Told($"there is no check '{Printable.Escape(name)}'", near));
                return ExitCode.Usage;
            }

            terminal.Out.Write(CheckPages.Text(page));
            if (CheckEffects.Told(name) is { } effect)
            {
                terminal.Out.WriteLine($"\nWhat it does to the state: {effect}.");
            }

            return ExitCode.Clean;
        });
        return command;
    }

    // A page begins with its name, an empty line and its summary.
    private static string Summary(string page) => string.Join(' ', page.Split('\n').Skip(2).TakeWhile(line => line.Length > 0));
}
