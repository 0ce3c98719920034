using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Notes;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Style;

namespace Ohmstead.Report.Sheets;

/// <summary>A board on one sheet of paper, for whoever does not open the record: how it stands and why, what can hurt, what it is, what was
/// done and when, what comes next. What has no room is counted, and the record has it.</summary>
public sealed class BoardSheet
{
    /// <summary>The style of the sheets, from the root of the report.</summary>
    public const string StyleName = "sheets/sheet.css";

    private const int MostReasons = 3;
    private const int MostHazards = 5;
    private const int MostSteps = 6;
    private const int MostWaits = 2;
    private const int LongLine = 110;
    private const int HalfLine = 44;
    private const int ShortLine = 70;

    private readonly HtmlWriter html;
    private readonly ReportContext context;
    private readonly JudgedBoard board;

    private BoardSheet(HtmlWriter html, ReportContext context, JudgedBoard board) =>
        (this.html, this.context, this.board) = (html, context, board);

    private string Invented => context.Workshop.Collection.IsInvented ? " Everything in this collection is invented." : string.Empty;

    private string Number => board.Board.Id.Value;

    /// <summary>The style of the sheets.</summary>
    public static byte[] Style() => Paper.Read("summary.css");

    /// <summary>Writes the sheet.</summary>
    /// <param name="buffer">Where to.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="board">The board.</param>
    public static void Write(PageBuffer buffer, ReportContext context, JudgedBoard board) =>
        PageFrame
            .Page(
                context,
                new(
                    SiteAddress.BoardSheet(board.Board.Id.Value),
                    $"{board.Board.Id.Value} {board.Board.Title.Value} on one sheet",
                    BoardHead.Sentence(board)
                ),
                StyleName
            )
            .Write(buffer, (context, board), static (html, all) => new BoardSheet(html, all.context, all.board).Content());

