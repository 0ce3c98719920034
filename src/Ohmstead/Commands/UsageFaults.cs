using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Parsing;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;

namespace Ohmstead.Commands;

/// <summary>What is wrong with the words of a command line, each with what to write in its place.</summary>
/// <param name="parsed">The words as the library reads them.</param>
/// <param name="words">The words as they were typed.</param>
internal sealed class UsageFaults(ParseResult parsed, IReadOnlyList<string> words)
{
    private const string OptionStart = "--";
    private const string Dashes = "-–—‐‑−";
    private static readonly string[] Arrived = ["arrived", "delivered", "here"];
    private static readonly char[] LineBreaks = ['\r', '\n', '\t'];

    private readonly Command command = parsed.CommandResult.Command;

    /// <summary>
    /// Options that stand where a value should, which the library takes for the value: the note "--by", the kind of part "--kind". Nothing
    /// is written of a line that has one.
    /// </summary>
    public IReadOnlyList<string> Strays =>
        [.. Swallowed().Concat(Unknown()).Concat(Valued()).Concat(Pieces()).Distinct(StringComparer.Ordinal).Take(1)];

    /// <summary>All that is wrong, one line each.</summary>
    public IEnumerable<string> All()
    {
        if (Strays is { Count: > 0 } strays)
        {
            return strays;
        }

        if (Twice() is { } twice)
        {
            return [twice];
        }

        // One word at a time: what comes behind a missing word is missing too.
        var missing = parsed
            .Errors.Select(fault => fault.SymbolResult)
            .OfType<ArgumentResult>()
            .Where(result => result.Tokens.Count == 0 && result.Argument.Arity.MinimumNumberOfValues > 0)
            .MinBy(result => result.Parent is OptionResult);
        return missing switch
        {
            { Parent: OptionResult option } => [Lacking(option)],
            { Argument: var argument } => [$"{argument.Name} is missing: {FirstSentence(argument.Description)}"],
            null => parsed.Errors.Select(Words).Distinct(StringComparer.Ordinal),
        };
    }

    // A value may begin with two hyphens where it is tied to its option, --note=--x, or stands behind a lone --.
    private IEnumerable<string> Swallowed() =>
        from option in parsed.CommandResult.Children.OfType<OptionResult>()
        from token in option.Tokens
        let name = option.Option.Name
        let next = words.SkipWhile(word => word != name).ElementAtOrDefault(2)
        where IsOption(token.Value) || (token.Value == "=" && next is not null)
        select token.Value == "=" ? $"{name} has '=' for its value; write {name} {Shown(next!)}"
        : command.Options.Any(known => known.Name == token.Value)
            ? $"{name} has no value before '{token.Value}': {FirstSentence(option.Option.Description)}"
        : $"{name} has no value before '{token.Value}'; a value that begins so is written {name}={Shown(token.Value)}";

    private IEnumerable<string> Unknown() =>
        from word in parsed
            .CommandResult.Children.OfType<ArgumentResult>()
            .SelectMany(argument => argument.Tokens)
            .Select(token => token.Value)
            .Concat(parsed.UnmatchedTokens)
        let name = word.Split('=')[0]
        let near = Nearest.To(name, command.Options.Where(option => !option.Hidden).Select(option => option.Name))
        where IsOption(word) || (IsDashed(word) && near is not null)
        select Nearest.Told($"{command.Name} has no option '{name}'", near);

    // -lifted, and what a word processor makes of two hyphens. A figure or the name of a rail may begin with a minus.
    private bool IsDashed(string word) =>
        word.Length > 2
        && Dashes.Contains(word[0], StringComparison.Ordinal)
        && char.IsAsciiLetter(word.TrimStart([.. Dashes]) is [var first, ..] ? first : ' ')
        && words.TakeWhile(typed => typed != OptionStart).Contains(word);

    private IEnumerable<string> Pieces() => new SurplusWords(parsed, words).Fault() is { } fault ? [fault] : [];

    private string? Twice() =>
        (
            from option in parsed.CommandResult.Children.OfType<OptionResult>()
            where option.Tokens.Count > 1 && option.Option.Arity.MaximumNumberOfValues == 1
            let given = string.Join(" and ", option.Tokens.Select(token => $"'{token.Value}'"))
            select $"{option.Option.Name} is given {option.Tokens.Count} times, {given}; {Once(option)}"
        ).FirstOrDefault();

    // Two people at the bench stand in one value; of anything else one is meant, and which only the reader knows.
    private static string Once(OptionResult option) =>
        option.Option.Name == "--by"
            ? $"write it once; for two people write --by \"{string.Join(", ", option.Tokens.Select(token => token.Value))}\""
            : "write the one that is meant";

