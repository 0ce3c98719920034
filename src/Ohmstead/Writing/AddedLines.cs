namespace Ohmstead.Writing;

/// <summary>The lines of a text that were not in it before, from one to another.</summary>
/// <param name="First">The first of them, from 1.</param>
/// <param name="Last">The last of them.</param>
internal sealed record AddedLines(int First, int Last)
{
    /// <summary>The lines in which two texts differ.</summary>
    public static AddedLines Between(string before, string after)
    {
        var same = before.AsSpan().CommonPrefixLength(after);
        var most = Math.Min(before.Length, after.Length) - same;
        var end = 0;
        while (end < most && before[^(end + 1)] == after[^(end + 1)])
        {
            end++;
        }

        var first = after.AsSpan(0, same).Count('\n') + 1;
        return new(first, Math.Max(first, after.AsSpan(0, after.Length - end).TrimEnd('\n').Count('\n') + 1));
    }

    /// <summary>Whether a line is one of them.</summary>
    public bool Hold(int line) => line >= First && line <= Last;
}