    private void Content()
    {
        using (html.Open(Tag.Nav))
        {
            html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Board(Number), 1)).Text($"To the page of {Number}");
        }

        using var main = html.Open(Tag.Main);
        Opening();
        Why();
        Hazards();
        using (html.Open(Tag.Div, SheetClass.Beside))
        {
            using (html.Open(Tag.Div))
            {
                Facts();
                Steps();
            }

            using (html.Open(Tag.Div))
            {
                Photograph();
                Next();
            }
        }

        html.Open(Tag.P, SheetClass.Fine)
            .Text(
                $"{BriefWords.Of(context.Workshop.Collection.Name, ShortLine)}, {board.Board.Path}, as of {PageFrame.Iso(context.Today)}. "
                    + $"This sheet is as old as its day; only the record tells how the board stands now.{Invented} {SafetyNotice.Defer}"
            );
    }

    private void Opening()
    {
        SheetCode.Write(html, board, context.Published);
        using (html.Open(Tag.H1))
        {
            html.Open(Tag.Span, SheetClass.Number).Text(Number);
            html.Text(BriefWords.Of(board.Board.Title.Value, ShortLine));
        }

        using (html.Open(Tag.P, SheetClass.Lead))
        {
            StateMark.Write(html, board.State, board.OverdueSince);
        }

        var where = board.Whereabouts.Told is { } told ? $"; {BriefWords.Of(told, ShortLine)}" : string.Empty;
        html.Open(Tag.P).Text($"on {PageFrame.Iso(context.Today)}{where}");
        if (board.Readings.Length > 0)
        {
            var holds = HoldsNow.Of(board).Told;
            html.Open(Tag.P).Text($"{char.ToUpperInvariant(holds[0])}{BriefWords.Sentence(holds[1..], LongLine)}");
        }
    }

    private void Why()
    {
        if (board.Reasons.Length == 0)
        {
            return;
        }

        html.Open(Tag.H2).Text("Why, and what to do next");
        using var list = html.Open(Tag.Ul);
        foreach (var reason in board.Reasons.Take(MostReasons))
        {
            html.Open(Tag.Li).Text($"{BriefWords.Sentence(reason.Told, LongLine)} Next: {BriefWords.Sentence(reason.NextStep, LongLine)}");
        }

        More(board.Reasons.Length - MostReasons, Tag.Li);
    }

    private void Hazards()
    {
        using var box = html.Open(Tag.Section, SheetClass.Caution);
        var there = SheetCautions.Begin(html, board);
        if (there.Length == 0)
        {
            return;
        }

        using var list = html.Open(Tag.Ul);
        foreach (var hazard in there.Take(MostHazards))
        {
            var at = hazard.Hazard.At is { } place ? $" at {BriefWords.Of(place.Value, HalfLine)}" : string.Empty;
            var first = HazardNotes.Cautions(hazard.Hazard.Kind.Value) is [var caution, ..] ? $": {caution}" : string.Empty;
            html.Open(Tag.Li).Text($"{hazard.Hazard.Kind.Text}{at}{first}");
        }

        // The kinds that have no room are named all the same.
        string[] rest = [.. there.Skip(MostHazards).Select(hazard => hazard.Hazard.Kind.Text).Distinct(StringComparer.Ordinal)];
        if (rest.Length > 0)
        {
            html.Open(Tag.Li).Text($"further: {string.Join(", ", rest)}");
        }
    }

    private void Facts()
    {
        html.Open(Tag.H2).Text("What it is");
        using var list = html.Open(Tag.Dl);
        var file = board.Board;
        Fact("Design", board.Design?.Title.Value ?? file.Design?.Value);
        Fact("Maker", (file.Maker ?? board.Design?.Maker)?.Value);
        Fact("Serial", file.Serial?.Value);
        Fact("Revision", (file.Revision ?? board.Design?.Revision)?.Value);
        Fact("Made", (file.Made ?? board.Design?.Made)?.Value.ToString());
        Fact("Owner", board.Whereabouts.Owner);
        Fact("Complaint", file.Arrived?.Complaint?.Value);
        Fact(
            "Parts",
            board.Places.Length == 0
                ? null
                : string.Create(CultureInfo.InvariantCulture, $"{board.Places.Length}, {board.Readings.Length} readings")
        );
    }

    private void Fact(string name, string? value) => PageFrame.Fact(html, name, value is null ? null : BriefWords.Of(value, HalfLine));

    private void Steps()
    {
        html.Open(Tag.H2).Text("What was done");
        BoardStep[] steps = [.. BoardStep.Of(board).Where(step => step.Kind != BoardStepKind.LookAgain)];
        using var list = html.Open(Tag.Ul, SheetClass.Steps);
        if (steps.Length > MostSteps)
        {
            html.Open(Tag.Li).Text(string.Create(CultureInfo.InvariantCulture, $"{steps.Length - MostSteps} steps before"));
        }

        foreach (var step in steps.TakeLast(MostSteps))
        {
            var work = step.Visit is { } visit ? Work(board.Visits[visit]) : string.Empty;
            html.Open(Tag.Li).Text($"{step.When} {BriefWords.Of(work.Length > 0 ? work : step.Words, ShortLine)}");
        }

        if (steps.Length == 0)
        {
            html.Open(Tag.Li).Text("nothing yet");
        }
    }

    // What was done, each kind of work with its places: replaced C1, C2; cleaned J1.
    private static string Work(BenchVisit visit) =>
        string.Join(
            "; ",
            visit
                .Work.GroupBy(work => work.Did.Text, StringComparer.Ordinal)
                .Select(kind => $"{kind.Key} {string.Join(", ", Places(kind))}".TrimEnd())
        );

    private static IEnumerable<string> Places(IEnumerable<WorkEntry> work) =>
        work.Select(one => (one.Part ?? one.At)?.Value).OfType<string>().Distinct(StringComparer.Ordinal);

    private void Photograph()
    {
        var latest = board
            .Visits.SelectMany(visit => visit.Photos.Select(photo => (visit, photo)))
            .LastOrDefault(pair => PictureNames.IsSafe(pair.photo.File.Value) && context.Pictures?.Find(pair.photo.File.Value) is not null);
        if (latest.photo is null)
        {
            return;
        }

        var shown = context.Pictures!.Find(latest.photo.File.Value)!.Small;
        html.Open(Tag.H2).Text("The latest photograph");
        using var figure = html.Open(Tag.Figure);
        html.Open(Tag.Img)
            .Showing(LocalLink.ToFile(shown.Path, 1))
            .With(TextAttribute.Alt, latest.photo.Shows.Value)
            .With(NumberAttribute.Width, shown.Width)
            .With(NumberAttribute.Height, shown.Height)
            .Close();
        html.Open(Tag.FigCaption).Text($"{latest.visit.Date.Text}: {BriefWords.Of(latest.photo.Shows.Value, ShortLine)}");
    }

    private void Next()
    {
        if (board.LookAgain is null && board.OpenWaits.Length == 0)
        {
            return;
        }

        html.Open(Tag.H2).Text("What comes");
        using var list = html.Open(Tag.Ul);
        if (board.LookAgain is { } look)
        {
            html.Open(Tag.Li).Text($"look again by {PageFrame.Iso(look)}");
        }

        foreach (var wait in board.OpenWaits.Take(MostWaits))
        {
            html.Open(Tag.Li).Text($"waits for {BriefWords.Of(wait.For.Value, HalfLine)} since {wait.Since.Text}");
        }

        More(board.OpenWaits.Length - MostWaits, Tag.Li);
    }

    private void More(int left, Tag tag)
    {
        if (left > 0)
        {
            html.Open(tag).Text(string.Create(CultureInfo.InvariantCulture, $"{left} more in the record"));
        }
    }
}
