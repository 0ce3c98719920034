using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Reckoning.Statistics;

/// <summary>Reads ages given on a command line: 9 failed at 9, 13+ good at 13, 5..9 good at 5 and bad at 9, ..9 found bad at 9, 3:9 joined
/// at 3.</summary>
internal static class Ages
{
    internal const string Form = "9 failed at that age, 13+ still good";

    internal const string LookedForm = Form + ", 5..9 good at 5 and bad at 9, ..9 found bad at the first inspection";

    internal const string FollowedForm = Form + ", 3:9 under observation from 3";

    private const int Longest = 12;

    internal static Outcome<IReadOnlyList<LifeObservation>> Looked(IReadOnlyList<string> entries) =>
        Each<LifeObservation>(entries, Look, "9, 13+, 5..9 or ..9");

    internal static Outcome<IReadOnlyList<FollowedItem>> Followed(IReadOnlyList<string> entries) =>
        Each<FollowedItem>(entries, Follow, "9, 13+ or 3:9");

    internal static double? Number(string text) =>
        text.Length is > 0 and <= Longest
        && double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;

    private static bool Look(string entry, out LifeObservation look)
    {
        var at = entry.IndexOf("..", StringComparison.Ordinal);
        LifeObservation? read =
            entry.EndsWith('+') ? (Number(entry[..^1]) is { } good ? LifeObservation.GoodAt(good) : null)
            : at < 0 ? (Number(entry) is { } exact ? LifeObservation.FailedAt(exact) : null)
            : at == 0 ? (Number(entry[2..]) is { } bad ? LifeObservation.FoundBadAt(bad) : null)
            : Number(entry[..at]) is { } from && Number(entry[(at + 2)..]) is { } to ? LifeObservation.Between(from, to)
            : null;
        look = read.GetValueOrDefault();
        return read is not null;
    }

    private static bool Follow(string entry, [NotNullWhen(true)] out FollowedItem? item)
    {
        var (from, rest) = entry.IndexOf(':', StringComparison.Ordinal) is >= 0 and var at
            ? (Number(entry[..at]), entry[(at + 1)..])
            : (0, entry);
        var failed = !rest.EndsWith('+');
        item = from is { } entered && Number(failed ? rest : rest[..^1]) is { } until ? new FollowedItem(until, failed, entered) : null;
        return item is not null;
    }

    private delegate bool Read<T>(string entry, [NotNullWhen(true)] out T? item);

    private static Outcome<IReadOnlyList<T>> Each<T>(IReadOnlyList<string> entries, Read<T> read, string expected)
        where T : notnull
    {
        var found = new List<T>(entries.Count);
        foreach (var entry in entries)
        {
            if (!read(entry, out var item))
            {
                return Outcome<IReadOnlyList<T>>.Refused($"'{entry}' is no age, expected such as {expected}");
            }

            found.Add(item);
        }

        return Outcome<IReadOnlyList<T>>.From(found);
    }
}
