using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Drawings;

/// <summary>Marks of a drawing that would lie on each other are one mark.</summary>
/// <param name="X">Where it stands.</param>
/// <param name="Steps">What it stands for, in order of time.</param>
public sealed record YearsMark(decimal X, IReadOnlyList<BoardStep> Steps)
{
    /// <summary>What the mark shows: the weightiest of what it stands for.</summary>
    public BoardStepKind Kind =>
        Steps.Any(step => step.Kind == BoardStepKind.Replaced) ? BoardStepKind.Replaced
        : Steps.Any(step => step.Kind == BoardStepKind.Proved) ? BoardStepKind.Proved
        : Steps[0].Kind;
}

/// <summary>The life of a board on one line, from the day it came to the next look; when it was made stands before the line, broken off. A
/// mark leads to its visit. The list below it has the same steps with the same links in words: for the keyboard, for those who hear the
/// page, and for narrow screens.</summary>
public static class YearsLine
{
    // A mark is as wide as a finger needs: WCAG 2.2, 2.5.8, 24 pixels where the drawing is shown in its own size.
    private const decimal Apart = 30m;
    private const decimal From = 100m;
    private const decimal To = 690m;

    /// <summary>The marks, each far enough from the next.</summary>
    /// <param name="steps">The steps, in order of time; at least one.</param>
    /// <param name="scale">Where days go.</param>
    public static IReadOnlyList<YearsMark> Marks(IReadOnlyList<BoardStep> steps, TimeScale scale)
    {
        var marks = new List<YearsMark>();
        foreach (var step in steps)
        {
            var at = scale.At(step.Day);
            if (marks.Count > 0 && at - marks[^1].X < Apart)
            {
                marks[^1] = marks[^1] with { Steps = [.. marks[^1].Steps, step] };
            }
            else
            {
                marks.Add(new(at, [step]));
            }
        }

        return marks;
    }

    /// <summary>The scale of a board: from its first step to the last, today included.</summary>
    public static TimeScale Scale(IReadOnlyList<BoardStep> steps, DateOnly today) =>
        new(steps[0].Day < today ? steps[0].Day : today, steps[^1].Day > today ? steps[^1].Day : today, From, To);

    /// <summary>Writes the drawing.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="made">When the board was made, as written; or null.</param>
    /// <param name="steps">Its steps in order of time, at least one.</param>
    /// <param name="today">The day of the report.</param>
    /// <param name="places">The places of its visits on the page.</param>
    public static void Write(HtmlWriter html, string? made, IReadOnlyList<BoardStep> steps, DateOnly today, IReadOnlyList<ElementId> places)
    {
        var scale = Scale(steps, today);
        using var drawing = html.Open(Tag.Svg, ClassName.Years).With(TextAttribute.ViewBox, "0 0 720 64").With(FixedAttribute.AriaHidden);
        if (made is not null)
        {
            // Broken off: years without a record are not drawn to scale.
            Plot.Strokes(html, "M8 24v16M8 32h38l4 -6l6 12l4 -6h14", ClassName.Band);
            Plot.Label(html, 0m, 58m, $"made {made}");
        }

        var now = scale.At(today);
        Plot.Strokes(html, string.Create(CultureInfo.InvariantCulture, $"M{From} 32H{To}"), ClassName.Band);
        Plot.Strokes(html, string.Create(CultureInfo.InvariantCulture, $"M{now} 20l-4 -6h8zV44"), ClassName.Full);
        Plot.Label(html, StripScale.Short(Math.Min(now + 6m, To - 30m)), 18m, "today");
        foreach (var mark in Marks(steps, scale))
        {
            Mark(html, mark, places);
        }

        Ends(html, steps);
    }

    private static void Mark(HtmlWriter html, YearsMark mark, IReadOnlyList<ElementId> places)
    {
        var visit = mark.Steps.Select(step => step.Visit).FirstOrDefault(visit => visit is not null);
        var path = string.Create(CultureInfo.InvariantCulture, $"M{mark.X} 32{Shape(mark.Kind)}");
        var style = mark.Kind is BoardStepKind.Replaced ? ClassName.Full : ClassName.Hollow;
        if (visit is not { } place)
        {
            Plot.Strokes(html, path, style);
            return;
        }

        using var link = html.Open(Tag.A).To(places[place]).With(FixedAttribute.NoTabStop);
        html.Open(Tag.Title).Text(string.Join(", ", mark.Steps.Select(step => step.When)));
        html.Open(Tag.Rect)
            .With(NumberAttribute.X, StripScale.Short(mark.X - 13m))
            .With(NumberAttribute.Y, 18)
            .With(NumberAttribute.Width, 26)
            .With(NumberAttribute.Height, 28)
            .Close();
        Plot.Strokes(html, path, style);
    }

    // Came: a stroke. Seen: a small ring. Replaced: a filled square. Proved: a ring within a ring. Look again: a pointer from above.
    private static string Shape(BoardStepKind kind) =>
        kind switch
        {
            BoardStepKind.Came => "m0 -8v16",
            BoardStepKind.Seen => "m-4 0a4 4 0 1 1 8 0a4 4 0 1 1-8 0z",
            BoardStepKind.Replaced => "m-6 -6h12v12h-12z",
            BoardStepKind.Proved => "m-7 0a7 7 0 1 1 14 0a7 7 0 1 1-14 0zm4 0a3 3 0 1 1 6 0a3 3 0 1 1-6 0z",
            _ => "l-6 -9h12z",
        };

    private static void Ends(HtmlWriter html, IReadOnlyList<BoardStep> steps)
    {
        Plot.Label(html, From, 58m, steps[0].When);
        if (steps.Count > 1)
        {
            Plot.LabelBefore(
                html,
                720m,
                58m,
                $"{(steps[^1].Kind == BoardStepKind.LookAgain ? "look again " : string.Empty)}{steps[^1].When}"
            );
        }
    }
}
