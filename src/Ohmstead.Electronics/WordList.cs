using System.Collections;
using System.Collections.Frozen;

namespace Ohmstead.Electronics;

/// <summary>
/// A closed list of words and what each of them means: the only place where a word of the record stands beside its value. Schemas, messages
/// and completion read the words, binding reads the values. It is written out row by row, since nothing may look at names of a type while
/// the program runs.
/// </summary>
/// <typeparam name="T">What the words mean.</typeparam>
public sealed class WordList<T> : IReadOnlyList<string>
    where T : notnull
{
    private readonly string[] words;
    private readonly T[] inOrder;
    private readonly FrozenDictionary<string, T> values;
    private readonly FrozenDictionary<T, string> ofValues;

    /// <summary>A list of words.</summary>
    /// <param name="rows">Each value and its word, in the order in which people are told the words.</param>
    public WordList(params IReadOnlyList<(T Value, string Word)> rows)
    {
        words = [.. rows.Select(row => row.Word)];
        inOrder = [.. rows.Select(row => row.Value)];
        // An ordinary dictionary first, which refuses a word or a value that stands twice.
        values = rows.ToDictionary(row => row.Word, row => row.Value, StringComparer.Ordinal).ToFrozenDictionary(StringComparer.Ordinal);
        ofValues = rows.ToDictionary(row => row.Value, row => row.Word).ToFrozenDictionary();
    }

    /// <inheritdoc/>
    public int Count => words.Length;

    /// <inheritdoc/>
    public string this[int index] => words[index];

    /// <summary>What the words mean, in their order.</summary>
    public IReadOnlyList<T> Values => inOrder;

    /// <summary>The word for a value.</summary>
    public string WordFor(T value) => ofValues[value];

    /// <summary>What a word means; false when it is none of these words.</summary>
    public bool Means(string word, out T value) => values.TryGetValue(word, out value!);

    /// <inheritdoc/>
    public IEnumerator<string> GetEnumerator() => ((IEnumerable<string>)words).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => words.GetEnumerator();
}
