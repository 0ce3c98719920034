using System.Buffers;

namespace Ohmstead.Report.Html;

/// <content>Classes of the pages' own parts.</content>
public sealed partial class ClassName
{
    private static readonly SearchValues<char> BeforePoint = SearchValues.Create("0123456789+-");

    /// <summary>The link past what is the same on all pages, seen when the keyboard comes to it.</summary>
    public static ClassName Skip { get; } = new("skip");

    /// <summary>The line of links above a page.</summary>
    public static ClassName Trail { get; } = new("trail");

    /// <summary>A code for a telephone, on paper alone.</summary>
    public static ClassName Code { get; } = new("code");

    /// <summary>The links between the pages of one long table.</summary>
    public static ClassName Pages { get; } = new("pages");

    /// <summary>The head of a page: what it is about, and the answer in short.</summary>
    public static ClassName Opening { get; } = new("opening");

    /// <summary>The number of a board or the name of a design, set as on a name plate.</summary>
    public static ClassName Plate { get; } = new("plate");

    /// <summary>The sentence that answers first.</summary>
    public static ClassName Lead { get; } = new("lead");

    /// <summary>What stands beside the margin.</summary>
    public static ClassName Content { get; } = new("content");

    /// <summary>A list of facts.</summary>
    public static ClassName Facts { get; } = new("facts");

    /// <summary>A table of records; on a narrow screen every cell stands on a line of its own behind the name of its column.</summary>
    public static ClassName Ledger { get; } = new("ledger");

    /// <summary>A small table beside a drawing, a table on every screen.</summary>
    public static ClassName Compact { get; } = new("compact");

    /// <summary>A cell with a number: figures of one width, to the right.</summary>
    public static ClassName Number { get; } = new("number");

    /// <summary>A cell that is never broken over lines.</summary>
    public static ClassName Short { get; } = new("short");

    /// <summary>A mark: a small drawing that tells a state or a verdict by its shape.</summary>
    public static ClassName Mark { get; } = new("mark");

    /// <summary>A filled shape of a mark.</summary>
    public static ClassName Full { get; } = new("full");

    /// <summary>A dotted line of a mark.</summary>
    public static ClassName Dotted { get; } = new("dotted");

    /// <summary>The shapes that drawings of the page share.</summary>
    public static ClassName Shapes { get; } = new("shapes");

    /// <summary>A reading drawn against its limits.</summary>
    public static ClassName Strip { get; } = new("strip");

    /// <summary>The room that limits leave.</summary>
    public static ClassName Room { get; } = new("room");

    /// <summary>Strokes of limits and scales.</summary>
    public static ClassName Band { get; } = new("band");

    /// <summary>A shape that shows the paper.</summary>
    public static ClassName Hollow { get; } = new("hollow");

    /// <summary>A drawing with two scales.</summary>
    public static ClassName Plot { get; } = new("plot");

    /// <summary>A label that ends at its place.</summary>
    public static ClassName End { get; } = new("end");

    /// <summary>The mark and the words of a state.</summary>
    public static ClassName State { get; } = new("state");

    /// <summary>Something good: inside, fit.</summary>
    public static ClassName Good { get; } = new("good");

    /// <summary>Something that calls for work.</summary>
    public static ClassName Bad { get; } = new("bad");

    /// <summary>Something that does not decide, or waits.</summary>
    public static ClassName Open { get; } = new("open");

    /// <summary>Something that says nothing.</summary>
    public static ClassName Quiet { get; } = new("quiet");

    /// <summary>A verdict: one line, its working behind it. A page has some hundred; one that is inside has no tone beside it.</summary>
    public static ClassName Verdict { get; } = new("v");

    /// <summary>A verdict that is told in full elsewhere on the page; one that is inside has no tone beside it.</summary>
    public static ClassName Told { get; } = new("told");

    /// <summary>The mark and the word of a verdict.</summary>
    public static ClassName Outcome { get; } = new("outcome");

    /// <summary>A number with one character before its point. This and the next three set points below each other.</summary>
    public static ClassName Whole1 { get; } = new("w1");

    /// <summary>A number with two characters before its point.</summary>
    public static ClassName Whole2 { get; } = new("w2");

    /// <summary>A number with three characters before its point.</summary>
    public static ClassName Whole3 { get; } = new("w3");

    /// <summary>A number with four characters before its point.</summary>
    public static ClassName Whole4 { get; } = new("w4");

    /// <summary>A share with its interval, drawn on a line from zero to all.</summary>
    public static ClassName Bar { get; } = new("bar");

    /// <summary>Figures that lead to what they count.</summary>
    public static ClassName Tiles { get; } = new("tiles");

    /// <summary>The whole of a collection in one bar.</summary>
    public static ClassName States { get; } = new("states");

    /// <summary>What to do, before the reasons for it.</summary>
    public static ClassName Act { get; } = new("act");

    /// <summary>The line that leads to the parts of a long page and stays in sight.</summary>
    public static ClassName Jump { get; } = new("jump");

    /// <summary>A board in the head of its page: words, and the latest photograph beside them.</summary>
    public static ClassName Portrait { get; } = new("portrait");

    /// <summary>The life of a board on one line.</summary>
    public static ClassName Years { get; } = new("years");

    /// <summary>The same in words.</summary>
    public static ClassName Steps { get; } = new("steps");

    /// <summary>Parts of which nothing was read, in one line.</summary>
    public static ClassName Unread { get; } = new("unread");

    /// <summary>Something that is told in full only when it is opened.</summary>
    public static ClassName Fold { get; } = new("fold");

    /// <summary>A fold with the working of a figure that stands beside it; left out on paper unless it is open.</summary>
    public static ClassName Working { get; } = new("working");

    /// <summary>What can hurt and is always so.</summary>
    public static ClassName Caution { get; } = new("caution");

    /// <summary>What can hurt and must be dealt with before anything else.</summary>
    public static ClassName Danger { get; } = new("danger");

    /// <summary>A visit to the bench.</summary>
    public static ClassName Visit { get; } = new("visit");

    /// <summary>Photographs.</summary>
    public static ClassName Photos { get; } = new("photos");

    /// <summary>Two photographs of one place, before and after.</summary>
    public static ClassName Pair { get; } = new("pair");

    /// <summary>The foot of a page.</summary>
    public static ClassName Colophon { get; } = new("colophon");

    /// <summary>A note that everything on the page is invented.</summary>
    public static ClassName Invented { get; } = new("invented");

    /// <summary>Small print.</summary>
    public static ClassName Fine { get; } = new("fine");

    /// <summary>The class that puts the point of a number below those of its column, or null when more than four stand before it.</summary>
    /// <param name="number">The number as shown, with or without a unit.</param>
    public static ClassName? Whole(string number)
    {
        var figures = number.AsSpan().IndexOfAnyExcept(BeforePoint);
        return (figures < 0 ? number.Length : figures) switch
        {
            1 => Whole1,
            2 => Whole2,
            3 => Whole3,
            4 => Whole4,
            _ => null,
        };
    }
}
