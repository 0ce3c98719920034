using System.CommandLine;
using System.Reflection;
using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Output;
using Ohmstead.Records.Findings;

namespace Ohmstead.Commands;

/// <summary>Explains one check, offline.</summary>
internal sealed class ExplainCommand(Terminal terminal)
{
    public Command Build()
    {
        var check = new Argument<string?>("CHECK")
        {
            Description = "The name of a check, as printed behind a finding; all of them with their summaries when not given.",
            DefaultValueFactory = _ => null,
        };
        var command = new Command("explain", "Explain a check: why, a wrong and a right example, what to do.") { check };
        command.SetAction(parsed =>
        {
            var pages = Pages();
            if (parsed.GetValue(check) is not { } name)
            {
                var width = pages.Keys.Max(known => known.Length);
                foreach (var known in pages.Keys.Order(StringComparer.Ordinal))
                {
                    terminal.Out.WriteLine($"{known.PadRight(width)}  {Summary(Text(pages[known]))}");
                }

                return ExitCode.Clean;
            }

            if (!pages.TryGetValue(name, out var page))
            {
                var near = Nearest.To(name, pages.Keys.Order(StringComparer.Ordinal));
                terminal.Error.WriteLine(Nearest.Told($"there is no check '{Printable.Of(name)}'", near));
                return ExitCode.Usage;
            }

            terminal.Out.Write(Text(page));
            if (CheckEffects.Told(name) is { } effect)
            {
                terminal.Out.WriteLine($"\nWhat it does to the state: {effect}.");
            }

            return ExitCode.Clean;
        });
        return command;
    }

    // A page is named after its check (records) or after the class of its check (assessment); both end as the check's name.
    internal static Dictionary<string, (Assembly Assembly, string Resource)> Pages()
    {
        var pages = new Dictionary<string, (Assembly, string)>(StringComparer.Ordinal);
        foreach (var assembly in new[] { typeof(RecordChecks).Assembly, typeof(CheckCatalogue).Assembly, typeof(ExplainCommand).Assembly })
        {
            foreach (var resource in assembly.GetManifestResourceNames().Where(name => name.EndsWith(".md", StringComparison.Ordinal)))
            {
                var stem = resource[..^3];
                stem = stem[(stem.LastIndexOfAny(['.', '/']) + 1)..];
                pages[Hyphened(stem)] = (assembly, resource);
            }
        }

        return pages;
    }

    internal static string Text((Assembly Assembly, string Resource) page)
    {
        using var stream = page.Assembly.GetManifestResourceStream(page.Resource)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    // A page begins with its name, an empty line and its summary.
    private static string Summary(string page) => string.Join(' ', page.Split('\n').Skip(2).TakeWhile(line => line.Length > 0));

    private static string Hyphened(string name) =>
        string.Concat(
            name.Select((c, i) => char.IsAsciiLetterUpper(c) ? (i == 0 ? string.Empty : "-") + char.ToLowerInvariant(c) : c.ToString())
        );
}
