using System.CommandLine;

namespace Ohmstead.Commands;

/// <summary>How a command writes: text for people, one JSON document for programs.</summary>
internal static class TextOrJson
{
    private const string Json = "json";

    /// <summary>The word that said so before there was one option for all commands; it is taken still.</summary>
    public const string Earlier = "--json";

    /// <summary>The option of all commands that write either.</summary>
    public static Option<string> Make()
    {
        var form = new Option<string>("--form")
        {
            Description = "How to write: text for people, json for programs.",
            DefaultValueFactory = _ => "text",
        };
        form.AcceptOnlyFromAmong("text", Json);
        return form;
    }

    /// <summary>Whether a program asks.</summary>
    public static bool IsJson(this ParseResult parsed, Option<string> form) => parsed.GetValue(form) == Json;

    /// <summary>A command line with the word of today for the earlier one; what stands behind a lone -- is no option.</summary>
    public static IReadOnlyList<string> OfToday(IReadOnlyList<string> words)
    {
        var options = words.TakeWhile(word => word != "--").Count();
        return words.Take(options).Contains(Earlier)
            ? [.. words.Select((word, at) => at < options && word == Earlier ? $"--form={Json}" : word)]
            : words;
    }
}