    // As a shell takes it.
    private static string Shown(string value) => value.Any(char.IsWhiteSpace) ? $"\"{value}\"" : value;

    // The library takes the switch for given, --trial=no for --trial, and what stands behind the sign for a word by itself.
    private IEnumerable<string> Valued() =>
        from word in words.TakeWhile(typed => typed != OptionStart)
        let sign = word.IndexOf('=', StringComparison.Ordinal)
        where sign > 0 && !bool.TryParse(word.AsSpan(sign + 1), out _)
        where command.Options.Any(option => option.ValueType == typeof(bool) && option.Name == word[..sign])
        select $"{word[..sign]} takes no value; '{word[(sign + 1)..]}' was given";

    private bool IsOption(string word) =>
        word.Length > OptionStart.Length
        && word.StartsWith(OptionStart, StringComparison.Ordinal)
        && words.TakeWhile(typed => typed != OptionStart).Contains(word);

    private string Words(ParseError fault)
    {
        if (fault.SymbolResult is OptionResult { Tokens: [], Option.Arity.MinimumNumberOfValues: > 0 } bare)
        {
            return Lacking(bare);
        }

        var (given, name, type, words) = fault.SymbolResult switch
        {
            OptionResult { Tokens: [var token, ..] } option => (
                token.Value,
                option.Option.Name,
                option.Option.ValueType,
                Listed(option.Option)
            ),
            ArgumentResult { Tokens: [var token, ..] } argument => (
                token.Value,
                NameOf(argument),
                argument.Parent is OptionResult own ? own.Option.ValueType : argument.Argument.ValueType,
                Listed(argument.Argument)
            ),
            _ => (string.Empty, string.Empty, typeof(string), []),
        };
        if (words.Length > 0 && !words.Contains(given) && fault.Message.Contains($"'{given}'", StringComparison.Ordinal))
        {
            if (name == "STATE" && Arrived.Contains(given, StringComparer.OrdinalIgnoreCase) && words.Contains("received"))
            {
                return $"'{given}' is no STATE; when all of it came write received, when a part of it came write came-in-part";
            }

            return Nearest.Told($"'{given}' is no {name}", Nearest.To(given, words))
                + $"; it is one of {string.Join(", ", words)}{Order(name)}";
        }

        // What the library cannot turn into a value it tells by the name of a type, which says nothing to who typed it.
        if (fault.Message.Contains($"'{type}'", StringComparison.Ordinal))
        {
            var plain = Nullable.GetUnderlyingType(type) ?? type;
            return plain == typeof(int)
                ? $"{name}: '{given}' is no whole number"
                    + (
                        CountText.Meant(given) is { } meant
                            ? $"; write {(name.StartsWith('-') ? $"{name} " : string.Empty)}{meant}"
                            : ", such as 4"
                    )
                : $"{name}: '{given}' cannot be read";
        }

        // The library breaks a list of words into lines with tabs.
        var lines = fault.Message.Split(LineBreaks, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var plainly = string.Join(' ', lines);
        return plainly.Contains(name, StringComparison.Ordinal) ? plainly : $"{name}: {plainly}";
    }

    private static string Lacking(OptionResult result)
    {
        var fault = result.IdentifierToken is null ? "is missing" : "has no value";
        return $"{result.Option.Name} {fault}: {FirstSentence(result.Option.Description)}";
    }

    // Words in another order than the command takes them are a slip as frequent as a letter.
    private string Order(string name) =>
        command.Arguments.Count > 1 && command.Arguments.Any(argument => argument.Name == name)
            ? $"; the order is {string.Join(' ', command.Arguments.Select(argument => argument.Name))}"
            : string.Empty;

    // The value of an option is an argument of its own, which has no name to speak of.
    private static string NameOf(ArgumentResult argument) =>
        argument.Parent is OptionResult option ? option.Option.Name : argument.Argument.Name;

    // Completions that are computed, such as the numbers of the boards, are no closed list.
    private static string[] Listed(Symbol symbol) =>
        symbol is Argument { CompletionSources.Count: > 0 } or Option { CompletionSources.Count: > 0 }
            ? [.. symbol.GetCompletions(CompletionContext.Empty).Select(word => word.Label).Where(word => word.Length > 0)]
            : [];

    private static string FirstSentence(string? description)
    {
        var end = (description ?? string.Empty).IndexOf(". ", StringComparison.Ordinal);
        var sentence = end < 0 ? (description ?? string.Empty).TrimEnd('.') : description![..end];
        return sentence.Length == 0 ? sentence : char.ToLowerInvariant(sentence[0]) + sentence[1..];
    }
}
