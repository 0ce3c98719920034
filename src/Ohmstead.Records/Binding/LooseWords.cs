using System.Buffers;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Binding;

/// <summary>
/// What stands between braces without a colon: the rest of a text that a comma cut, a value without its key, or a key without its colon.
/// </summary>
internal static class LooseWords
{
    private static readonly SearchValues<char> Opening = SearchValues.Create("“„‘”’«‚");

    private static readonly SearchValues<char> Closing = SearchValues.Create("”“’‘»«\"'");

    private static readonly SearchValues<char> Inner = SearchValues.Create("“”„«»\"");

    /// <summary>What stands between the curly quotes that a whole text stands in; null for any other text.</summary>
    internal static string? Unquoted(string text) =>
        text.Length > 2
        && Opening.Contains(text[0])
        && Closing.Contains(text[^1])
        && text[1..^1].Trim() is { Length: > 0 } inside
        && !inside.AsSpan().ContainsAny(Inner)
            ? inside
            : null;

    /// <summary>Whether an entry is a word alone, with no colon behind it.</summary>
    internal static bool IsLoose(MappingNode mapping, MappingEntry entry) =>
        mapping.IsFlow
        && entry.Value is ScalarNode { Style: ScalarWriting.Plain, Text: "" } nothing
        && nothing.Spot.Line == entry.KeySpot.Line
        && nothing.Spot.Column <= entry.KeySpot.Column + entry.KeySpot.Length;

    /// <summary>Tells of a loose word, and of those behind it that have the same cause.</summary>
    /// <returns>The last entry that was told of.</returns>
    internal static int Report(Binder binder, Shape shape, MappingNode mapping, int at)
    {
        var entry = mapping.Entries[at];
        var word = entry.Key;

        // A colon without a space was told of when the file was read.
        if (word.Contains(':', StringComparison.Ordinal))
        {
            return at;
        }

        if (WithSign(word, '=', shape) is { } equals)
        {
            Tell(binder, entry, $"'{Binder.Shown(word)}' has = where a colon is expected", $"write {equals}");
            return at;
        }

        if (at > 0 && CutText(shape, mapping, at) is { } key)
        {
            return ReportCut(binder, shape, mapping, at, key);
        }

        var next = WithSign(word, ' ', shape) is { } missing ? $"write {missing}" : NextOf(shape, word, at);
        var what = WithSign(word, ' ', shape) is null ? "stands without a key" : "has no colon after its key";
        Tell(binder, entry, $"'{Binder.Shown(word)}' {what}", next);
        return at;
    }

    /// <summary>The key whose text goes on with an entry that has a colon and is no key:
    /// <c>{ kept: bag 7, second shelf: left }</c>.</summary>
    internal static string? TextAround(Shape shape, MappingNode mapping, int at) =>
        mapping.IsFlow
        && at > 0
        && mapping.Entries[at].Key.Contains(' ', StringComparison.Ordinal)
        && CutText(shape, mapping, at) is { } key
        && mapping.Entries[at].Value is ScalarNode { Text: var rest }
            ? $"{key.Name}: {NodeText.Quoted($"{((ScalarNode)mapping.Entries[at - 1].Value).Text}, {mapping.Entries[at].Key}: {rest}")}"
            : null;

    private static int ReportCut(Binder binder, Shape shape, MappingNode mapping, int at, Key key)
    {
        var text = ((ScalarNode)mapping.Entries[at - 1].Value).Text;
        var whole = text;
        var last = at;
        for (; last < mapping.Entries.Length && IsLoose(mapping, mapping.Entries[last]); last++)
        {
            whole += $", {mapping.Entries[last].Key}";
        }

        last--;
        var isTypographic = text.AsSpan().IndexOfAny(Opening) == 0;
        if (isTypographic)
        {
            whole = whole.Trim().Trim('“', '”', '„', '‘', '’', '«', '»', '‚');
        }

        Tell(
            binder,
            mapping.Entries[at],
            isTypographic
                ? $"the typographic quote {text[0]} encloses nothing, so the comma ends the text of '{key.Name}' before "
                    + $"'{Binder.Shown(mapping.Entries[at].Key)}'"
                : $"a comma ends the text of '{key.Name}' before '{Binder.Shown(mapping.Entries[at].Key)}', which stands without a key",
            WithSign(mapping.Entries[at].Key, ' ', shape) is { } pair
                ? $"write {pair} if that is a key and its value, else {key.Name}: {NodeText.Quoted(whole)}"
                : $"write {key.Name}: {NodeText.Quoted(whole)}"
        );
        return last;
    }

    // Only what may be any text can go on behind a comma, and only when it was written without quotes.
    private static Key? CutText(Shape shape, MappingNode mapping, int at)
    {
        var before = mapping.Entries[at - 1];
        return
            before.Value is ScalarNode { Style: ScalarWriting.Plain, IsNothing: false }
            && shape.PlaceOf(before.Key) is >= 0 and var place
            && shape.KeyAt(place).Kind == ValueKind.Text
            ? shape.KeyAt(place)
            : null;
    }

    /// <summary>The word as a key and its value, where a sign stands in place of the colon.</summary>
    private static string? WithSign(string word, char sign, Shape shape)
    {
        var at = word.IndexOf(sign, StringComparison.Ordinal);
        return at > 0 && shape.PlaceOf(word[..at].Trim()) >= 0 && word[(at + 1)..].Trim() is { Length: > 0 } value
            ? $"{word[..at].Trim()}: {NodeText.Value(value, isFlow: true)}"
            : null;
    }

    private static string NextOf(Shape shape, string word, int at)
    {
        var key = shape.Keys.FirstOrDefault(known => known.Words.Contains(word, StringComparer.Ordinal))
            ?? (at == 0 ? shape.Keys[0] : null);
        return key is null
            ? $"write the key before it, KEY: {NodeText.Value(word, isFlow: true)}, or put a text with a comma in quotes"
            : $"write {key.Name}: {NodeText.Value(word, isFlow: true)}";
    }

    private static void Tell(Binder binder, MappingEntry entry, string message, string next) =>
        binder.Report(RecordChecks.KeyUnknown, entry.KeySpot, message, next);
}
