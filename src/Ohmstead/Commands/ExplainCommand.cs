using System.CommandLine;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Collections;
using Ohmstead.Records.Findings;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Explains one check or one word, offline.</summary>
internal sealed class ExplainCommand(Terminal terminal)
{
    private readonly Argument<string[]> asked = new("WORD")
    {
        CompletionSources = { Completions.Explained },
        Description =
            "The name of a check, as printed after a finding, or a word of the records; all checks with their summaries when not given.",
        Arity = ArgumentArity.ZeroOrMore,
    };
    private readonly Option<bool> words = new("--words") { Description = "Tell all words of the glossary, a line each." };

    public Command Build()
    {
        var command = new Command(
            "explain",
            """
            Explain a check: why, a wrong and a right example, what to do. Or say what a word of the records means.

            Examples:
              ohmstead explain                   all checks, a line each
              ohmstead explain key-unknown       one of them
              ohmstead explain guard band        a word
              ohmstead explain --words           all words, a line each
            """
        )
        {
            asked,
            words,
        };
        command.SetAction(parsed =>
        {
            var name = string.Join(' ', parsed.GetValue(asked)!);
            if (name.Length == 0)
            {
                List(parsed.GetValue(words) ? [.. Glossary.All().Select(word => (word.Heading, word.Meaning))] : Checks());
                return ExitCode.Clean;
            }

            return Check(name) || Word(name) ? ExitCode.Clean : Unknown(name);
        });
        return command;
    }

    private bool Check(string name)
    {
        if (!CheckPages.All().TryGetValue(name, out var page))
        {
            return false;
        }

        terminal.Out.Write(CheckPages.Text(page));
        if (CheckEffects.Told(name) is { } effect)
        {
            terminal.Out.WriteLine($"\nWhat it does to the state: {effect}.");
        }

        return true;
    }

    private bool Word(string name)
    {
        if (Glossary.Find(Glossary.All(), name) is not { } word)
        {
            return false;
        }

        terminal.Out.WriteLine($"{word.Heading}: {word.Meaning}");
        return true;
    }

    private int Unknown(string name)
    {
        var known = CheckPages.All().Keys.Concat(Glossary.All().SelectMany(word => word.Names)).Order(StringComparer.Ordinal);
        terminal.Error.WriteLine(Printable.Escape(Nearest.Told($"there is no check and no word '{name}'", Nearest.To(name, known))));
        return ExitCode.Usage;
    }

    private void List(IReadOnlyList<(string Name, string Meaning)> lines)
    {
        var width = lines.Max(line => line.Name.Length);
        foreach (var (name, meaning) in lines)
        {
            terminal.Out.WriteLine($"{name.PadRight(width)}  {meaning}");
        }
    }

    private static IReadOnlyList<(string Name, string Meaning)> Checks()
    {
        var pages = CheckPages.All();
        return [.. pages.Keys.Order(StringComparer.Ordinal).Select(name => (name, Summary(CheckPages.Text(pages[name]))))];
    }

    // A page begins with its name, an empty line and its summary.
    private static string Summary(string page) => string.Join(' ', page.Split('\n').Skip(2).TakeWhile(line => line.Length > 0));
}
