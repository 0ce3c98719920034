using System.Text.RegularExpressions;
using Ohmstead.Records.Model;

namespace Ohmstead.Bench;

/// <summary>What people type at the bench that is meant for a table, a record, a shell or another program, each with the text to write in
/// its stead. Nothing is done by itself.</summary>
/// <param name="board">The number of the board.</param>
/// <param name="known">The name of a place as the record has it, or null.</param>
/// <param name="instruments">The instruments of the collection.</param>
internal sealed partial class BenchSlips(string board, Func<string, string?> known, IReadOnlyCollection<string> instruments)
{
    private const string Program = "ohmstead";
    private const string Enter = "enter";

    // What other programs call what is done here.
    private static readonly Dictionary<string, string> Others = new(StringComparer.OrdinalIgnoreCase)
    {
        ["bye"] = "quit",
        ["end"] = "quit",
        ["stop"] = "quit",
        ["done"] = "quit",
        ["close"] = "quit",
        [":q"] = "quit",
        [":wq"] = "quit",
        ["skip"] = "next",
        ["continue"] = "next",
        ["n"] = "next",
        ["prev"] = "back",
        ["previous"] = "back",
        ["b"] = "back",
        ["todo"] = "left",
        ["list"] = "left",
        ["remaining"] = "left",
        ["delete"] = "undo",
        ["del"] = "undo",
        ["remove"] = "undo",
        ["oops"] = "undo",
        ["lifted"] = "out",
        ["out-of-circuit"] = "out",
        ["in-circuit"] = "in",
        ["h"] = "help",
    };

    private static readonly string[] OfTheShell =
    [
        "add",
        "ahead",
        "boards",
        "buy",
        "check",
        "correct",
        "drawer",
        "explain",
        "incoming",
        "lot",
        "marking",
        "method",
        "order",
        "orders",
        "photo",
        "preview",
        "reckon",
        "renumber",
        "report",
        "scrap",
        "sheet",
        "start",
        "take-in",
        "tidy",
        "whereabouts",
    ];

    private static readonly string[] OfBoards = ["correct", "photo", "sheet", "whereabouts"];

    /// <summary>What a line that is none of the bench is, and what to write; null where nothing is wrong with it as a whole.</summary>
    /// <param name="line">The line as it was typed.</param>
    /// <param name="words">Its words.</param>
    public string? Of(string line, string[] words) =>
        words.Length == 0 ? null
        : OfPrompt(line) is { } prompt ? prompt
        : OfRecord(line) is { } record ? record
        : BenchWords.Begun.Contains(words[0]) && words[0] != "with" ? null
        : OfTable(line) ?? OfShell(words) ?? OfPlace(words) ?? OfWord(words);

    // C1 [µF, Ω] > 312 1.4, copied with what stands before it.
    private static string? OfPrompt(string line)
    {
        var prompt = Prompt().Match(line);
        return prompt.Success
            ? $"this holds the prompt, too; write {prompt.Groups["place"].Value} {prompt.Groups["typed"].Value}".TrimEnd()
            : null;
    }

    // - { part: C1, capacitance: 312 µF }, copied out of a record.
    private static string? OfRecord(string line)
    {
        if (line.TrimStart('-', ' ') is not ['{', ..] flow)
        {
            return null;
        }

        var pairs = Pair()
            .Matches(flow)
            .Select(pair => (Key: pair.Groups["key"].Value, Value: Tight(pair.Groups["value"].Value)))
            .ToArray();
        var place = pairs.FirstOrDefault(pair => pair.Key is "part" or "point").Value;
        return place is null
            ? "this is a line of a record; write what was read, such as C14 391 1.4"
            : $"this is a line of a record; write {place} "
                + string.Join(' ', pairs.Where(pair => pair.Key is not ("part" or "point")).Select(pair => $"{pair.Key}={pair.Value}"));
    }

