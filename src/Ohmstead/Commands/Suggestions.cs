using System.CommandLine;
using System.CommandLine.Completions;
using System.Globalization;

namespace Ohmstead.Commands;

/// <summary>
/// What may stand at the cursor of a line that somebody types: by position, so that a list of lots is offered behind --lot and nowhere
/// else, and names of files where a file is meant and nowhere else.
/// </summary>
/// <param name="root">The program with all its commands.</param>
internal sealed class Suggestions(RootCommand root)
{
    private const string Lone = "--";
    private const string Asked = "[suggest:";

    /// <summary>The cursor that a shell asks about as '[suggest:N]', or null for any other word.</summary>
    public static int? CursorIn(string word) =>
        word.StartsWith(Asked, StringComparison.Ordinal)
        && word.EndsWith(']')
        && int.TryParse(
            word.AsSpan(Asked.Length, word.Length - Asked.Length - 1),
            NumberStyles.None,
            CultureInfo.InvariantCulture,
            out var n
        )
            ? n
            : null;

    /// <summary>The words that may stand there.</summary>
    public IReadOnlyList<string> For(HalfTyped typed)
    {
        Command command = root;
        Option? open = null;
        var (position, isWords) = (0, false);
        var said = new List<Option>();
        foreach (var word in typed.Before)
        {
            if (!isWords && word == Lone)
            {
                (isWords, open) = (true, null);
            }
            else if (!isWords && word.StartsWith('-') && Named(command, word.Split('=')[0]) is { } option)
            {
                said.Add(option);
                open = TakesValue(option) && !word.Contains('=', StringComparison.Ordinal) ? option : null;
            }
            else if (open is not null)
            {
                open = open.AllowMultipleArgumentsPerToken ? open : null;
            }
            else if (position == 0 && command.Subcommands.FirstOrDefault(below => below.Name == word) is { } below)
            {
                command = below;
            }
            else
            {
                position++;
            }
        }

        // An option that has no value yet would take the next word for it; and the library leaves out of a closed list what does not hold
        // the last word, so that one is empty.
        string[] words = [.. typed.Before.SkipLast(open is null ? 0 : 1), .. typed.Behind, string.Empty];
        var context = root.Parse(words, new ParserConfiguration { ResponseFileTokenReplacer = null }).GetCompletionContext();
        var all =
            open is not null && (isWords || !typed.Current.StartsWith('-')) ? Values(open, context, typed.Current)
            : !isWords && typed.Current.StartsWith('-') ? Tied(command, context, typed.Current, said)
            : Words(command, position, context, typed.Current, isWords ? null : said);
        // A name from a record or a folder of somebody else goes into this person's shell: none that breaks the line or moves the cursor.
        return
        [
            .. all.Where(word => word.StartsWith(typed.Current, StringComparison.Ordinal) && !word.Any(char.IsControl))
                .Distinct(StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<string> Words(
        Command command,
        int position,
        CompletionContext context,
        string current,
        IReadOnlyList<Option>? said
    )
    {
        if (command.Subcommands.Count > 0)
        {
            return position == 0 ? command.Subcommands.Where(below => !below.Hidden).Select(below => below.Name) : [];
        }

        // A last argument that takes many words goes on.
        var argument =
            position < command.Arguments.Count ? command.Arguments[position]
            : command.Arguments is [.., { Arity.MaximumNumberOfValues: > 1 } many] ? many
            : null;
        return argument is not null ? Values(argument, context, current)
            : said is not null ? Options(command, said)
            : [];
    }

    // An option's name, or the value that is tied to it: --sort=title.
    private static IEnumerable<string> Tied(Command command, CompletionContext context, string current, IReadOnlyList<Option> said)
    {
        var sign = current.IndexOf('=', StringComparison.Ordinal);
        return sign < 0 ? Options(command, said)
            : Named(command, current[..sign]) is { } option && TakesValue(option)
                ? Values(option, context, current[(sign + 1)..]).Select(value => current[..(sign + 1)] + value)
            : [];
    }

    // What was said is not offered again, but where it may be said several times.
    private static IEnumerable<string> Options(Command command, IReadOnlyList<Option> said) =>
        command
            .Options.Where(option => !option.Hidden && (!said.Contains(option) || option.Arity.MaximumNumberOfValues > 1))
            .Select(option => option.Name)
            .Order(StringComparer.Ordinal);

    private static IEnumerable<string> Values(Symbol symbol, CompletionContext context, string current) =>
        NamedPaths.Meant(symbol) is { } meant
            ? NamedPaths.Beginning(current, meant)
            : symbol.GetCompletions(context).Select(item => item.Label).Where(word => word.Length > 0);

    private static Option? Named(Command command, string name) =>
        command.Options.FirstOrDefault(option => option.Name == name || option.Aliases.Contains(name));

    private static bool TakesValue(Option option) => option.ValueType != typeof(bool) && option.Arity.MaximumNumberOfValues > 0;
}
