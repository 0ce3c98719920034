using System.Buffers;
using System.Text;

namespace Ohmstead.Synthetic.Text;

/// <summary>One fact on one line: <c>{ ref: C12, kind: aluminium electrolytic }</c>.</summary>
public sealed class FlowLine
{
    private static readonly SearchValues<char> Indicators = SearchValues.Create(",:#[]{}");
    private readonly StringBuilder text = new("{ ");

    /// <summary>Adds a key with its value, quoted where YAML would take it for something else; nothing when there is no value.</summary>
    public FlowLine Add(string key, string? value)
    {
        if (value is null)
        {
            return this;
        }

        return AddPlain(key, NeedsQuotes(value) ? $"\"{value}\"" : value);
    }

    /// <summary>Adds a key with YAML that is written as it stands.</summary>
    public FlowLine AddPlain(string key, string yaml)
    {
        text.Append(text.Length > 2 ? ", " : string.Empty).Append(key).Append(": ").Append(yaml);
        return this;
    }

    /// <inheritdoc/>
    public override string ToString() => text + " }";

    private static bool NeedsQuotes(string value) => value.Length == 0 || value.AsSpan().ContainsAny(Indicators);
}
