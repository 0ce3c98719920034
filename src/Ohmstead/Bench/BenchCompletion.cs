using Ohmstead.Electronics.Quantities;
using Ohmstead.Prompt;
using Ohmstead.Records.Model;
using Ohmstead.Writing;

namespace Ohmstead.Bench;

/// <summary>What may stand at a place of a line at the bench, by what stands before it.</summary>
/// <param name="board">The board.</param>
/// <param name="stops">Where the walk stops.</param>
/// <param name="at">Where it is.</param>
internal sealed class BenchCompletion(FoundBoard board, IReadOnlyList<Stop> stops, int at)
{
    private static readonly string[] Shown = [IndicationText.Open, IndicationText.Short, "over", "under"];

    /// <summary>The words that fit, in order.</summary>
    public Completion At(EditLine line)
    {
        var start = line.Before.LastIndexOf(' ') + 1;
        var typed = line.Before[start..];
        string[] before = line.Before[..start].Split(' ', StringSplitOptions.RemoveEmptyEntries);
        string[] fitting =
        [
            .. For(before)
                .Where(word => word.StartsWith(typed, StringComparison.OrdinalIgnoreCase))
                .Distinct(StringComparer.Ordinal)
                .Order(ByFigures.Order),
        ];
        return new(start, [.. fitting]);
    }

    private IEnumerable<string> For(string[] before) =>
        before switch
        {
            [] => [.. Places, .. BenchWords.Alone, .. BenchWords.Begun, .. Values],
            [.., "--lot"] => board.Workshop.Lots.Keys,
            ["with"] => board.Workshop.Instruments.Keys,
            ["why" or "fit" or "found" or "decide"] => Places,
            ["work"] => Vocabulary.Works.Select(Quoted),
            ["work", _] => Places,
            ["decide", _] => Vocabulary.Decisions.Select(Quoted),
            ["found", _, _, ..] => Vocabulary.Severities,
            ["work", _, _, ..] => ["--lot", "--polarity", "--note", "--with", "--dry", "--kept", "--from"],
            ["wait", ..] or ["found", ..] or ["decide", ..] => [],
            _ => Values,
        };

    private static string Quoted(string word) => word.Contains(' ', StringComparison.Ordinal) ? $"\"{word}\"" : word;

    private IEnumerable<string> Places =>
        board
            .Board.Places.Where(place => !place.IsEmpty)
            .Select(place => place.Part.Ref.Value)
            .Concat(board.Board.Points.Select(point => point.Name.Value));

    // What a meter shows where it shows no figure, what a test gives, and the keys of what is measured here.
    private IEnumerable<string> Values =>
        [
            .. Shown,
            .. Vocabulary.Results,
            .. at < stops.Count ? stops[at].Expected.Select(expected => MeasuredKey.For(expected.Measured).Name + "=") : [],
        ];

    /// <summary>References in the order of people: C2 before C10.</summary>
    private sealed class ByFigures : IComparer<string>
    {
        public static ByFigures Order { get; } = new();

        public int Compare(string? x, string? y)
        {
            var (one, other) = (Split(x!), Split(y!));
            return string.CompareOrdinal(one.Letters, other.Letters) is not 0 and var letters ? letters
                : one.Figures.Length != other.Figures.Length ? one.Figures.Length.CompareTo(other.Figures.Length)
                : string.CompareOrdinal(x, y);
        }

        private static (string Letters, string Figures) Split(string word)
        {
            var figures = word.AsSpan().IndexOfAnyInRange('0', '9');
            return figures < 0 ? (word, string.Empty) : (word[..figures], word[figures..]);
        }
    }
}
