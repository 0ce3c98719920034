namespace Ohmstead.Electronics;

/// <summary>Words about figures that are put together only when someone reads them.</summary>
/// <remarks>
/// Every verdict can show its arithmetic, but of the many verdicts on a collection few are ever looked at. Text is written once, at the
/// first reading, from values that cannot change, so that it is the same whoever reads it and whenever. Two are equal when their text is.
/// </remarks>
public sealed class LazyText : IEquatable<LazyText>
{
    private Func<string>? write;
    private string? text;

    /// <summary>Text to be written when it is read.</summary>
    /// <param name="write">Writes it; depends on nothing that changes.</param>
    public LazyText(Func<string> write) => this.write = write;

    private LazyText(string text) => this.text = text;

    /// <summary>The text.</summary>
    public string Text
    {
        get
        {
            // Two threads that read at once write the same text.
            if (text is null && write is { } writer)
            {
                text = writer();
                write = null;
            }

            return text!;
        }
    }

    /// <summary>Text that is there already.</summary>
    public static implicit operator LazyText(string text) => new(text);

    /// <summary>The text, where a string is wanted.</summary>
    public static implicit operator string(LazyText lazy) => lazy.Text;

    /// <inheritdoc/>
    public override string ToString() => Text;

    /// <inheritdoc/>
    public bool Equals(LazyText? other) => other is not null && string.Equals(Text, other.Text, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as LazyText);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Text);
}
