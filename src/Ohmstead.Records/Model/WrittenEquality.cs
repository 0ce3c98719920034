namespace Ohmstead.Records.Model;

/// <summary>Whether two values are written alike, wherever they stand.</summary>
internal static class WrittenEquality
{
    private const int Odd = 31;

    /// <summary>Whether they are. The text counts beside the value: it is shown, and 0.10 V carries its two places into what is computed
    /// from it.</summary>
    internal static bool AreEqual<T>(Written<T>? one, Written<T>? other)
        where T : notnull =>
        ReferenceEquals(one, other)
        || (one is not null && other is not null && one.Text == other.Text && EqualityComparer<T>.Default.Equals(one.Value, other.Value));

    /// <summary>A hash to which the text of one more value is added.</summary>
    internal static int Hash<T>(int hash, Written<T>? value) =>
        unchecked((hash * Odd) + (value?.Text.GetHashCode(StringComparison.Ordinal) ?? 0));
}