    private string? OfTable(string line)
    {
        char[] signs =
            line.Contains('|', StringComparison.Ordinal) ? ['|']
            : line.Contains('\t', StringComparison.Ordinal) ? ['\t']
            : line.Contains(';', StringComparison.Ordinal) ? [';']
            : [','];
        string[] cells =
        [
            .. line.Split(signs, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Where(cell => cell.Length > 0),
        ];
        return cells.Length > 1 && (signs[0] == '|' || known(cells[0]) is not null)
            ? $"this is a row of a table; write {string.Join(' ', cells.Select(Tight))}"
            : null;
    }

    private string? OfShell(string[] words)
    {
        var isProgram = words[0] == Program;
        string[] rest = isProgram ? words[1..] : words;
        if (rest.Length > 0 && OfTheShell.Contains(rest[0]) && known(rest[0]) is null)
        {
            return $"'{rest[0]}' is a command of its own; end with quit, then write {Program} {string.Join(' ', OnBoard(rest))}";
        }

        if (!isProgram && rest is not [Enter, ..])
        {
            return null;
        }

        string[] meant = [.. rest.Where((word, at) => !(at == 0 && word == Enter) && word != board)];
        return meant.Length == 0
            ? $"the bench is the program already; write what was read, such as C14 391 1.4"
            : $"the bench takes the words without the command and the board; write {string.Join(' ', meant.Select(Quoted))}";
    }

    private string[] OnBoard(string[] words) =>
        OfBoards.Contains(words[0]) && !words.Contains(board) ? [words[0], board, .. words[1..]] : words;

    private string? OfPlace(string[] words)
    {
        var first = words[0];
        var end = first.AsSpan().IndexOfAny(":=");
        if (end > 0 && known(first[..end]) is { } named)
        {
            string[] rest = [.. words.Skip(1).Prepend(first[(end + 1)..]).Where(word => word is not ("" or "=" or ":"))];
            return $"the name of a place stands by itself; write {named} {string.Join(' ', rest)}".TrimEnd();
        }

        if (words.Length > 2 && words[1] is "=" or ":" && known(first) is { } alone)
        {
            return $"the name of a place stands by itself; write {alone} {string.Join(' ', words.Skip(2))}";
        }

        return words.Length > 1 && known(first) is null && known(first + words[1]) is { } parted && words[1].All(char.IsAsciiDigit)
            ? $"'{first} {words[1]}' is written together; write {string.Join(' ', words.Skip(2).Prepend(parted))}"
            : null;
    }

    private string? OfWord(string[] words)
    {
        var (first, more) = (words[0], words.Length > 1);
        if (known(first) is not null)
        {
            return null;
        }

        if (first == "with")
        {
            return words.Length == 2
                ? null
                : $"with takes one instrument, of these: {string.Join(", ", instruments)}; write with "
                    + (words.Skip(1).FirstOrDefault() ?? instruments.FirstOrDefault() ?? "bridge-1");
        }

        if (more && Vocabulary.Circuits.Means(first, out _))
        {
            return $"'{string.Join(' ', words)}' is one word here; write {first}";
        }

        if (more && first is "why" or "fit")
        {
            return words.Length == 2 ? null : $"{first} takes one place; write {first} {words[1]}";
        }

        return more && BenchWords.Alone.Contains(first) ? $"'{first}' stands alone; write {first}"
            : !more && Others.TryGetValue(first, out var ours) ? $"'{first}' is no word of the bench; write {ours}"
            : null;
    }

    private static string Quoted(string word) => word.Contains(' ', StringComparison.Ordinal) ? $"\"{word}\"" : word;

    private static string Tight(string value) => value.Replace(" ", string.Empty, StringComparison.Ordinal);

    [GeneratedRegex(
        "^\\s*(?<place>\\S+) \\[[^\\]]*\\] > (?<typed>.*)$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Prompt();

    [GeneratedRegex("(?<key>[a-z_]+): *(?<value>[^,{}]+?) *(?=[,}]|$)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Pair();
}
