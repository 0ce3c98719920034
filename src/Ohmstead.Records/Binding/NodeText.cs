using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Binding;

/// <summary>A node as a person would write it on one line, for the text that a message tells to write.</summary>
internal static class NodeText
{
    private const int Longest = 200;

    /// <summary>A text as a value: in quotes where it would be read otherwise.</summary>
    /// <param name="text">The text.</param>
    /// <param name="isFlow">Whether it stands between braces.</param>
    internal static string Value(string text, bool isFlow)
    {
        var isPlain =
            text.Length > 0
            && text.Trim().Length == text.Length
            && !text.Contains(": ", StringComparison.Ordinal)
            && !text.Contains(" #", StringComparison.Ordinal)
            && !text.EndsWith(':')
            && !text.AsSpan().ContainsAny('\n', '\r', '"')
            && "-?:,[]{}#&*!|>'\"%@`".IndexOf(text[0], StringComparison.Ordinal) < 0
            && (!isFlow || text.AsSpan().IndexOfAny(",[]{}") < 0);
        return isPlain ? text : Quoted(text);
    }

    /// <summary>A text in the quotes that it needs.</summary>
    internal static string Quoted(string text)
    {
        text = text.ReplaceLineEndings(" ");
        return text.AsSpan().IndexOfAny('"', '\\') < 0 ? $"\"{text}\"" : $"'{text.Replace("'", "''", StringComparison.Ordinal)}'";
    }

    /// <summary>A node between braces or as a value; null when it is too long to be told.</summary>
    internal static string? Flow(Node node)
    {
        var text = Written(node);
        return text.Length <= Longest ? text : null;
    }

    private static string Written(Node node) =>
        node switch
        {
            ScalarNode scalar => Value(scalar.Text, isFlow: true),
            MappingNode mapping =>
                $"{{ {string.Join(", ", mapping.Entries.Take(Longest).Select(entry => $"{entry.Key}: {Written(entry.Value)}"))} }}",
            SequenceNode list => $"[{string.Join(", ", list.Items.Take(Longest).Select(Written))}]",
            _ => string.Empty,
        };
}
