using System.CommandLine;
using Ohmstead.Assessment.Reckoning;
using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Output;
using Ohmstead.Records.Findings;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Works out a rule of the library from figures given by hand.</summary>
internal sealed class CalculateCommand(Terminal terminal)
{
    private const string About = """
        Work out a rule at the bench: the value, the arithmetic with the figures put in, the source. Without RULE all rules are listed,
        without values the rule is explained. An estimate is no promise and a figure never permission to touch.

        Examples:
          ohmstead calculate
          ohmstead calculate esr
          ohmstead calculate esr capacitance=391uF tan-delta=0.2 frequency=100Hz
          ohmstead calculate discharge capacitance=470uF from=400V resistance=2k2 --form json
        """;

    public Command Build()
    {
        var name = new Argument<string?>("RULE")
        {
            CompletionSources = { Completions.Rules },
            Description = "The rule, such as esr; all of them when not given.",
            DefaultValueFactory = _ => null,
        };
        var values = new Argument<string[]>("NAME=VALUE")
        {
            CompletionSources = { Completions.Inputs },
            Description = "Its inputs, with their units, such as capacitance=391uF; the rule is explained when none is given.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var form = TextOrJson.Make();
        var command = new Command("calculate", About) { name, values, form };
        command.SetAction(parsed => Tell(parsed.GetValue(name), parsed.GetValue(values) ?? [], parsed.IsJson(form)));
        return command;
    }

    private int Tell(string? name, string[] values, bool json)
    {
        if (name is null)
        {
            (json ? (Action<TextWriter>)ReckonJson.WriteList : ReckonText.WriteList)(terminal.Out);
            return ExitCode.Clean;
        }

        if (ReckonCatalogue.Find(name) is not { } rule)
        {
            var near = Nearest.To(name, ReckonCatalogue.All.Select(known => known.Name));
            return Refuse(Nearest.Told($"there is no rule '{name}'", near), "ohmstead calculate", name, json);
        }

        if (values.Length == 0)
        {
            (json ? (Action<TextWriter, ReckonRule>)ReckonJson.WritePage : ReckonText.WritePage)(terminal.Out, rule);
            return ExitCode.Clean;
        }

        if (!rule.Answer(values).Is(out var answer, out var reason))
        {
            return Refuse(reason, $"ohmstead calculate {rule.Name} {ReckonText.Quoted(rule)}", rule.Name, json);
        }

        if (json)
        {
            ReckonJson.WriteAnswer(terminal.Out, rule, answer);
        }
        else
        {
            ReckonText.WriteAnswer(terminal.Out, answer, string.Empty);
        }

        return ExitCode.Clean;
    }

    // A program that asked for JSON gets one whole document whatever happens.
    private int Refuse(string reason, string example, string name, bool json)
    {
        if (json)
        {
            ReckonJson.WriteRefusal(terminal.Out, name, reason, example);
        }

        terminal.Error.WriteLine(Printable.Escape(reason));
        terminal.Error.WriteLine($"  = {example}");
        return ExitCode.Usage;
    }
}
