using System.Globalization;
using Ohmstead.Assessment.History;
using Ohmstead.Report.Html;
using Ohmstead.Report.Style;

namespace Ohmstead.Report.Drawings;

/// <summary>The whole collection as one bar: a box for each state, as long as its share, with the mark of the state in it. Its words and
/// counts stand beside the bar; colour comes last.</summary>
public static class StateBar
{
    private const decimal Wide = 720m;
    private const decimal Narrowest = 6m;
    private const decimal RoomForMark = 34m;

    /// <summary>How long the box of each state is: its share, and never too little to be seen.</summary>
    /// <param name="counts">How many boards are in each state; none of them zero.</param>
    public static IReadOnlyList<decimal> Lengths(IReadOnlyList<int> counts)
    {
        var all = counts.Sum();
        var least = counts.Select(count => Math.Max(Narrowest, Wide * count / all)).ToArray();
        var scale = Wide / least.Sum();
        return [.. least.Select(length => StripScale.Short(length * scale))];
    }

    private static string Counted((BoardState State, int Count) pair) =>
        string.Create(CultureInfo.InvariantCulture, $"{pair.Count} {BoardStates.Words(pair.State)}");

    /// <summary>Writes the bar.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="states">The states with their counts, what presses most first.</param>
    public static void Write(HtmlWriter html, IReadOnlyList<(BoardState State, int Count)> states)
    {
        using var bar = html.Open(Tag.Svg, ClassName.States).With(TextAttribute.ViewBox, "0 0 720 28").With(FixedAttribute.RoleImage);
        html.Open(Tag.Title).Text($"All boards by state: {string.Join(", ", states.Select(Counted))}");
        var from = 0m;
        foreach (var ((state, _), length) in states.Zip(Lengths([.. states.Select(pair => pair.Count)])))
        {
            using var box = html.Open(Tag.G).With(StateMark.ToneOf(state));
            html.Open(Tag.Rect)
                .With(NumberAttribute.X, StripScale.Short(from + 1m))
                .With(NumberAttribute.Y, 1)
                .With(NumberAttribute.Width, StripScale.Short(Math.Max(1m, length - 2m)))
                .With(NumberAttribute.Height, 26)
                .Close();
            if (length >= RoomForMark)
            {
                using var place = html.Open(Tag.G)
                    .With(
                        TextAttribute.Transform,
                        string.Create(CultureInfo.InvariantCulture, $"translate({StripScale.Short(from + (length / 2m) - 12m)} 8)")
                    );
                StateMark.Draw(html, state);
            }

            from += length;
        }
    }
}
