using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Parsing;
using System.Globalization;

namespace Ohmstead.Commands;

/// <summary>Words of a command line that belong together and stand without their quotes, or in another order than the command takes
/// them.</summary>
/// <param name="parsed">The words as the library reads them.</param>
/// <param name="words">The words as they were typed.</param>
internal sealed class SurplusWords(ParseResult parsed, IReadOnlyList<string> words)
{
    private const int MostTogether = 4;
    private const string Curly = "“”„‘’\"'";

    // Options whose value is told in words.
    private static readonly string[] Told =
    [
        "--note",
        "--with",
        "--kept",
        "--blocks",
        "--because",
        "--at",
        "--to",
        "--owner",
        "--from",
        "--price",
    ];

    private readonly Command command = parsed.CommandResult.Command;
    private readonly string[] path = [.. Path(parsed)];

    private readonly string[] said =
    [
        .. parsed.CommandResult.Children.OfType<ArgumentResult>().SelectMany(result => result.Tokens).Select(token => token.Value),
        .. parsed.UnmatchedTokens,
    ];

    /// <summary>What is wrong, with what to write; null where nothing of this kind is.</summary>
    public string? Fault() => BehindOption() ?? InPieces() ?? InOtherOrder() ?? TooMany();

    // --kept bag 7, --note reads low: what stands behind the value belongs to it.
    private string? BehindOption()
    {
        var isSaid = 0;
        var needed = command.Arguments.Count(argument => argument.Arity.MinimumNumberOfValues > 0);
        for (var at = path.Length; at < words.Count && words[at] != "--"; at++)
        {
            if (Named(words[at]) is not { } option)
            {
                isSaid += words[at].StartsWith("--", StringComparison.Ordinal) ? 0 : 1;
                continue;
            }

            if (option.ValueType == typeof(bool) || words[at].Contains('=', StringComparison.Ordinal))
            {
                continue;
            }

            string[] behind = [.. words.Skip(at + 2).TakeWhile(word => !word.StartsWith('-'))];
            if (option.AllowMultipleArgumentsPerToken)
            {
                at += behind.Length + 1;
                continue;
            }

            at++;
            if (
                behind.Length > 0
                && isSaid >= needed
                && (
                    parsed.UnmatchedTokens.Contains(behind[0])
                    || (Told.Contains(option.Name) && char.IsLetter(behind[0][0]) && !behind[0].Contains('=', StringComparison.Ordinal))
                )
            )
            {
                return $"{option.Name} takes one value, and '{string.Join(' ', behind)}' stands after it; write {option.Name} "
                    + Quoted([words[at], .. behind]);
            }
        }

        return null;
    }

    // made safe, metal film resistor: a word of the list in pieces.
    private string? InPieces() =>
        (
            from place in Enumerable.Range(0, Math.Min(command.Arguments.Count, said.Length))
            let list = Listed(command.Arguments[place])
            where list.Length > 0 && !list.Contains(said[place])
            from count in Enumerable.Range(2, MostTogether - 1)
            let joined = string.Join(' ', said.Skip(place).Take(count))
            where list.Contains(joined)
            select $"{command.Arguments[place].Name} is one word here, so it stands in quotes; write \"{joined}\""
        ).FirstOrDefault();

    // The word of a list stands where another word belongs.
    private string? InOtherOrder()
    {
        // Where the last one takes any number of words, those before it have their places all the same.
        var single = command.Arguments.TakeWhile(argument => argument.Arity.MaximumNumberOfValues == 1).Count();
        if (single < command.Arguments.Count - 1 || (single == command.Arguments.Count && said.Length > single))
        {
            return null;
        }

        for (var place = 0; place < Math.Min(said.Length, single); place++)
        {
            var argument = command.Arguments[place];
            var other = Array.FindIndex(said, 0, Math.Min(said.Length, single), word => Fits(argument, word));
            if (!Fits(argument, said[place]) && other >= 0)
            {
                string[] inOrder = [.. said];
                (inOrder[place], inOrder[other]) = (inOrder[other], inOrder[place]);
                return $"'{said[place]}' is no {command.Arguments[place].Name}; the order is {Names}: write {Line(inOrder)}";
            }
        }

        return null;
    }

