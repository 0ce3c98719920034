using Ohmstead.Records.Findings;

namespace Ohmstead.Commands;

/// <summary>What somebody is told whose first word is no command: what is done here under another word, that the command comes first, or
/// which command is the nearest.</summary>
internal static class CommandWords
{
    private const string Program = "ohmstead";

    // What people call what a command does.
    private static readonly Dictionary<string, string> Ours = new(StringComparer.OrdinalIgnoreCase)
    {
        ["measure"] = "enter",
        ["reading"] = "enter",
        ["read"] = "enter",
        ["prove"] = "enter",
        ["proof"] = "enter",
        ["test"] = "enter",
        ["inspect"] = "found",
        ["see"] = "found",
        ["replace"] = "work",
        ["replaced"] = "work",
        ["repair"] = "work",
        ["solder"] = "work",
        ["clean"] = "work",
        ["wash"] = "work",
        ["list"] = "boards",
        ["ls"] = "boards",
        ["show"] = "why",
        ["status"] = "why",
        ["state"] = "why",
        ["new"] = "start",
        ["create"] = "start",
        ["init"] = "start collection",
        ["import"] = "take-in",
        ["load"] = "take-in",
        ["validate"] = "check",
        ["lint"] = "check",
        ["verify"] = "check",
        ["build"] = "report",
        ["publish"] = "report",
        ["html"] = "report",
        ["serve"] = "preview",
        ["watch"] = "preview",
        ["format"] = "tidy",
        ["fmt"] = "tidy",
        ["delete"] = "remove",
        ["undo"] = "remove",
        ["rename"] = "renumber",
        ["lend"] = "whereabouts",
        ["lent"] = "whereabouts",
        ["loan"] = "whereabouts",
        ["move"] = "whereabouts",
        ["sell"] = "whereabouts",
        ["stock"] = "drawer",
        ["lots"] = "drawer",
        ["shopping"] = "buy",
        ["calendar"] = "ahead",
        ["due"] = "ahead",
        ["picture"] = "photo",
        ["photograph"] = "photo",
        ["calculate"] = "reckon",
        ["print"] = "sheet",
        ["help"] = "--help",
    };

    /// <summary>Says it.</summary>
    /// <param name="words">The words, the first of which is no command.</param>
    /// <param name="names">The commands.</param>
    public static string Told(IReadOnlyList<string> words, IReadOnlyList<string> names)
    {
        var (word, rest) = (words[0], words.Skip(1));
        if (word == Program && words.Count > 1)
        {
            return $"the name of the program is said already; write {Program} {string.Join(' ', rest)}";
        }

        if (Ours.TryGetValue(word, out var ours))
        {
            return $"there is no command '{word}'; what is meant may be '{ours}': write {Line([ours, .. rest])}";
        }

        return words.Count > 1 && names.Contains(words[1], StringComparer.Ordinal) && word.Any(char.IsAsciiDigit)
            ? $"the command comes first; write {Line([words[1], word, .. words.Skip(2)])}"
            : Nearest.Told($"there is no command '{word}'", Nearest.To(word, names));
    }

    private static string Line(IEnumerable<string> words) =>
        $"{Program} " + string.Join(' ', words.Select(word => word.Any(char.IsWhiteSpace) ? $"\"{word}\"" : word));
}
