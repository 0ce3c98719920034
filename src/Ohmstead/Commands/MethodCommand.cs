using System.CommandLine;
using Ohmstead.Electronics.Methods;
using Ohmstead.Records.Findings;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Tells the usual values and cautions of a way of working.</summary>
internal sealed class MethodCommand(Terminal terminal)
{
    public Command Build()
    {
        var name = new Argument<string?>("METHOD")
        {
            HelpName = "METHOD",
            Description = "A method, such as isopropanol; all of them when not given.",
            DefaultValueFactory = _ => null,
        };
        name.CompletionSources.Add(_ =>
            MethodCatalogue.All.Select(method => new System.CommandLine.Completions.CompletionItem(method.Name))
        );
        var command = new Command(
            "method",
            """
            Tell the usual values and cautions of cleaning, drying, soldering or handling.

            Examples:
              ohmstead method
              ohmstead method drying
            """
        )
        {
            name,
        };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(name) is not { } wanted)
            {
                foreach (var method in MethodCatalogue.All)
                {
                    terminal.Out.WriteLine($"{method.Name}: {method.Title}");
                }

                return ExitCode.Clean;
            }

            if ((MethodCatalogue.All.FirstOrDefault(method => method.Name == wanted) ?? MethodCatalogue.In(wanted)) is { } known)
            {
                Tell(terminal, known);
                return ExitCode.Clean;
            }

            var near = Nearest.To(wanted, MethodCatalogue.All.Select(method => method.Name));
            terminal.Error.WriteLine(Printable.Escape(Nearest.Told($"there is no method '{wanted}'", near)));
            return ExitCode.Usage;
        });
        return command;
    }

    /// <summary>Tells one method.</summary>
    public static void Tell(Terminal terminal, WorkMethod method)
    {
        terminal.Out.WriteLine($"  {method.Name}: {method.Title}");
        foreach (var (of, value) in method.Values)
        {
            terminal.Out.WriteLine($"    {of}: {value}");
        }

        foreach (var caution in method.Cautions)
        {
            terminal.Out.WriteLine($"    caution: {caution}");
        }

        terminal.Out.WriteLine($"    source: {method.Source.Text}");
    }
}