    private static bool Fits(Argument argument, string word) =>
        argument.ValueType == typeof(int)
            ? int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out _)
            : Listed(argument) is var list && (list.Length == 0 || list.Contains(word));

    private string? TooMany()
    {
        string[] surplus = [.. parsed.UnmatchedTokens.Where(word => !word.StartsWith('-'))];
        if (surplus.Length == 0 || command.Arguments.Count == 0)
        {
            return surplus.Length == 0 ? null : $"{command.Name} takes no '{surplus[0]}'; leave it out";
        }

        if (OfAnAccuracy(surplus) is { } accuracy)
        {
            return accuracy;
        }

        string[] meant = [.. Meant(said.Length - command.Arguments.Count)];
        var curly = said.FirstOrDefault(word => Curly.Contains(word[0], StringComparison.Ordinal));
        return meant.Length == 0
            ? $"{command.Name} takes {Names}, and '{surplus[0]}' is one word more; leave it out, or write in quotes what belongs together"
            : (
                curly is null
                    ? $"{command.Name} takes {Names}, and words that belong together stand in quotes; write "
                    : $"a shell knows no quotes but \" and ', so '{curly}' is a word by itself; write "
            ) + string.Join(" or ", meant);
    }

    // What an instrument is good for is told by an option: voltage error=5% is no description.
    private string? OfAnAccuracy(string[] surplus)
    {
        var first = Array.FindIndex(said, word => word.Contains('=', StringComparison.Ordinal));
        return first < 1 || !surplus.Contains(said[first]) || Named("--accuracy") is null
            ? null
            : $"'{said[first]}' is of what it is good for, which stands behind --accuracy; write --accuracy "
                + Quoted([.. said.Skip(first - 1)]);
    }

    // Each argument in turn takes the words that are too many, where the others then have a word of theirs.
    private IEnumerable<string> Meant(int more) =>
        from place in Enumerable.Range(1, command.Arguments.Count - 1)
        let joined = Together([.. said.Skip(place).Take(more + 1)])
        let tried = (string[])[.. said.Take(place), joined, .. said.Skip(place + more + 1)]
        where tried.Index().All(one => Listed(command.Arguments[one.Index]) is var list && (list.Length == 0 || list.Contains(one.Item)))
        where command.Arguments[place].Name != "PLACE" || AreAlike(said.AsSpan(place, more + 1))
        where command.Arguments[place - 1].Name != "PLACE" || !(LooksLikePlace(said[place - 1]) && LooksLikePlace(said[place]))
        select Line(tried);

    // References, or words: C1 C2, and left edge.
    private static bool AreAlike(ReadOnlySpan<string> places)
    {
        foreach (var place in places)
        {
            if (LooksLikePlace(place) != LooksLikePlace(places[0]))
            {
                return false;
            }
        }

        return true;
    }

    private static bool LooksLikePlace(string word) =>
        word.Length is > 1 and < 6 && char.IsAsciiLetterUpper(word[0]) && char.IsAsciiDigit(word[^1]);

    private string Names => string.Join(' ', command.Arguments.Select(argument => argument.Name));

    private string Line(string[] tried) => string.Join(' ', [.. path, .. tried.Select(word => Quoted([word]))]);

    private static string Together(string[] pieces) => string.Join(' ', pieces).Trim([.. Curly]);

    private static string Quoted(string[] pieces)
    {
        var text = Together(pieces);
        return text.Contains(' ', StringComparison.Ordinal) ? $"\"{text}\"" : text;
    }

    private Option? Named(string word) =>
        word.StartsWith('-')
            ? command.Options.FirstOrDefault(option => option.Name == word.Split('=')[0] || option.Aliases.Contains(word.Split('=')[0]))
            : null;

    /// <summary>The words of a closed list; none where any word is taken. Completions that are computed, such as the numbers of the
    /// boards, are no closed list.</summary>
    internal static string[] Listed(Symbol symbol) =>
        symbol is Argument { Validators.Count: > 0 }
            ? [.. symbol.GetCompletions(CompletionContext.Empty).Select(word => word.Label).Where(word => word.Length > 0)]
            : [];

    private static Stack<string> Path(ParseResult parsed)
    {
        var names = new Stack<string>();
        for (SymbolResult? result = parsed.CommandResult; result is CommandResult { Command: not RootCommand } one; result = one.Parent)
        {
            names.Push(one.Command.Name);
        }

        return names;
    }
}
