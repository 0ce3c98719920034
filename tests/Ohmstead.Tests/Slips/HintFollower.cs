using System.Text.RegularExpressions;

namespace Ohmstead.Tests.Slips;

/// <summary>Does what a next step says, literally: writes the text that it names where the message points.</summary>
internal static partial class HintFollower
{
    /// <summary>The text to write, or null where the step is something to do or a choice of several texts.</summary>
    public static string? TextOf(string next)
    {
        if (!next.StartsWith("write ", StringComparison.Ordinal) || Choice().IsMatch(next))
        {
            return null;
        }

        var text = next["write ".Length..];
        text = InQuotes().Replace(text, "");
        text = Aside().Replace(text, "");
        return Written().IsMatch(text) ? text : null;
    }

    /// <summary>The file with the text in place of what stands there: the rest of the line, a key and its value, the value alone, the key
    /// alone.</summary>
    public static IEnumerable<string> Tries(string spoilt, int line, int column, string text)
    {
        var lines = spoilt.Split('\n');
        var old = lines[line - 1];
        var at = Math.Min(column - 1, old.Length);
        var key = Key().Match(text);
        foreach (var mended in OnLine(old, at, text, key))
        {
            yield return string.Join('\n', lines.Select((one, number) => number == line - 1 ? mended : one));
        }
    }

    private static IEnumerable<string> OnLine(string old, int at, string text, Match key)
    {
        var indentation = old.Length - old.TrimStart(' ').Length;
        yield return string.Concat(new string(' ', indentation), text);
        yield return string.Concat(new string(' ', Math.Max(indentation - 2, 0)), text);
        yield return string.Concat(new string(' ', indentation), "- ", text);
        yield return string.Concat(old.AsSpan(0, at), text);
        for (var end = at; end <= old.Length; end++)
        {
            if (end == old.Length || old[end] is ',' or '}' or ' ' or ':')
            {
                yield return string.Concat(old.AsSpan(0, at), text, old.AsSpan(end));
                yield return string.Concat(old.AsSpan(0, at), text.TrimEnd(':'), old.AsSpan(end));
            }
        }

        // A number with its comma.
        yield return old.Replace(text.Replace('.', ','), text, StringComparison.Ordinal);

        // A key with its value takes the place of that key, wherever on the line it stands.
        var from = key.Success ? old.IndexOf(key.Groups["key"].Value, StringComparison.Ordinal) : -1;
        for (var end = from; from >= 0 && end <= old.Length; end++)
        {
            if (end == old.Length || old[end] is ',' or '}' or ' ')
            {
                yield return string.Concat(old.AsSpan(0, from), text, old.AsSpan(end));
            }
        }
    }

    [GeneratedRegex(" or |, and |if that is|…|\\bwhich\\b|such as|in the form|figure|: with the ")]
    private static partial Regex Choice();

    [GeneratedRegex("^it in quotes( if it is text)?: ")]
    private static partial Regex InQuotes();

    [GeneratedRegex(", (if|with|where|whichever|as|copied) .*$|; .*$| if .*$")]
    private static partial Regex Aside();

    [GeneratedRegex("^([a-z_]+:|[a-z_]+: .+|- .+|\\{.+\\}|\".+\"|[0-9].*)$")]
    private static partial Regex Written();

    [GeneratedRegex("^(?<key>[a-z_]+:) ")]
    private static partial Regex Key();
}
