namespace Ohmstead.Yaml.Plain;

/// <summary>Gives one string for texts that come again and again: kinds, units, initials, dates.</summary>
/// <remarks>Each text has one place by its hash; a newer one drives the older out, so that a stranger's file cannot make it grow.</remarks>
internal sealed class RecentTexts
{
    private const int Places = 2048;
    private const int Longest = 32;

    private readonly string?[] recent = new string?[Places];

    internal string Of(ReadOnlySpan<char> text)
    {
        if (text.Length > Longest)
        {
            return text.ToString();
        }

        ref var place = ref recent[Hash(text) & (Places - 1)];
        if (place is null || !text.SequenceEqual(place))
        {
            place = text.ToString();
        }

        return place;
    }

    // Whatever it gives only decides what is shared, never what is read.
    private static uint Hash(ReadOnlySpan<char> text)
    {
        var hash = 2166136261u;
        foreach (var unit in text)
        {
            hash = unchecked((hash ^ unit) * 16777619u);
        }

        return hash ^ (hash >> 15);
    }
}
