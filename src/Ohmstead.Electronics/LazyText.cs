namespace Ohmstead.Electronics;

/// <summary>Words about figures that are put together only when someone reads them.</summary>
/// <remarks>
/// Every verdict can show its arithmetic, but of the many verdicts on a collection few are ever looked at. Text is written once, at the
/// first reading, from values that cannot change, so that it is the same whoever reads it and whenever. Two are equal when their text is.
/// What is made for every reading is a class of its own that holds the values and nothing else: a lambda takes three times the room.
/// </remarks>
public class LazyText : IEquatable<LazyText>
{
    // The text, or before it was written what writes it, where that is not the class itself.
    private object? told;

    /// <summary>Text to be written when it is read.</summary>
    /// <param name="write">Writes it; depends on nothing that changes.</param>
    public LazyText(Func<string> write) => told = write;

    /// <summary>Text that the class itself writes.</summary>
    protected LazyText() { }

    private LazyText(string text) => told = text;

    /// <summary>The text.</summary>
    public string Text
    {
        get
        {
            if (told is string text)
            {
                return text;
            }

            // Two threads that read at once write the same text.
            text = Write();
            told = text;
            return text;
        }
    }

    /// <summary>Text to be written about something when it is read.</summary>
    /// <typeparam name="T">What it is written about.</typeparam>
    /// <param name="about">What it is written about.</param>
    /// <param name="write">Writes it, from that alone.</param>
    public static LazyText For<T>(T about, Func<T, string> write)
        where T : class => new About<T>(about, write);

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

    /// <summary>Writes the text, from values that cannot change.</summary>
    protected virtual string Write() => told is Func<string> write ? write() : (string)told!;

    private sealed class About<T>(T about, Func<T, string> write) : LazyText
        where T : class
    {
        protected override string Write() => write(about);
    }
}
